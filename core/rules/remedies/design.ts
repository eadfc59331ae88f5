import { applyEdits, type Edit, type Joint } from '../../detail'
import { filled, isSome, listed, type Words, words } from '../../words'
import type { Remedy } from '../finding'
import type { Place } from '../place'
import { both, type Fit, fitSeals, lengthIn, type Room, stateIt } from './fit'
import { roomAt, usesOf, type WidthFit, widthFit, widthLimits } from './room'

/** How a joint may be designed anew: with which changes of its seals, and what the width has to cure. */
export type Design = {
  readonly edits: readonly Edit[]
  readonly says: readonly Words[]
  readonly cures: (room: Room) => boolean
}

/**
 * Designs a joint anew after some changes of its seals: the nearest width at which every seal in it can be made to suit
 * and the practice agrees; where there is none, the nearest one that at least cures. Nothing where none does.
 */
export const design = (at: Place, { edits, says, cures }: Design): readonly Remedy[] => {
  const edited = applyEdits(at.project, edits)
  const joint = edited.ok ? edited.value.joints[at.joint.id] : undefined
  if (!joint) return []
  const uses = usesOf(at)
  const limits = widthLimits(joint, uses, at.practice)
  let best: { readonly fit: Fit; readonly rank: number } | undefined
  for (const planned_mm of nearby_mm(joint)) {
    const room = roomAt(at, uses, planned_mm)
    if (room.moving_mm.min <= 0 || !cures(room)) continue
    const ofWidth = rankOf[widthFit(limits, room)]
    if (best && best.rank <= ofWidth) continue
    const fit = fitSeals(joint, room, at.practice)
    const rank = ofWidth + (fit.suits ? 0 : 3)
    if (best && best.rank <= rank) continue
    best = { fit: both(widthIn(joint, planned_mm), fit), rank }
    if (rank === 0) break
  }
  const all = [...edits, ...(best?.fit.edits ?? [])]
  if (!best || !isSome(all)) return []
  const say = filled(words('Choose: {0}', 'Wählen: {0}'), listed(onceEach([...says, ...wordsOf(best.fit)])))
  return [{ kind: 'change', say, edits: all }]
}

/** A change of some values alone. */
export const choose = (fit: Fit): readonly Remedy[] =>
  isSome(fit.edits)
    ? [
        {
          kind: 'change',
          say: filled(words('Choose: {0}', 'Wählen: {0}'), listed(onceEach(wordsOf(fit)))),
          edits: fit.edits,
        },
      ]
    : []

const wordsOf = (fit: Fit): readonly Words[] => fit.says.map(say => say())

/** Two seals with the same new value are said once. */
const onceEach = (all: readonly Words[]): readonly Words[] =>
  all.filter((it, i) => all.findIndex(other => other.en === it.en) === i)

/** Seals matter more than widths, and widths that are not met more than advice. */
const rankOf: Readonly<Record<WidthFit, number>> = { wholly: 0, 'with-advice': 1, not: 2 }

const widthIn = (joint: Joint, planned_mm: number): Fit =>
  planned_mm === joint.planned_mm.value
    ? { edits: [], says: [], suits: true }
    : {
        edits: [stateIt('joint.planned', joint.id, planned_mm)],
        says: [() => filled(words('joint {0} wide', 'Fuge {0} breit'), lengthIn(planned_mm))],
        suits: true,
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
