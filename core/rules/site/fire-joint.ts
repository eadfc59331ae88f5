import { words } from '../../words'
import { toldWord } from '../readings/told'
import { act } from '../remedies/state'
import { rule } from '../rule'

/** A joint in a fire-rated or separating wall is proven by somebody else. */
export const fireJoint = rule({
  id: 'fire-joint',
  about: 'opening',
  title: words('Joint in a fire-rated wall', 'Fuge in einer Brandwand'),
  says: words(
    'A joint in a fire-rated or separating wall has a fire proof of its own.',
    'Eine Fuge in einer Brand- oder Trennwand hat einen eigenen Brandschutznachweis.',
  ),
  why: words(
    'Foam and tape burn; what closes a joint against rain does not close it against fire.',
    'Schaum und Band brennen; was eine Fuge gegen Regen schließt, schließt sie nicht gegen Feuer.',
  ),
  reads: { fire: toldWord('opening.fire', 'fire') },
  limit: 'fire-joint',
  band: [],
  applies: ({ opening }) =>
    opening.told?.fire?.value === 'yes' || words('nobody says that the wall is fire-rated', 'niemand nennt die Wand eine Brandwand'),
  ask: () => [{ given: {} }],
  compare: ({ fire }) => ({
    kind: 'presence',
    there: [],
    missing: fire === 'yes' ? [words('fire proof of the joint', 'Brandschutznachweis der Fuge')] : [],
  }),
  sum: () => [],
  *remedies(_known, _then, at) {
    yield act(words('Have the joint designed for fire', 'Fuge für den Brandfall bemessen lassen'), 'opening.fire', at.opening.id)
  },
  caution: ({ fire }) =>
    fire === 'yes'
      ? {
          to: words('a fire engineer', 'eine Fachplanung Brandschutz'),
          handOver: [words('fire proof of the joint', 'Brandschutznachweis der Fuge')],
        }
      : undefined,
  examples: [
    {
      when: words('a separating wall', 'eine Trennwand'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { fire: 'yes' },
      verdict: 'refer',
    },
    {
      when: words('an ordinary wall', 'eine gewöhnliche Wand'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { fire: 'no' },
      verdict: 'met',
    },
  ],
}) // prettier-ignore
