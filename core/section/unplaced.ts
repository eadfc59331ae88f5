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

/** Whether seals may cover each other: together they take more than the depth of their bay, or two lie beside one end of it. */
const isCrowded = (seals: readonly AnySeal[], bay: Bay): boolean => {
  const width_mm = bay.frameFace[0][0] - bay.wallFace[0][0]
  const depths = seals.map(it => kindOf(it).takesDepth(it, width_mm))
  const taken_mm = depths.reduce<number>((sum, it) => sum + (it === 'rest' ? 0 : it), 0)
  return (
    taken_mm >= bay.to_mm - bay.from_mm ||
    planes.some(plane => seals.filter(it => it.plane === plane && isBeside(it)).length > 1)
  )
}

/** The parts that a cut shows. */
const shownIn = (project: Project, place: ZonePlace, width_mm: number): ReadonlySet<string> => {
  const { regions, lines } = cutSection(project, place, { state: 'planned', width_mm })
  return new Set([...regions, ...lines].map(it => it.part))
}
