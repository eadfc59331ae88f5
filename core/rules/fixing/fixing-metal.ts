import { listed, words } from '../../words'
import { toldWord, wordName } from '../readings/told'
import { act } from '../remedies/state'
import { rule } from '../rule'
import { placed, type Reading } from '../reading'

const air: Reading<'plain' | 'coast' | 'pool'> = placed<'plain' | 'coast' | 'pool'>({
  id: 'opening.air-around',
  name: words('Air that fixings stand in', 'Luft, in der Befestigungen stehen'),
  // where nobody speaks of coast or pool the air is plain
  compute: at => at.opening.told?.airAround?.value ?? 'plain',
})

/** Fixings do not rust away in the air that they stand in. */
export const fixingMetal = rule({
  id: 'fixing-metal',
  about: 'opening',
  title: words('Metal of the fixings', 'Metall der Befestigung'),
  says: words(
    'Fixings and brackets are zinc plated or better, at the coast of stainless steel A4; in the air of a pool an engineer chooses.',
    'Befestigungen sind verzinkt oder besser, an der Küste aus nichtrostendem Stahl A4; in Hallenbadluft wählt ein Ingenieur.',
  ),
  why: words(
    'Chloride eats stainless steel under tension, and nobody sees it behind the seals.',
    'Chlorid zerfrisst nichtrostenden Stahl unter Spannung, und hinter den Dichtungen sieht es niemand.',
  ),
  reads: { metal: toldWord('opening.fixing-metal', 'fixingMetal'), air },
  limit: 'fixing-metal',
  band: [],
  applies: () => true,
  ask: known => [{ given: { air: known.air } }],
  compare: ({ metal }, { accepted }) => ({
    kind: 'presence',
    there: [wordName('opening.fixing-metal', metal)],
    missing: accepted.includes(metal) ? [] : [listed(accepted.map(it => wordName('opening.fixing-metal', it)))],
  }),
  sum: () => [],
  *remedies(_known, _then, at) {
    yield act(words('Choose fixings of another metal', 'Befestigung aus anderem Metall wählen'), 'opening.fixing-metal', at.opening.id)
  },
  examples: [
    {
      when: words('zinc plated inland', 'verzinkt im Binnenland'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { metal: 'zinc', air: 'plain' },
      verdict: 'met',
    },
    {
      when: words('zinc plated at the coast', 'verzinkt an der Küste'),
      practice: 'UK',
      joint: { planned_mm: 5 },
      known: { metal: 'zinc', air: 'coast' },
      verdict: 'not-met',
    },
    {
      when: words('A4 in a pool', 'A4 im Hallenbad'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { metal: 'A4', air: 'pool' },
      verdict: 'refer',
    },
  ],
}) // prettier-ignore
