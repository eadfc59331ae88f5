import { toldWords } from '../../detail'
import { type Words, words } from '../../words'
import { toldWord } from '../readings/told'
import { act } from '../remedies/state'
import { rule } from '../rule'
import { isTold } from '../told-rules'

const names: readonly Words[] =
  toldWords.find(it => it.id === 'opening.rain-class')?.choices.map(it => it.name) ?? []
const steps: readonly string[] =
  toldWords.find(it => it.id === 'opening.rain-class')?.choices.map(it => it.value) ?? []

/** The element is as tight against driving rain as the job asks. */
export const rainClass = rule({
  id: 'rain-class',
  about: 'opening',
  title: words('Element tight against driving rain', 'Element schlagregendicht'),
  says: words(
    'The class of the element against driving rain is at least the one that is asked for.',
    'Die Schlagregenklasse des Elements ist mindestens die verlangte.',
  ),
  why: words(
    'The best joint does not help where the sash lets the rain in.',
    'Die beste Fuge hilft nicht, wo der Flügel den Regen hereinlässt.',
  ),
  reads: { is: toldWord('opening.rain-class', 'rainClass'), asked: toldWord('opening.rain-asked', 'rainAsked') },
  limit: 'rain-class',
  band: [],
  applies: at =>
    isTold(at, 'rainAsked') || isTold(at, 'rainClass') || words('nobody has asked for a class', 'niemand hat eine Klasse verlangt'),
  ask: () => [{ given: {} }],
  compare: known => ({
    kind: 'grade',
    scale: names,
    actual: steps.indexOf(known.is),
    required: steps.indexOf(known.asked),
  }),
  sum: () => [],
  *remedies(_known, _then, at) {
    yield act(words('Order an element of a higher class', 'Element höherer Klasse bestellen'), 'opening.rain-class', at.opening.id)
  },
  examples: [
    {
      when: words('9A where 7A is asked', '9A, wo 7A verlangt ist'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { is: '9A', asked: '7A' },
      verdict: 'met',
    },
    {
      when: words('4A where 7A is asked', '4A, wo 7A verlangt ist'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { is: '4A', asked: '7A' },
      verdict: 'not-met',
    },
  ],
}) // prettier-ignore
