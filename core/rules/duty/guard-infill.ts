import { words } from '../../words'
import { toldOr, wordName } from '../readings/told'
import { act } from '../remedies/state'
import { rule } from '../rule'

/** Glass or infill that guards is proven by its category and by impact. */
export const guardInfill = rule({
  id: 'guard-infill',
  about: 'opening',
  title: words('Glass or infill as a guard', 'Glas oder Füllung als Absturzsicherung'),
  says: words(
    'Glass or infill that keeps people from falling has a category and an impact proof of its own.',
    'Glas oder Füllung, die vor Absturz sichert, hat Kategorie und eigenen Stoßnachweis.',
  ),
  why: words('A pane that holds the wind need not hold a person.', 'Eine Scheibe, die den Wind hält, hält noch keinen Menschen.'),
  reads: { infill: toldOr('opening.infill', 'infill') },
  limit: 'guard-infill',
  band: [],
  applies: ({ opening }) =>
    opening.asked?.guarding?.value === 'yes' || words('it does not have to guard against falling', 'es muss nicht vor Absturz sichern'),
  ask: () => [{ given: {} }],
  compare: ({ infill }, { accepted }) => ({
    kind: 'presence',
    there: infill === 'not-told' ? [] : [wordName('opening.infill', infill)],
    missing: accepted.includes(infill) ? [] : [proof],
  }),
  sum: () => [],
  *remedies(_known, _then, at) {
    yield act(words('Have glass or infill designed and tested', 'Glas oder Füllung bemessen und prüfen lassen'), 'opening.infill', at.opening.id)
  },
  caution: () => ({
    to: words('whoever designs the glass', 'wer das Glas bemisst'),
    handOver: [proof],
  }),
  examples: [
    {
      when: words('category and proof named', 'Kategorie und Nachweis genannt'),
      practice: 'DE',
      joint: { planned_mm: 25 },
      known: { infill: 'proven' },
      verdict: 'refer',
    },
    {
      when: words('the category alone', 'nur die Kategorie'),
      practice: 'AT',
      joint: { planned_mm: 25 },
      known: { infill: 'category' },
      verdict: 'refer',
    },
  ],
}) // prettier-ignore

const proof = words('category and impact proof', 'Kategorie und Stoßnachweis')
