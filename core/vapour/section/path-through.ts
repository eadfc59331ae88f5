import type { Id, Line } from '../../geometry'
import { layersAlong } from '../../heat'
import { kindOf } from '../../seals'
import { type Band, type Problem, type Result, ok, refused } from '../../units'
import { words } from '../../words'
import { airLayer_m } from '../diffusion'
import type { Path, PathLayer } from '../path/path'
import { factorsOf } from './factors'
import type { VapourView } from './vapour-view'

/** Two layers touch when the gap between them is less than a few steps of the grid, mm. */
const touching_mm = 1e-3

/**
 * The path straight through a section at one x, from outside to inside, with the membranes that it crosses. Where air
 * that is open to the outside lies in between, it begins behind that. Problems: every part whose resistance to vapour is
 * not known; it is never guessed.
 */
export const pathThrough = (view: VapourView, at_mm: number): Result<Path> => {
  const { layers, outside_m2K_W, inside_m2K_W } = layersAlong(view.turned, at_mm)
  const factor = factorsOf(view)
  const unknown: Id[] = []
  const solid = layers.map(it => {
    const mu = factor(it.body)
    if (!mu) unknown.push(it.part)
    return {
      from_mm: it.from_mm,
      to_mm: it.from_mm + it.thickness_mm,
      layer: {
        part: it.part,
        thickness_mm: it.thickness_mm,
        resistance_m2K_W: it.resistance_m2K_W,
        sd_m: {
          min: airLayer_m(mu?.min ?? 1, it.thickness_mm),
          max: airLayer_m(mu?.max ?? 1, it.thickness_mm),
        },
      } satisfies PathLayer,
    }
  })
  const parted = (i: number) => (solid[i]?.from_mm ?? 0) - (solid[i - 1]?.to_mm ?? Infinity) > touching_mm
  const inner = solid.slice(
    Math.max(
      0,
      solid.findLastIndex((_, i) => parted(i)),
    ),
  )
  const crossed = view.section.lines.flatMap(line =>
    crossings_mm(line, at_mm).flatMap(y_mm => {
      const sd_m = membraneResistance(line, view)
      if (sd_m === 'unknown') unknown.push(line.part)
      return typeof sd_m === 'object'
        ? [{ from_mm: y_mm, to_mm: y_mm, layer: membraneLayer(line.part, sd_m) }]
        : []
    }),
  )
  const [first, ...more] = [...new Set(unknown)].map((part): Problem => ({ at: part, say: notKnown }))
  if (first) return refused(first, ...more)
  const from_mm = inner[0]?.from_mm ?? 0
  const all = [...inner, ...crossed.filter(it => it.from_mm >= from_mm - touching_mm)]
    .toSorted((a, b) => a.from_mm + a.to_mm - b.from_mm - b.to_mm)
    .map(it => it.layer)
  return ok({ layers: all, outside_m2K_W, inside_m2K_W })
}

const membraneLayer = (part: Id, sd_m: Band): PathLayer => ({
  part,
  thickness_mm: 0,
  resistance_m2K_W: 0,
  sd_m,
})

/** From this conductivity on a line is metal, and as tight as metal foil, m (DIN 4108-3, published). */
const metal_W_mK = 5
const foil_m = 1500

/** What a membrane resists in winter: declared, metal, nothing where it closes no plane, or not known. */
export const membraneResistance = (
  line: Line,
  { seals }: Pick<VapourView, 'seals'>,
): Band | 'unknown' | undefined => {
  if (line.sd_m) return line.sd_m.winter
  if (line.lambda_W_mK >= metal_W_mK) return { min: foil_m, max: foil_m }
  const seal = seals.find(it => it.id === line.part)
  const isUnknown =
    seal &&
    kindOf(seal)
      .serves(seal)
      .some(plane => kindOf(seal).sd_m(seal, plane) === undefined)
  return isUnknown ? 'unknown' : undefined
}

/** Where a line crosses a straight path, in depth; one that runs along it does not cross. */
const crossings_mm = ({ path }: Line, at_mm: number): readonly number[] =>
  path.flatMap((to, i) => {
    const from = path[i - 1]
    if (!from || from[0] <= at_mm === to[0] <= at_mm) return []
    return [from[1] + ((at_mm - from[0]) / (to[0] - from[0])) * (to[1] - from[1])]
  })

/** What is said of a part that a computation needs and nobody declares. */
export const notKnown = words(
  'its resistance to vapour is not known',
  'sein Dampfwiderstand ist nicht bekannt',
)
