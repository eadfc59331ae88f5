import { exactly } from '../../units'
import { words } from '../../words'
import { stateIt, choose } from '../remedies/fit'
import { hasSill, ofSill, sillId } from '../readings/sill'
import { rule } from '../rule'

const slope = ofSill('sill.slope', it => it.slope_deg)

/** An outside sill falls to the outside. */
export const sillFall = rule({
  id: 'sill-fall',
  about: 'sill',
  title: words('Fall of the sill', 'Gefälle der Fensterbank'),
  says: words(
    'An outside sill falls outwards by at least 5°; a source that prints 8 % means its own figure.',
    'Eine Fensterbank außen fällt um mindestens 5° nach außen; wo eine Quelle 8 % nennt, gilt ihre Zahl.',
  ),
  why: words(
    'On a flat sill water stands, runs to the ends and into the wall.',
    'Auf einer flachen Fensterbank steht Wasser und läuft an den Enden in die Wand.',
  ),
  reads: { slope_deg: slope },
  limit: 'sill-fall',
  band: [],
  applies: hasSill,
  ask: () => [{ given: {} }],
  compare: ({ slope_deg }, { least_deg }) => ({
    kind: 'amount',
    actual: exactly(slope_deg),
    required: { unit: 'deg', min: least_deg },
  }),
  sum: () => [],
  *remedies(_known, { least_deg }, at) {
    yield* choose({
      edits: [stateIt('sill.slope', sillId(at), least_deg)],
      says: [words(`a fall of ${least_deg}°`, `Gefälle ${least_deg}°`)],
    })
  },
  examples: [
    {
      when: words('5°', '5° Gefälle'),
      practice: 'DE',
      joint: { planned_mm: 12 },
      known: { slope_deg: 5 },
      verdict: 'met',
    },
    {
      when: words('3°', '3° Gefälle'),
      practice: 'AT',
      joint: { planned_mm: 12 },
      known: { slope_deg: 3 },
      verdict: 'not-met',
    },
  ],
})
