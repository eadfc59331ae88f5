import { applyEdits, type Joint } from '../../detail'
import { filled, words } from '../../words'
import type { Remedy } from '../finding'
import type { Place } from '../place'
import { canSuit, choose, type Design, fitSeals, lengthIn, stateIt, together } from './fit'
import { roomAt, usesOf, type WidthFit, widthFit, widthLimits } from './room'
import type { Room } from './sizes'

/**
 * Designs a joint anew after some changes of its seals: the nearest width at which every seal in it can be made to suit
 * and the practice agrees; where there is none, the best of those that cure. Nothing where none does.
 */
export const design = (
  at: Place,
  change: Design,
  cures: (room: Room) => boolean = anyWidth,
): readonly Remedy[] => {
  const edited = applyEdits(at.project, change.edits)
  const joint = edited.ok ? edited.value.joints[at.joint.id] : undefined
  if (!joint) return []
  const uses = usesOf(at)
  const limits = widthLimits(joint, uses, at.practice)
  let best: { readonly room: Room; readonly rank: number } | undefined
  for (const planned_mm of nearby_mm(joint)) {
    const room = roomAt(at, uses, planned_mm)
    if (room.moving_mm.min <= 0 || !cures(room)) continue
    const ofWidth = rankOf[widthFit(limits, room)]
    if (best && best.rank <= ofWidth) continue
    const rank = ofWidth + (canSuit(joint, room, at.practice) ? 0 : 3)
    if (!best || rank < best.rank) best = { room, rank }
    if (rank === 0) break
  }
  if (!best) return []
  return choose(together([change, widthIn(joint, best.room), fitSeals(joint, best.room, at.practice)]))
}

const anyWidth = (): boolean => true

/** Seals matter more than widths, and widths that are not met more than advice. */
const rankOf: Readonly<Record<WidthFit, number>> = { wholly: 0, 'with-advice': 1, not: 2 }

const widthIn = (joint: Joint, { planned_mm }: Room): Design =>
  planned_mm === joint.planned_mm.value
    ? { edits: [], says: [] }
    : {
        edits: [stateIt('joint.planned', joint.id, planned_mm)],
        says: [filled(words('joint {0} wide', 'Fuge {0} breit'), lengthIn(planned_mm))],
      }

/**
 * Widths to try: the planned one, then whole millimetres, nearest first, then a few halves for tight gaps.
 * Farther off it is another joint: ours.
 */
const nearby_mm = (joint: Joint): readonly number[] => {
  const now_mm = joint.planned_mm.value
  const whole_mm = Math.round(now_mm)
  return [now_mm, whole_mm, ...around_mm(whole_mm, 20), ...around_mm(whole_mm - 0.5, 8)].filter(it => it > 0)
}

const around_mm = (start_mm: number, steps: number): readonly number[] =>
  Array.from({ length: steps }, (_, i) => i + 1).flatMap(by => [start_mm + by, start_mm - by])
