import { z } from 'zod'
import { flows_W_m, lowestSpots, readPlainCase, solveCase, temperatureAt } from '../../core/heat'
import type { Compared } from './subject'

const expected = z.strictObject({
  what: z.enum(['flow_W_m', 'probe_C', 'lowest_C']),
  of: z.string(),
  value: z.number(),
  tolerance: z.number().positive().exactOptional(),
  tolerance_percent: z.number().positive().exactOptional(),
  from: z.enum(['published', 'series', 'exact', 'converged']),
  at_mm: z.tuple([z.number(), z.number()]).exactOptional(),
})

const spoil = z.union([
  z.strictObject({ polygon: z.string(), lambdaTimes: z.number() }),
  z.strictObject({ boundary: z.string(), hTimes: z.number() }),
  z.strictObject({ boundary: z.string(), TTimes: z.number() }),
])

const polygons = z.array(z.looseObject({ name: z.string(), lambda: z.number() }))
const boundaries = z.array(z.looseObject({ name: z.string(), h: z.number(), T: z.number() }))

/** A published heat case: a plain section, what it must give, and one input that, spoiled, makes it fail. */
export const heatCase = z.strictObject({
  title: z.string(),
  source: z.string().min(10),
  spoil,
  expect: z.array(expected).min(1),
  section: z.looseObject({ polygons, boundaries }),
})
export type HeatReference = z.infer<typeof heatCase>

/** Solves a case and puts every expected value beside what came out. */
export const compareHeat = (it: HeatReference): readonly Compared[] => {
  const read = readPlainCase(JSON.stringify(it.section))
  if (!read.ok) throw new Error(`${it.title}: ${JSON.stringify(read.problems)}`)
  const solved = solveCase(read.value)
  if (!solved.ok) throw new Error(`${it.title}: ${JSON.stringify(solved.problems)}`)
  const flows = flows_W_m(solved.value)
  const spots = lowestSpots(solved.value)
  const surfaces = read.value.surfaces
  return it.expect.map(({ what, of, value, tolerance, tolerance_percent, from }) => {
    const surface = surfaces.findIndex(s => s.name === of)
    const probe = read.value.probes[of]
    const got =
      what === 'flow_W_m'
        ? flows[surface]
        : what === 'lowest_C'
          ? spots[surface]?.temperature_C
          : probe && temperatureAt(solved.value, probe)
    const within = tolerance ?? (Math.abs(value) * (tolerance_percent ?? 0)) / 100
    return { what: `${what} ${of} (${from})`, value, got: got ?? NaN, within }
  })
}

/** The case with its named input spoiled. */
export const spoiledHeat = (it: HeatReference): HeatReference => {
  const by = it.spoil
  return {
    ...it,
    section: {
      ...it.section,
      polygons: it.section.polygons.map(polygon =>
        'polygon' in by && polygon.name === by.polygon
          ? { ...polygon, lambda: polygon.lambda * by.lambdaTimes }
          : polygon,
      ),
      boundaries: it.section.boundaries.map(boundary => {
        if (!('boundary' in by) || boundary.name !== by.boundary) return boundary
        return 'hTimes' in by
          ? { ...boundary, h: boundary.h * by.hTimes }
          : { ...boundary, T: boundary.T * by.TTimes }
      }),
    },
  }
}
