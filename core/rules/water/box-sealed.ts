import type { Coupling } from '../../detail'
import { type Words, words } from '../../words'
import { placed, type Reading } from '../reading'
import { act } from '../remedies/state'
import { rule } from '../rule'

/** How a shutter box is sealed: to the frame, at its ends, where belt or cable pass. */
type Sealed = {
  readonly coupling: Coupling
  readonly ends: 'yes' | 'no'
  readonly passage: 'yes' | 'no' | 'not-told'
}

const sealed: Reading<Sealed> = placed<Sealed>({
  id: 'box.sealed',
  name: words('Seals of the shutter box', 'Dichtungen des Rollladenkastens'),
  compute: ({ opening: { box } }) => {
    if (!box?.coupling) return undefined
    // a coupling that is foamed only settles it; else the ends have to be told too
    if (box.coupling.value !== 'sealed' && !box.ends)
      return { coupling: box.coupling.value, ends: 'no', passage: box.passage?.value ?? 'not-told' }
    return (
      box.ends && {
        coupling: box.coupling.value,
        ends: box.ends.value,
        passage: box.passage?.value ?? 'not-told',
      }
    )
  },
  beneath: ({ opening: { id, box } }) => [
    { field: 'box.coupling', part: box?.id ?? id, stated: box?.coupling },
    { field: 'box.ends', part: box?.id ?? id, stated: box?.ends },
  ],
})

/** A shutter box is sealed to the frame, to the masonry and where something passes through it. */
export const boxSealed = rule({
  id: 'box-sealed',
  about: 'opening',
  title: words('Shutter box sealed', 'Rollladenkasten abgedichtet'),
  says: words(
    'The coupling of box and frame is sealed inside and outside, so are its ends and the passage of belt or cable; foam alone is no seal.',
    'Die Kopplung von Kasten und Rahmen ist innen und außen gedichtet, ebenso Enden und Durchführung; Schaum allein dichtet nicht.',
  ),
  why: words(
    'The box is the largest hole in the wall: all its seams lead straight outdoors.',
    'Der Kasten ist das größte Loch in der Wand: Alle seine Nähte führen ins Freie.',
  ),
  reads: { sealed },
  limit: 'box-sealed',
  band: [],
  applies: ({ opening }) =>
    opening.box !== undefined || words('no shutter box stands on the frame', 'kein Rollladenkasten steht auf dem Rahmen'),
  ask: () => [{ given: {} }],
  compare: known => {
    const parts: readonly (readonly [Words, boolean])[] = [
      [words('coupling sealed inside and outside', 'Kopplung innen und außen gedichtet'), known.sealed.coupling === 'sealed'],
      [words('ends sealed to the masonry', 'Enden zum Mauerwerk gedichtet'), known.sealed.ends === 'yes'],
      ...(known.sealed.passage === 'not-told' ? [] : [[words('passage sealed', 'Durchführung gedichtet'), known.sealed.passage === 'yes'] as const]),
    ]
    return {
      kind: 'presence',
      there: parts.filter(([, is]) => is).map(([name]) => name),
      missing: parts.filter(([, is]) => !is).map(([name]) => name),
    }
  },
  sum: () => [],
  *remedies(_known, _then, at) {
    yield act(
      words('Seal coupling, ends and passage with sealant or membrane', 'Kopplung, Enden und Durchführung mit Dichtstoff oder Folie abdichten'),
      'box.coupling',
      at.opening.box?.id ?? at.opening.id,
    )
  },
  examples: [
    {
      when: words('sealed all round', 'ringsum gedichtet'),
      practice: 'AT',
      joint: { planned_mm: 20 },
      known: { sealed: { coupling: 'sealed', ends: 'yes', passage: 'yes' } },
      verdict: 'met',
    },
    {
      when: words('coupled with foam only', 'nur mit Schaum gekoppelt'),
      practice: 'DE',
      joint: { planned_mm: 20 },
      known: { sealed: { coupling: 'foam', ends: 'no', passage: 'not-told' } },
      verdict: 'not-met',
    },
  ],
}) // prettier-ignore
