import { filled, listed, same, words } from '../../words'
import { placed, type Reading } from '../reading'
import { type AnySeal, kindOf } from '../../seals'
import { wordOf } from '../remedies/state'
import { rule } from '../rule'

type Exposure = 'exposed' | 'sheltered' | 'covered' | 'inside'

/** The class that is printed on a tape. */
const tapeClass: Reading<string> = placed({
  id: 'tape.class',
  name: words('Tape class', 'Bandklasse'),
  compute: at => classOf(at.seal)?.value,
  beneath: at => [{ field: 'tape.class', part: at.seal?.id ?? at.opening.id, stated: classOf(at.seal) }],
})

const classOf = (seal: AnySeal | undefined) => {
  const found = seal?.['class']
  return typeof found === 'object' && typeof found.value === 'string'
    ? { ...found, value: found.value }
    : undefined
}

/** How rain reaches a tape: not at all in the inner plane, else as the opening says. */
const exposure: Reading<Exposure> = placed({
  id: 'opening.exposure',
  name: words('Exposure of the outer seal', 'Bewitterung der äußeren Dichtung'),
  compute: at => (at.seal?.plane === 'inner' ? 'inside' : at.opening.asked?.exposure?.value),
  beneath: at => [{ field: 'opening.exposure', part: at.opening.id, stated: at.opening.asked?.exposure }],
})

/** A tape is of a class that stands what reaches it. */
export const tapeClassRule = rule({
  id: 'tape-class',
  about: 'part',
  title: words('Tape class for the exposure', 'Bandklasse zur Bewitterung'),
  says: words(
    'A tape that driving rain reaches is of class BG1 or MF1; sheltered or covered, BG2 or MF2 will do; inside it is BGR.',
    'Ein vom Schlagregen erreichtes Band hat Klasse BG1 oder MF1, geschützt oder verdeckt genügt BG2 oder MF2, innen gilt BGR.',
  ),
  why: words(
    'Classes are tested at 600 and 300 Pa of driving rain; a tape of the lower one lets it through.',
    'Die Klassen sind mit 600 und 300 Pa Schlagregen geprüft; ein Band der niedrigeren lässt ihn durch.',
  ),
  reads: { class: tapeClass, exposure },
  limit: 'tape-class',
  band: [],
  applies: ({ seal }) =>
    seal && kindOf(seal).choices.some(it => it.id === 'tape.class')
      ? true
      : words('there is no tape here', 'hier ist kein Fugenband'),
  ask: known => [{ given: { exposure: known.exposure } }],
  compare: (known, { classes }) => ({
    kind: 'presence',
    there: [filled(words('class {0}', 'Klasse {0}'), known.class)],
    missing: classes.includes(known.class)
      ? []
      : [filled(words('one of {0}', 'eine von {0}'), listed(classes.map(same)))],
  }),
  sum: () => [],
  *remedies(_known, { classes }, at) {
    if (!at.seal) return
    for (const one of classes) yield* wordOf(at.project, 'tape.class', at.seal.id, one)
  },
  examples: [
    {
      when: words('BG1 in open weather', 'BG1 frei bewittert'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { class: 'BG1', exposure: 'exposed' },
      verdict: 'met',
    },
    {
      when: words('BG2 under external insulation', 'BG2 unter Außendämmung'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { class: 'BG2', exposure: 'covered' },
      verdict: 'met',
    },
    {
      when: words('BG2 in open weather', 'BG2 frei bewittert'),
      practice: 'UK',
      joint: { planned_mm: 8 },
      known: { class: 'BG2', exposure: 'exposed' },
      verdict: 'not-met',
    },
    {
      when: words('a tape of which nobody knows the class', 'ein Band, dessen Klasse niemand kennt'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { exposure: 'exposed' },
      verdict: 'unknown',
    },
  ],
})
