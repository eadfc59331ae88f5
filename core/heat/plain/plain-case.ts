import { z } from 'zod'
import { type Problem, type Result, ok, refused } from '../../units'
import { filled, same, words } from '../../words'
import type { HeatCase } from '../case'
import { foilConductance_W_K } from '../si'

/** A place or an edge as the file writes it, mm. */
const place = z.tuple([z.number(), z.number()])
const edge = z.tuple([z.number(), z.number(), z.number(), z.number()])
const ring = z.array(place).min(3)

/** Conductivities between still gas at a hundredth of air's and twice that of diamond; films up to a fixed temperature. Ours. */
const conductivity = z.number().min(1e-9).max(5000)
const filmRange = z.number().min(0).max(1e12)

/**
 * The plain section format: polygons tile the domain (outer counter-clockwise, holes clockwise, mm), boundaries carry a
 * film and a temperature, other outer edges are adiabatic, a fixed temperature is `h` of 1e8 or more. `foils` is ours:
 * a metal foil along edges, `lambda` × `thickness`. What else the file says (units, notes, reference) is not read.
 */
export const plainCaseSchema = z.object({
  name: z.string().max(200),
  polygons: z
    .array(
      z.object({ name: z.string(), lambda: conductivity, outer: ring, holes: z.array(ring).default([]) }),
    )
    .min(1)
    .max(20_000),
  boundaries: z
    .array(
      z.object({ name: z.string(), h: filmRange, T: z.number().min(-1e6).max(1e6), edges: z.array(edge) }),
    )
    .min(1),
  foils: z
    .array(
      z.object({
        name: z.string(),
        lambda: conductivity,
        thickness: z.number().positive().max(5),
        path: z.array(place).min(2),
      }),
    )
    .default([]),
  points: z.record(z.string(), place).default({}),
})

/** Reads a case from the text of a plain section file. Problems: every place of the file that does not fit. */
export const readPlainCase = (text: string): Result<HeatCase> => {
  const json = parsed(text)
  if (!json.ok) return json
  const read = plainCaseSchema.safeParse(json.value)
  if (!read.success) {
    const [first, ...more] = read.error.issues.map((issue): Problem => ({
      at: said(issue.path),
      say: same(issue.message),
    }))
    return refused(first ?? { at: '', say: notJson }, ...more)
  }
  const file = read.data
  const [first, ...more] = turned(file)
  if (first) return refused(first, ...more)
  return ok({
    name: file.name,
    bodies: file.polygons.map(it => ({
      name: it.name,
      outline: it.outer,
      holes: it.holes,
      lambda_W_mK: it.lambda,
    })),
    surfaces: file.boundaries.map(it => ({
      name: it.name,
      h_W_m2K: it.h,
      air_C: it.T,
      edges: it.edges.map(
        ([ax, ay, bx, by]) =>
          [
            [ax, ay],
            [bx, by],
          ] as const,
      ),
    })),
    foils: file.foils.map(it => ({
      name: it.name,
      path: it.path,
      conductance_W_K: foilConductance_W_K(it.thickness, it.lambda),
    })),
    probes: file.points,
  })
}

const parsed = (text: string): Result<unknown> => {
  try {
    return ok(JSON.parse(text))
  } catch (error) {
    return refused({ at: '', say: filled(notJson, error instanceof Error ? error.message : '') })
  }
}

/** Outlines that run the wrong way round or enclose nothing. */
const turned = (file: z.infer<typeof plainCaseSchema>): readonly Problem[] =>
  file.polygons.flatMap((it, i) => [
    ...(area2(it.outer) > 0 ? [] : [{ at: `polygons[${i}].outer (${it.name})`, say: notCounterClockwise }]),
    ...it.holes.flatMap((hole, k) =>
      area2(hole) < 0 ? [] : [{ at: `polygons[${i}].holes[${k}] (${it.name})`, say: notClockwise }],
    ),
  ])

const area2 = (points: readonly (readonly [number, number])[]): number =>
  points.reduce((sum, [x, y], i) => {
    const [nx, ny] = points[(i + 1) % points.length] ?? [x, y]
    return sum + x * ny - nx * y
  }, 0)

const said = (path: readonly PropertyKey[]): string =>
  path.reduce<string>(
    (at, key) =>
      typeof key === 'number' ? `${at}[${key}]` : at === '' ? String(key) : `${at}.${String(key)}`,
    '',
  )

const notJson = words('not a JSON file: {0}', 'keine JSON-Datei: {0}')
const notCounterClockwise = words(
  'an outline must run counter-clockwise and enclose an area',
  'ein Umriss muss gegen den Uhrzeigersinn laufen und eine Fläche umschließen',
)
const notClockwise = words('a hole must run clockwise', 'ein Loch muss im Uhrzeigersinn laufen')
