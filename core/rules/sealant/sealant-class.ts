import type { Plane } from '../../kinds'
import { kindOf } from '../../seals'
import { listed, same, words } from '../../words'
import type { Place } from '../place'
import { placed, type Reading } from '../reading'
import { wordOf } from '../remedies/state'
import { rule } from '../rule'

const stated = ({ seal }: Place) => {
  const found = seal?.['class']
  return typeof found === 'object' && typeof found.value === 'string' ? { ...found, value: found.value } : undefined
} // prettier-ignore

/** The class that a sealant is sold by, with its modulus. It never falls back. */
const sealantClass: Reading<string> = placed({
  id: 'sealant.class',
  name: words('Sealant class', 'Dichtstoffklasse'),
  compute: at => stated(at)?.value,
  beneath: at => [{ field: 'sealant.class', part: at.seal?.id ?? at.opening.id, stated: stated(at) }],
})
const plane: Reading<Plane> = placed({
  id: 'seal.plane',
  name: words('Plane of the seal', 'Ebene der Dichtung'),
  compute: at => at.seal?.plane,
})

/** A sealant is soft and stretches far enough for its plane. */
export const sealantClassRule = rule({
  id: 'sealant-class',
  about: 'part',
  title: words('Sealant class for the plane', 'Dichtstoffklasse zur Ebene'),
  says: words(
    'Outside a sealant is of class F-25LM, inside at least F-20LM.',
    'Außen ist der Dichtstoff von Klasse F-25LM, innen mindestens F-20LM.',
  ),
  why: words(
    'A stiff sealant does not stretch: it pulls the plaster off the wall.',
    'Ein steifer Dichtstoff dehnt sich nicht: Er reißt den Putz von der Wand.',
  ),
  reads: { class: sealantClass, plane },
  limit: 'sealant-class',
  band: [],
  applies: ({ seal }) =>
    (seal && kindOf(seal).choices.some(it => it.id === 'sealant.class')) ||
    words('there is no sealant bead here', 'hier ist keine Dichtstofffuge'),
  ask: known => [{ given: { plane: known.plane } }],
  compare: (known, { accepted }) => ({
    kind: 'presence',
    there: [same(known.class)],
    missing: accepted.includes(known.class) ? [] : [listed(accepted.map(same))],
  }),
  sum: () => [],
  *remedies(_known, { accepted }, at) {
    if (at.seal) for (const one of accepted) yield* wordOf(at.project, 'sealant.class', at.seal.id, one)
  },
  examples: [
    {
      when: words('25LM outside', '25LM außen'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { class: '25LM', plane: 'outer' },
      verdict: 'met',
    },
    {
      when: words('20LM outside', '20LM außen'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { class: '20LM', plane: 'outer' },
      verdict: 'not-met',
    },
    {
      when: words('a class of which nobody knows the modulus', 'eine Klasse, deren Modul niemand kennt'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { plane: 'inner' },
      verdict: 'unknown',
    },
  ],
})
