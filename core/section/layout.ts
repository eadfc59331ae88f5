import {
  type Box,
  frameOf,
  jointOf,
  materialOf,
  openingOf,
  profileOf,
  type Profile,
  type Project,
  type Reveal,
  type Sill,
  standsAt,
  wallDepths,
  type WallDepths,
  wallOf,
  type ZonePlace,
} from '../detail'
import type { Id } from '../geometry'
import type { Side } from '../kinds'
import { isFirm } from '../materials'
import type { AnySeal } from '../seals'
import type { Fixing } from '../detail'
import { type ThresholdLayout, thresholdLayout } from './threshold-layout'

/** What a joint lies along, towards the opening. */
export type Stands = {
  /** from its outer to its inner face */
  readonly from_mm: number
  readonly to_mm: number
  /** how far its outer and its inner face are free, from the joint */
  readonly outer_mm: number
  readonly inner_mm: number
}

/** All lengths that a cut is laid out by, in the axes of a section. */
export type Layout = {
  readonly side: Side
  readonly depths: WallDepths
  readonly profile: Profile
  /** ids of frame type and opening: the parts that a cut shows of them */
  readonly frame: string
  readonly opening: string
  readonly wall: string
  readonly joint: string
  /** what stands in the joint: the frame, or the box on its head */
  readonly stands: Stands
  /** the box on the frame, in the cut that shows it */
  readonly box: Box | undefined
  /** where the flank of the frame lies, in x: a joint's width from the reveal, past the box on its head */
  readonly flank_mm: number
  /** whether a material holds what is bonded to it */
  readonly isFirm: (material: Id) => boolean
  readonly seals: readonly AnySeal[]
  /** the fixings that hold this side, or of which nobody says where they are; the first of them */
  readonly fixings: readonly Fixing[]
  readonly fixing: Fixing | undefined
  readonly sill: Sill | undefined
  /** the threshold in the cut that shows it */
  readonly threshold: ThresholdLayout | undefined
  /** width of the joint at the state that is cut */
  readonly width_mm: number
  readonly position_mm: number
  /** depth of the frame */
  readonly depth_mm: number
  readonly reveal: Reveal
  readonly cover_mm: number
  readonly lining_mm: number
  /** how far the wall is cut: a metre, or three times its thickness, as ISO 10211 asks (from memory); with the ground deeper */
  readonly reach_mm: number
}

export const layoutOf = (project: Project, place: ZonePlace, width_mm: number): Layout => {
  const wall = wallOf(project, place.opening)
  const frame = frameOf(project, place.opening)
  const opening = openingOf(project, place.opening)
  const joint = jointOf(project, place.zone)
  const depths = wallDepths(wall)
  const profile = profileOf(frame)
  const box = place.side === 'head' ? opening.box : undefined
  const position_mm = opening.position_mm.value
  const threshold =
    place.side === 'sill' && opening.threshold
      ? thresholdLayout(
          { ...opening, threshold: opening.threshold },
          { width_mm, position_mm, profile, depths },
        )
      : undefined
  const own_mm = threshold?.part.height_mm.value ?? box?.height_mm.value
  const fixings = opening.fixings.filter(it => holds(it, place.side))
  return {
    side: place.side,
    depths,
    profile,
    frame: frame.id,
    opening: opening.id,
    wall: wall.id,
    joint: joint.id,
    stands: {
      ...standsAt(project, opening, place.side),
      outer_mm: own_mm ?? profile.face_mm,
      inner_mm: own_mm ?? profile.innerFace_mm,
    },
    box,
    flank_mm: width_mm + (box?.height_mm.value ?? 0),
    isFirm: id => isFirm(materialOf(project, id)),
    seals: joint.seals,
    fixings,
    fixing: fixings[0],
    sill: opening.sill,
    threshold,
    width_mm,
    position_mm,
    depth_mm: profile.depth_mm,
    reveal: wall.reveal,
    cover_mm: wall.reveal.cover_mm.value,
    lining_mm: wall.reveal.lining_mm.value,
    reach_mm: threshold?.reach_mm ?? Math.max(1000, 3 * (depths.inner_mm - depths.outer_mm)),
  }
}

/** Whether a fixing holds a side; one that nobody has placed anywhere may hold any. */
const holds = (it: Fixing, side: Side): boolean => {
  const { counts = {}, positions_mm = {} } = it
  if (Object.keys(counts).length + Object.keys(positions_mm).length === 0) return true
  return (positions_mm[side]?.length ?? counts[side]?.value ?? 0) > 0
}
