import type { Joint } from '../../detail'
import type { Side } from '../../kinds'
import { type JointBand, neededWidth_mm } from '../../movement'
import { lookUp, type Practice } from '../../practice'
import { kindOf } from '../../seals'
import { around, type Band } from '../../units'
import type { Place } from '../place'
import { hasBead } from '../readings/seals'
import type { Use } from '../uses'
import type { Room } from './sizes'

/** All zones that the joint of a place is used in. */
export const usesOf = ({ uses, joint }: Place): readonly Use[] => uses(joint.id)

/**
 * The room of a joint type at a planned width, over all zones that use it. Where the opening or the joint was measured,
 * it stays as it is, whatever is planned.
 */
export const roomAt = (
  at: Place,
  uses: readonly Use[],
  planned_mm: number,
  tolerance_mm = at.joint.tolerance_mm.value,
): Room => {
  const stills = uses.map(it => (it.isPlanned ? around(planned_mm, tolerance_mm) : it.band.still_mm))
  return roomOver(planned_mm, uses, stills)
}

/** The room that holds the still band of every use, and the movement that each adds. */
const roomOver = (planned_mm: number, uses: readonly Use[], stills_mm: readonly Band[]): Room => {
  const movings_mm = stills_mm.map((it, i) => {
    const { closes_mm = 0, opens_mm = 0 } = uses[i]?.band ?? {}
    return { min: it.min - closes_mm, max: it.max + opens_mm }
  })
  return { planned_mm, still_mm: hullOf(stills_mm), moving_mm: hullOf(movings_mm) }
}

const hullOf = (bands: readonly Band[]): Band => ({
  min: Math.min(...bands.map(it => it.min)),
  max: Math.max(...bands.map(it => it.max)),
})

/**
 * The room when the frame of a measured opening is made larger across the joint: each of the two joints loses half of it.
 * Joints that were measured themselves stay as they are: the frame is in.
 */
export const roomWithFrame = (at: Place, uses: readonly Use[], larger_mm: number): Room => {
  const isUpright = (side: Side) => side === 'head' || side === 'sill'
  const measured = Object.keys(at.opening.survey?.joints_mm ?? {})
  const shrinks = (it: Use) =>
    it.opening === at.opening.id && isUpright(it.side) === isUpright(at.side) && !measured.includes(it.side)
  const stills = uses.map(it => {
    const by = shrinks(it) ? larger_mm / 2 : 0
    return { min: it.band.still_mm.min - by, max: it.band.still_mm.max - by }
  })
  return roomOver(at.joint.planned_mm.value, uses, stills)
}

/** The room of the joint as it is. */
export const roomOf = (at: Place): Room => roomAt(at, usesOf(at), at.joint.planned_mm.value)

/** What the practice asks of the width of a joint in one zone that it is used in. */
export type WidthLimit = {
  readonly least_mm: number
  /** what the movement needs, and whether a table stands above it: then it only advises */
  readonly needed_mm: number
  readonly hasTable: boolean
  readonly gapAt: (planned_mm: number) => Band | undefined
}

/** The limits on the width of a joint, in every zone that it is used in. */
export const widthLimits = (joint: Joint, uses: readonly Use[], practice: Practice): readonly WidthLimit[] =>
  uses.map(({ band, frame, reveal }) => {
    const cell = lookUp(practice, 'least-joint', { frame, reveal, length_mm: band.frame_mm })
    const gapAt = (planned_mm: number): Band | undefined => {
      const length_mm = band.frame_mm + 2 * planned_mm
      const row = lookUp(practice, 'perimeter-gap', { frame, length_mm })
      return row && { min: row.then.least_mm, max: row.then.most_mm }
    }
    return {
      least_mm: hasBead(joint) ? (cell?.then.least_mm ?? 0) : 0,
      needed_mm: neededBy(joint, band, practice),
      hasTable: cell !== undefined || gapAt(band.planned_mm) !== undefined,
      gapAt,
    }
  })

const neededBy = (joint: Joint, band: JointBand, practice: Practice): number => {
  const basis = lookUp(practice, 'joint-for-movement', { table: 'has-cell' })?.then.basis
  const needs_mm = joint.seals.map(seal => {
    const takes = kindOf(seal).takes(seal)
    return takes.by === 'share' && basis ? neededWidth_mm(band, takes.share_pct, basis) : 0
  })
  return Math.max(0, ...needs_mm)
}

/** How far the width of a joint is as the practice wants it, everywhere: wholly, only without advice, or not. */
export type WidthFit = 'wholly' | 'with-advice' | 'not'

/** Holds a width against least joint, gap and movement. */
export const widthFit = (limits: readonly WidthLimit[], { still_mm, planned_mm }: Room): WidthFit => {
  const isTooNarrow = (it: WidthLimit) =>
    still_mm.min < it.least_mm || (!it.hasTable && still_mm.min < it.needed_mm)
  const isOutside = (gap: Band | undefined) =>
    gap !== undefined && (still_mm.min < gap.min || gap.max < still_mm.max)
  if (limits.some(it => isTooNarrow(it) || isOutside(it.gapAt(planned_mm)))) return 'not'
  return limits.every(it => it.needed_mm <= still_mm.min) ? 'wholly' : 'with-advice'
}
