import { exactly } from '../../units'
import { filled, words } from '../../words'
import type { Remedy } from '../finding'
import type { Place } from '../place'
import { field } from '../readings/field'
import { stillSum } from '../readings/terms'
import { choose, lengthIn, stateIt } from '../remedies/fit'
import { levelReveal, otherWidth } from '../remedies/remedies'
import { act } from '../remedies/state'
import { rule } from '../rule'

/** There is a joint at all: the frame fits its opening on every side. */
export const jointThere = rule({
  id: 'joint-there',
  about: 'zone',
  title: words('The frame fits its opening', 'Der Rahmen passt in die Öffnung'),
  says: words(
    'On every side some joint is left at its narrowest place.',
    'An jeder Seite bleibt an der engsten Stelle eine Fuge.',
  ),
  why: words(
    'Where nothing is left, the frame cannot be set, blocked or sealed.',
    'Wo nichts bleibt, lässt sich der Rahmen weder setzen noch verklotzen noch abdichten.',
  ),
  reads: { planned_mm: field('joint.planned') },
  limit: 'joint-there',
  band: ['still', 'size'],
  applies: () => true,
  ask: () => [{ given: {}, state: 'narrowest' }],
  compare: (_known, { least_mm }, _asked, { still_mm }) => ({
    kind: 'amount',
    actual: exactly(still_mm.min),
    required: { unit: 'mm', min: least_mm },
  }),
  sum: (_known, _then, _asked, band) => stillSum(band, 'narrowest'),
  *remedies({ planned_mm }, { least_mm }, at) {
    if (at.opening.survey?.joints_mm?.[at.side]) {
      yield act(setAnew, `survey.joint-${at.side}-narrowest`, at.opening.id)
      return
    }
    yield* levelReveal(at, it => least_mm <= at.joint.planned_mm.value - it)
    if (at.opening.survey) yield* smallerFrame(at, planned_mm)
    yield* otherWidth(at, ({ still_mm }) => least_mm <= still_mm.min)
  },
  examples: [
    {
      when: words('a joint of 2 mm at its narrowest', 'eine Fuge von 2 mm an der engsten Stelle'),
      practice: 'AT',
      joint: { planned_mm: 10, tolerance_mm: 8 },
      known: { planned_mm: 10 },
      verdict: 'met',
    },
    {
      when: words(
        'a joint of 8 mm that may be 10 mm narrower',
        'eine Fuge von 8 mm, die 10 mm schmaler sein darf',
      ),
      practice: 'DE',
      joint: { planned_mm: 8, tolerance_mm: 10 },
      known: { planned_mm: 8 },
      verdict: 'not-met',
    },
  ],
})

const setAnew = words(
  'Take the frame out, cut the reveal or order a smaller frame, set it anew, then measure',
  'Rahmen ausbauen, Leibung nacharbeiten oder kleineren Rahmen bestellen, neu setzen, dann messen',
)

/** The frame with which the narrowest place has the planned width. */
const smallerFrame = (at: Place, planned_mm: number): readonly Remedy[] => {
  const isUpright = at.side === 'head' || at.side === 'sill'
  const size_mm = Math.floor(at.band.frame_mm - 2 * (planned_mm - at.band.still_mm.min))
  const says = isUpright
    ? words('frame {0} high', 'Rahmen {0} hoch')
    : words('frame {0} wide', 'Rahmen {0} breit')
  return choose({
    edits: [stateIt(isUpright ? 'opening.height' : 'opening.width', at.opening.id, size_mm)],
    says: [filled(says, lengthIn(size_mm))],
  })
}
