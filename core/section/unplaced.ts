import { jointOf, type Project, type ZonePlace } from '../detail'
import { planes } from '../kinds'
import { type AnySeal, type Bay, kindOf } from '../seals'
import { cutSection } from './cut'
import { jointBay } from './joint'
import { layoutOf } from './layout'
import { rebateBay } from './rebate'

/** A seal that a joint has and a cut of it cannot show, and what it would need there. */
export type Unplaced = {
  readonly seal: AnySeal
  /** `gap`: the gap of a rebate; `rest`: a finish, or a face of the reveal, to lie on; `room`: depth that others leave free */
  readonly lacks: 'gap' | 'rest' | 'room'
}

/**
 * The seals of a zone's joint, outside to inside, that have no place in its cut at a width in mm: a bead where no finish
 * meets the frame, a seal for the gap of a rebate where there is none, one for which the others leave no depth.
 */
export const unplacedSeals = (project: Project, place: ZonePlace, width_mm: number): readonly Unplaced[] => {
  const { seals } = jointOf(project, place.zone)
  const at = layoutOf(project, place, width_mm)
  const joint = jointBay(at)
  const rebate = rebateBay(at)?.bay
  const lacks = (seal: AnySeal): Unplaced['lacks'] | undefined => {
    if (seal.gap === 'rebate') return rebate ? undefined : 'gap'
    return isBeside(seal) && kindOf(seal).lay(seal, joint).regions.length === 0 ? 'rest' : undefined
  }
  const inGap = (gap: AnySeal['gap']) => seals.filter(it => it.gap === gap && !lacks(it))
  const crowded = isCrowded(inGap(undefined), joint) || (rebate !== undefined && isCrowded(inGap('rebate'), rebate))
  const shown = crowded ? shownIn(project, place, width_mm) : undefined
  return seals.flatMap(seal => {
    const found = lacks(seal) ?? (shown?.has(seal.id) === false ? 'room' : undefined)
    return found ? [{ seal, lacks: found }] : []
  })
} // prettier-ignore

/** Whether a seal lies beside its joint, on what is there, rather than in it. */
const isBeside = (it: AnySeal): boolean =>
  kindOf(it).shows !== undefined && kindOf(it).takesDepth(it, 0) === 0

/**
 * Whether some seals of a joint may lack a place: all lie in it, one behind another, where this says no. It asks nothing
 * but the seals and the depth in mm that they share.
 */
export const mayLackPlace = (seals: readonly AnySeal[], width_mm: number, depth_mm: number): boolean =>
  seals.some(it => it.gap === 'rebate' || isBeside(it)) || taken_mm(seals, width_mm) >= depth_mm

/** The depth that seals take up one behind another. */
const taken_mm = (seals: readonly AnySeal[], width_mm: number): number =>
  seals.reduce((sum, it) => {
    const depth = kindOf(it).takesDepth(it, width_mm)
    return depth === 'rest' ? sum : sum + depth
  }, 0)

/** Whether seals may cover each other: together they take more than the depth of their bay, or two lie beside one end of it. */
const isCrowded = (seals: readonly AnySeal[], bay: Bay): boolean =>
  taken_mm(seals, bay.frameFace[0][0] - bay.wallFace[0][0]) >= bay.to_mm - bay.from_mm ||
  planes.some(plane => seals.filter(it => it.plane === plane && isBeside(it)).length > 1)

/** The parts that a cut shows. */
const shownIn = (project: Project, place: ZonePlace, width_mm: number): ReadonlySet<string> => {
  const { regions, lines } = cutSection(project, place, { state: 'planned', width_mm })
  return new Set([...regions, ...lines].map(it => it.part))
}
