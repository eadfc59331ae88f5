import type { Id, Region, Seasonal } from '../../geometry'
import { type LayerAlong, layersAlong } from '../../heat'
import { type Plane, planes } from '../../kinds'
import { type AnySeal, kindOf } from '../../seals'
import type { Band } from '../../units'
import { airLayer_m } from '../diffusion'
import type { VapourView } from './vapour-view'

/** Vapour factor of a body: a range from open to tight; nothing where it is not known. */
export type FactorOf = (body: number) => Band | undefined

/** Still air. */
const airFactor: Band = { min: 1, max: 1 }

/**
 * The vapour factors of the bodies of a section: materials from dry to wet, air as air. What a seal declares for a plane
 * is spread over its bodies in that plane, so that a path through the joint adds up to just that.
 */
export const factorsOf = (view: VapourView): FactorOf => {
  const regions = new Map(view.section.regions.map(it => [it.id, it]))
  const along = layersAlong(view.turned, view.jointMiddle_mm).layers
  const usual = (body: number): Band | undefined => {
    const region = regions.get(view.turned.case.bodies[body]?.name ?? '')
    return region && usualFactor(region, view)
  }
  const declared = new Map(view.seals.flatMap(seal => sealFactors(seal, along, usual)))
  return body => declared.get(view.turned.case.bodies[body]?.name ?? '') ?? usual(body)
}

const usualFactor = ({ fill, part }: Region, { materialOf }: VapourView): Band | undefined => {
  if (fill.kind === 'air') return airFactor
  const mu = materialOf(fill.material, part)?.mu
  return mu && { min: Math.min(mu.dry, mu.wet), max: Math.max(mu.dry, mu.wet) }
}

/** Factors of the bodies of one seal. The planes that it declares lie one behind the other, as its bodies do. */
const sealFactors = (
  seal: AnySeal,
  along: readonly LayerAlong[],
  usual: FactorOf,
): readonly (readonly [Id, Band])[] => {
  const known = planes.flatMap((plane): readonly Declared[] => {
    const sd_m = kindOf(seal).sd_m(seal, plane)
    return sd_m && kindOf(seal).serves(seal).includes(plane) ? [{ plane, sd_m }] : []
  })
  const own = along.filter(it => it.part === seal.id && usual(it.body) !== airFactor)
  const inOrder = known.toSorted((a, b) => depth[a.plane] - depth[b.plane])
  return inOrder.flatMap(({ sd_m }, i) => {
    // One declared value holds for all bodies of the seal; of several, the first for the outermost body, and so on.
    const bodies = inOrder.length === 1 ? own : i < inOrder.length - 1 ? own.slice(i, i + 1) : own.slice(i)
    const weight = (it: LayerAlong) => (usual(it.body)?.max ?? 1) * it.thickness_mm
    const whole = bodies.reduce((sum, it) => sum + weight(it), 0)
    return bodies.map((it): readonly [Id, Band] => {
      const share = weight(it) / whole / airLayer_m(1, it.thickness_mm)
      return [it.name, { min: share * sd_m.winter.min, max: share * sd_m.winter.max }]
    })
  })
}

type Declared = { readonly plane: Plane; readonly sd_m: Seasonal }

const depth: Readonly<Record<Plane, number>> = { outer: 0, middle: 1, inner: 2 }
