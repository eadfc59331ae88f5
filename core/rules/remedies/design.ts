import { applyEdits, type Joint } from '../../detail'
import { filled, words } from '../../words'
import type { Remedy } from '../finding'
import type { Place } from '../place'
import { canSuit, choose, type Design, fitSeals, lengthIn, stateIt, together } from './fit'
import type { Use } from '../uses'
import { roomAt, roomWithFrame, usesOf, type WidthFit, widthFit, widthLimits } from './room'
import type { Room } from './sizes'

/**
 * Designs a joint anew after some changes of its seals: the nearest width at which every seal in it can be made to suit
 * and the practice agrees; where there is none, the best of those that cure. Nothing where none does.
 * In a measured opening it is the size of the frame that gives the width.
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
  let best: { readonly way: Way; readonly rank: number } | undefined
  for (const way of waysOf(at, uses)) {
    if (way.room.moving_mm.min <= 0 || !cures(way.room)) continue
    const ofWidth = rankOf[widthFit(limits, way.room)]
    if (best && best.rank <= ofWidth) continue
    const rank = ofWidth + (canSuit(joint, way.room, at.practice) ? 0 : 3)
    if (!best || rank < best.rank) best = { way, rank }
    if (rank === 0) break
  }
  if (!best) return []
  const { change: width, room } = best.way
  return choose(together([change, width(), fitSeals(joint, room, at.practice)]))
}

const anyWidth = (): boolean => true

/** Seals matter more than widths, and widths that are not met more than advice. */
const rankOf: Readonly<Record<WidthFit, number>> = { wholly: 0, 'with-advice': 1, not: 2 }

/** A width that the joint could have, and what has to be changed for it. */
type Way = { readonly room: Room; readonly change: () => Design }

/** Ways to another width, nearest first: plan it so, or, where the opening was measured, order another frame. */
function* waysOf(at: Place, uses: readonly Use[]): Iterable<Way> {
  const here = uses.find(it => it.opening === at.opening.id && it.side === at.side)
  if (here?.isPlanned === false)
    for (const larger_mm of frameSteps_mm)
      yield { room: roomWithFrame(at, uses, larger_mm), change: () => frameLarger(at, larger_mm) }
  else
    for (const planned_mm of nearby_mm(at.joint))
      yield { room: roomAt(at, uses, planned_mm), change: () => widthIn(at.joint, planned_mm) }
}

const widthIn = (joint: Joint, planned_mm: number): Design =>
  planned_mm === joint.planned_mm.value
    ? { edits: [], says: [] }
    : {
        edits: [stateIt('joint.planned', joint.id, planned_mm)],
        says: [filled(words('joint {0} wide', 'Fuge {0} breit'), lengthIn(planned_mm))],
      }

const frameLarger = ({ opening, side }: Place, larger_mm: number): Design => {
  if (larger_mm === 0) return { edits: [], says: [] }
  const isUpright = side === 'head' || side === 'sill'
  const size_mm = (isUpright ? opening.height_mm : opening.width_mm).value + larger_mm
  const says = isUpright
    ? words('frame {0} high', 'Rahmen {0} hoch')
    : words('frame {0} wide', 'Rahmen {0} breit')
  return {
    edits: [stateIt(isUpright ? 'opening.height' : 'opening.width', opening.id, size_mm)],
    says: [filled(says, lengthIn(size_mm))],
  }
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

/** Frames are ordered to the millimetre; two of them give one at each joint. */
const frameSteps_mm: readonly number[] = [0, ...around_mm(0, 20).map(it => 2 * it)]
