import {
  frameOf,
  jointOf,
  openingOf,
  profileOf,
  type Profile,
  type Project,
  type Reveal,
  type Sill,
  wallDepths,
  type WallDepths,
  wallOf,
  type ZonePlace,
} from '../detail'
import type { Side } from '../kinds'
import type { AnySeal } from '../seals'
import type { Fixing } from '../detail'

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
  readonly seals: readonly AnySeal[]
  readonly fixing: Fixing | undefined
  readonly sill: Sill | undefined
  /** width of the joint at the state that is cut */
  readonly width_mm: number
  readonly position_mm: number
  /** depth of the frame */
  readonly depth_mm: number
  readonly reveal: Reveal
  readonly cover_mm: number
  readonly lining_mm: number
  /** how far the wall is cut: a metre, or three times its thickness, as ISO 10211 asks (from memory) */
  readonly reach_mm: number
}

export const layoutOf = (project: Project, place: ZonePlace, width_mm: number): Layout => {
  const wall = wallOf(project, place.opening)
  const frame = frameOf(project, place.opening)
  const opening = openingOf(project, place.opening)
  const joint = jointOf(project, place.zone)
  const depths = wallDepths(wall)
  const profile = profileOf(frame)
  return {
    side: place.side,
    depths,
    profile,
    frame: frame.id,
    opening: opening.id,
    wall: wall.id,
    joint: joint.id,
    seals: joint.seals,
    fixing: opening.fixings[0],
    sill: opening.sill,
    width_mm,
    position_mm: opening.position_mm.value,
    depth_mm: profile.depth_mm,
    reveal: wall.reveal,
    cover_mm: wall.reveal.cover_mm.value,
    lining_mm: wall.reveal.lining_mm.value,
    reach_mm: Math.max(1000, 3 * (depths.inner_mm - depths.outer_mm)),
  }
}
