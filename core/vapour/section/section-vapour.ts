import type { Conditions } from '../../detail'
import type { Seasonal } from '../../geometry'
import type { Solution } from '../../heat'
import { planeRatio, planeResistance } from '../../seals'
import { type Result, ok } from '../../units'
import { type VapourField, finerGuess, vapourField } from '../field/vapour-field'
import { type Along, along } from './along'
import { fieldCase } from './field-case'
import { pathThrough } from './path-through'
import type { VapourView } from './vapour-view'

/** s_d of the inner and the outer plane, and their ratio; absent where a resistance is not known. */
export type Planes = {
  readonly inner?: Seasonal
  readonly outer?: Seasonal
  readonly ratio?: Seasonal
}

/** A path that was asked for: in the middle of the joint, through the wall, or at a place across the joint. */
export type PathAt = 'joint' | 'wall' | number

/** Vapour of a section: its planes, and along a path. What lacks a declared value says so instead of an answer. */
export type SectionVapour = {
  readonly planes: Planes
  readonly at_mm: number
  readonly along: Result<Along>
}

/** Half a millimetre from the cut end of the wall, as heat reads its layers: ours. */
const inset_mm = 0.5

/** Where a path lies across the joint. */
export const pathAt_mm = (view: VapourView, at: PathAt): number => {
  if (typeof at === 'number') return at
  if (at === 'joint') return view.jointMiddle_mm
  return Math.min(...view.turned.case.bodies.flatMap(body => body.outline.map(([x]) => x))) + inset_mm
}

/** Planes and path of a section. */
export const sectionVapour = (view: VapourView, at: PathAt, conditions: Conditions): SectionVapour => {
  const at_mm = pathAt_mm(view, at)
  const path = pathThrough(view, at_mm)
  return {
    planes: planesOf(view),
    at_mm,
    along: path.ok ? ok(along(path.value, conditions)) : path,
  }
}

/**
 * The field of a section, with the zone where water gathers: found on the mesh of the heat first, then on a finer one from
 * there. Problems: parts whose resistance is not known.
 */
export const sectionField = (
  view: VapourView,
  solution: Solution,
  conditions: Conditions,
): Result<VapourField> => {
  const it = fieldCase(view, solution, conditions)
  if (!it.ok) return it
  const { coarse, fine } = it.value
  return ok(vapourField(fine, { guess: finerGuess(vapourField(coarse), coarse.mesh) }))
}

const planesOf = ({ seals }: VapourView): Planes => {
  const inner = planeResistance(seals, 'inner')
  const outer = planeResistance(seals, 'outer')
  return {
    ...(inner ? { inner } : {}),
    ...(outer ? { outer } : {}),
    ...(inner && outer ? { ratio: planeRatio(inner, outer) } : {}),
  }
}
