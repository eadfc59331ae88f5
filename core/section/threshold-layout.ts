import {
  hasChannel,
  type Opening,
  type Profile,
  type Threshold,
  thresholdLevels,
  type WallDepths,
} from '../detail'

/** Where the levels of a threshold lie in a section, in x. */
export type Levels = {
  readonly floor_mm: number
  readonly top_mm: number
  readonly surface_mm: number
  /** upper edge of the waterproofing */
  readonly edge_mm: number
}

/** Lengths that a threshold is laid out by, in the axes of a section. */
export type ThresholdLayout = {
  readonly part: Threshold
  readonly levels: Levels
  /** how far the leaf stands over the profile, and where the lowest place of its sash lies in the profile's own axes */
  readonly play_mm: number
  readonly leafLow_mm: number
  /** how much the surface falls by each millimetre away from the door; negative towards it */
  readonly fall: number
  /** where surface and floor are cut off, in y, and how deep the ground is cut, in x */
  readonly out_mm: number
  readonly in_mm: number
  readonly reach_mm: number
  /** where the drain channel lies in y, where there is one: it keeps off what carries the door */
  readonly channel: { readonly from_mm: number; readonly to_mm: number } | undefined
}

/** Between the profile and the leaf over it, for seals that glide: ours. */
const play_mm = 6

/** The ground is cut three metres below the surface (EN ISO 10211 for temperatures of surfaces, from memory). */
const deep_mm = 3000

/** A section is laid out no deeper and no further than this: its grid ends there. */
const deepest_mm = 3300
const furthest_mm = 2000

/** Levels that no section reaches are drawn at its ends: ours, far beyond what fields allow. */
const off_mm = 60

/** A threshold as it lies in a cut of its side. */
export const thresholdLayout = (
  opening: Opening & { readonly threshold: Threshold },
  at: {
    readonly width_mm: number
    readonly position_mm: number
    readonly profile: Profile
    readonly depths: WallDepths
  },
): ThresholdLayout => {
  const { threshold: part, told } = opening
  const { outer_mm, inner_mm } = at.depths
  const beyond_mm = Math.min(furthest_mm, Math.max(1000, 3 * (inner_mm - outer_mm)))
  const top_mm = at.width_mm + part.height_mm.value
  const leafLow_mm = Math.min(
    ...at.profile.bodies.filter(it => it.member === 'sash').flatMap(it => it.outline.map(([u]) => u)),
  )
  const end_mm = top_mm + play_mm - leafLow_mm + at.profile.reach_mm
  const stated = thresholdLevels(told)
  const falls = told?.thresholdFall?.value
  const fall = (falls === 'away' ? 1 : falls === 'towards' ? -1 : 0) * (part.fall_pct.value / 100)
  const rise_mm = Math.max(0, -fall) * (beyond_mm + at.position_mm - outer_mm)
  const within = (x: number, most_mm: number): number => Math.min(Math.max(x, -0.75 * deep_mm), most_mm)
  const floor_mm = within(top_mm - stated.top_mm.value, end_mm - off_mm)
  const surface_mm = within(floor_mm + stated.outside_mm.value, end_mm - off_mm - rise_mm)
  const edge_mm = Math.min(Math.max(0, floor_mm + stated.edge_mm.value), top_mm)
  return {
    part,
    levels: { floor_mm, top_mm, surface_mm, edge_mm },
    play_mm,
    leafLow_mm,
    fall,
    out_mm: Math.min(outer_mm, at.position_mm) - beyond_mm,
    in_mm: Math.max(inner_mm, at.position_mm + at.profile.depth_mm) + beyond_mm,
    reach_mm: Math.min(deepest_mm, deep_mm - Math.min(0, floor_mm, surface_mm)),
    channel: hasChannel(told) ? channelAt(part, surface_mm, at) : undefined,
  }
}

/** The channel lies at the door; where it is deeper than the joint, before what carries the door; below that, before the wall. */
const channelAt = (
  { channelWidth_mm, channelDepth_mm }: Threshold,
  surface_mm: number,
  { position_mm, depths }: { readonly position_mm: number; readonly depths: WallDepths },
): ThresholdLayout['channel'] => {
  const to_mm =
    surface_mm <= 0
      ? Math.min(depths.outer_mm, position_mm)
      : surface_mm - channelDepth_mm.value < 0
        ? Math.min(0, position_mm)
        : position_mm
  return { from_mm: to_mm - channelWidth_mm.value, to_mm }
}
