import type { Id } from '../../geometry'
import { type LayerAlong, layersAlong } from '../../heat'
import { type Band, type Result, ok, refused } from '../../units'
import { airLayer_m } from '../diffusion'
import type { Path, PathLayer } from '../path/path'
import { factorsOf } from './factors'
import { crossings_mm, membraneResistance } from './membranes'
import { notKnown } from './not-known'
import { onGround } from './on-ground'
import { tight, type VapourView } from './vapour-view'

/** Where a path grazes an outline it meets slivers thinner than this: they are no layers, and leave no gap. Ours. */
const sliver_mm = 0.01

/**
 * The path straight through a section at one x, from outside to inside, with the membranes that it crosses. Where air
 * that is open to the outside lies in between it begins behind that; through a joint, behind a tight sheet before it, whose
 * back breathes along its edges. Problems: every part whose resistance to vapour is not known; it is never guessed;
 * a section on the ground.
 */
export const pathThrough = (view: VapourView, at_mm: number): Result<Path> => {
  const ground = onGround(view.section)
  if (ground) return refused(ground)
  const { layers, outside_m2K_W, inside_m2K_W } = layersAlong(view.turned, at_mm)
  const factor = factorsOf(view)
  const solid = behindOutside(
    layers.filter(it => it.thickness_mm > sliver_mm).map(it => ({ ...it, mu: factor(it.body) })),
    new Set(view.seals.map(it => it.id)),
  )
  const from_mm = (solid[0]?.from_mm ?? 0) - 2 * sliver_mm
  const membranes = view.section.lines.flatMap(line =>
    crossings_mm(line, at_mm)
      .filter(y_mm => y_mm >= from_mm)
      .map(y_mm => ({ at_mm: y_mm, part: line.part, sd_m: membraneResistance(line, view) })),
  )
  const [first, ...more] = notKnown(view, [
    ...solid.flatMap(it => (it.mu === undefined ? [{ part: it.part, body: it.body }] : [])),
    ...membranes.flatMap(it => (it.sd_m === 'unknown' ? [{ part: it.part }] : [])),
  ])
  if (first) return refused(first, ...more)
  const all = [
    ...solid.map(it => ({ at_mm: it.from_mm + it.thickness_mm / 2, layer: solidLayer(it, it.mu ?? none) })),
    ...membranes.flatMap(({ at_mm: y_mm, part, sd_m }) =>
      typeof sd_m === 'object' ? [{ at_mm: y_mm, layer: membraneLayer(part, sd_m) }] : [],
    ),
  ]
  return ok({
    layers: all.toSorted((a, b) => a.at_mm - b.at_mm).map(it => it.layer),
    outside_m2K_W,
    inside_m2K_W,
  })
}

type Met = LayerAlong & { readonly mu: Band | undefined }

/** What is left of the layers behind open air, and before a seal behind what is tight. */
const behindOutside = (met: readonly Met[], seals: ReadonlySet<Id>): readonly Met[] => {
  const end_mm = (it: Met | undefined) => (it ? it.from_mm + it.thickness_mm : Infinity)
  const open = met.findLastIndex((it, i) => it.from_mm - end_mm(met[i - 1]) > 2 * sliver_mm)
  const joint = met.findIndex(it => seals.has(it.part))
  const sheet = met.slice(0, Math.max(0, joint)).findLastIndex(it => (it.mu?.min ?? 0) >= tight)
  return met.slice(Math.max(0, open, sheet + 1))
}

const none: Band = { min: 0, max: 0 }

const solidLayer = (it: Met, mu: Band): PathLayer => ({
  part: it.part,
  thickness_mm: it.thickness_mm,
  resistance_m2K_W: it.resistance_m2K_W,
  sd_m: { min: airLayer_m(mu.min, it.thickness_mm), max: airLayer_m(mu.max, it.thickness_mm) },
})

const membraneLayer = (part: Id, sd_m: Band): PathLayer => ({
  part,
  thickness_mm: 0,
  resistance_m2K_W: 0,
  sd_m,
})
