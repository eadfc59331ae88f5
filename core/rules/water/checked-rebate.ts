import { wallDepths } from '../../detail'
import { type Words, words } from '../../words'
import { placed, type Reading } from '../reading'
import { act } from '../remedies/state'
import { rule } from '../rule'
import { isTold } from '../told-rules'

/** What keeps driving rain off the joint: a rebate, and how far the frame stands behind the outer face of its leaf. */
type Behind = { readonly hasRebate: boolean; readonly behind_mm: number }

const behind: Reading<Behind> = placed({
  id: 'opening.behind-face',
  name: words('Frame behind the outer leaf', 'Rahmen hinter der Außenschale'),
  compute: ({ wall, opening }) => {
    // the outer leaf is what bears the frame or stands before it; a thin skin on it is not counted
    const { before, skin } = wallDepths(wall)
    const leaf_mm = before.length > 0 && !skin ? (before[0]?.from_mm ?? 0) : 0
    return { hasRebate: wall.reveal.form === 'inner-rebate', behind_mm: opening.position_mm.value - leaf_mm }
  },
  beneath: at => [{ field: 'opening.position', part: at.opening.id, stated: at.opening.position_mm }],
})

/** In the most exposed places the frame stands behind a rebate of the outer leaf. */
export const checkedRebate = rule({
  id: 'checked-rebate',
  about: 'opening',
  title: words('Rebate against very severe driving rain', 'Anschlag gegen sehr starken Schlagregen'),
  says: words(
    'Where driving rain is very severe the frame stands behind a checked rebate, set back behind the face of the outer leaf.',
    'Bei sehr starkem Schlagregen steht der Rahmen hinter einem Anschlag, zurückgesetzt hinter der Außenschale.',
  ),
  why: words(
    'There rain is blown through every straight joint sooner or later; a rebate makes it turn.',
    'Dort treibt der Regen früher oder später durch jede gerade Fuge; ein Anschlag lässt ihn wenden.',
  ),
  reads: { behind },
  limit: 'checked-rebate',
  band: [],
  applies: (at): true | Words => {
    if (!isTold(at, 'drivingRain')) return words('nobody has called the driving rain very severe', 'niemand nennt den Schlagregen sehr stark')
    return at.opening.told?.drivingRain?.value === 'very-severe' || words('driving rain is not very severe', 'der Schlagregen ist nicht sehr stark')
  },
  ask: () => [{ given: {} }],
  compare: (known, { behind_mm }) => {
    const parts: readonly (readonly [Words, boolean])[] = [
      [words('checked rebate', 'Anschlag'), known.behind.hasRebate],
      [words('frame set back behind the outer face', 'Rahmen hinter der Außenfläche zurückgesetzt'), behind_mm <= known.behind.behind_mm],
    ]
    return {
      kind: 'presence',
      there: parts.filter(([, is]) => is).map(([name]) => name),
      missing: parts.filter(([, is]) => !is).map(([name]) => name),
    }
  },
  sum: (known, { behind_mm }) => [
    { sign: '', value: known.behind.behind_mm, unit: 'mm', says: words('frame behind the outer face', 'Rahmen hinter der Außenfläche') },
    { sign: '', value: behind_mm, unit: 'mm', says: words('asked for', 'verlangt') },
  ],
  *remedies(_known, _then, at) {
    yield act(words('Design the reveal anew, with a rebate', 'Leibung neu entwerfen, mit Anschlag'), 'opening.position', at.opening.id)
  },
  examples: [
    {
      when: words('30 mm behind a rebate', '30 mm hinter einem Anschlag'),
      practice: 'UK',
      joint: { planned_mm: 5 },
      known: { behind: { hasRebate: true, behind_mm: 30 } },
      verdict: 'met',
    },
    {
      when: words('20 mm deep in a straight reveal', '20 mm tief in stumpfer Leibung'),
      practice: 'UK',
      joint: { planned_mm: 5 },
      known: { behind: { hasRebate: false, behind_mm: 20 } },
      verdict: 'not-met',
    },
  ],
}) // prettier-ignore
