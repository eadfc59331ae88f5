import { type Plane, planes } from '../../kinds'
import type { Compared } from '../finding'
import { closePlanes } from '../remedies/remedies'
import { wallDuties } from '../readings/duties'
import { type Filled, filledPlanes } from '../readings/seals'
import { toldOr } from '../readings/told'
import { act } from '../remedies/state'
import { rule } from '../rule'
import { type Words, words } from '../../words'

const foam = words('gun foam', 'Ortschaum')
const tape = words('tape', 'Fugenband')
const membrane = words('membrane', 'Folie')
const caulk = words('paintable caulk', 'überstreichbare Masse')
const wall = ['bearing', 'airtight', 'rain'] as const

/** Each plane of the joint that the practice asks for has something in it. */
export const planesFilled = rule({
  id: 'planes-filled',
  about: 'zone',
  title: words('Planes of the joint closed', 'Ebenen der Fuge geschlossen'),
  says: words(
    'A joint has an airtight seal inside, a fill in the middle and a seal against driving rain outside, all round.',
    'Eine Fuge hat umlaufend innen eine luftdichte Dichtung, in der Mitte eine Füllung und außen eine Dichtung gegen Schlagregen.',
  ),
  why: words(
    'Foam alone insulates. Without a seal inside, room air reaches the cold foam and leaves water there; without one outside, rain does.',
    'Schaum allein dämmt nur. Ohne Dichtung innen gelangt Raumluft an den kalten Schaum und lässt dort Wasser zurück, ohne Dichtung außen der Regen.',
  ),
  reads: { filled: filledPlanes, duties: wallDuties, proof: toldOr('opening.inner-proof', 'innerProof') },
  limit: 'planes-filled',
  band: [],
  applies: () => true,
  ask: () => [{ given: {} }],
  compare: ({ filled, proof }, then): Compared => ({
    kind: 'presence',
    there: planes.toReversed().flatMap(plane => filled[plane]),
    missing: [
      ...emptyOf(filled, then.planes).map(plane => wanted[plane]),
      ...(then.isProven === true && proof === 'none' && filled.inner.length > 0 ? [provenInside] : []),
    ],
  }),
  sum: () => [],
  *remedies({ filled }, then, at) {
    const empty = emptyOf(filled, then.planes)
    if (empty.length > 0) yield* closePlanes(at, empty)
    else
      yield act(
        words(
          'Seal inside with a product whose airtightness is proven',
          'Innen mit einem Produkt abdichten, dessen Luftdichtheit nachgewiesen ist',
        ),
        'opening.inner-proof',
        at.opening.id,
      )
  },
  examples: [
    {
      when: words('tape outside, foam, membrane inside', 'Fugenband außen, Schaum, Folie innen'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: {
        filled: { outer: [tape], middle: [foam], inner: [membrane] },
        duties: wall,
        proof: 'not-told',
      },
      verdict: 'met',
    },
    {
      when: words('foam alone', 'nur Schaum'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { filled: { outer: [], middle: [foam], inner: [] }, duties: wall, proof: 'not-told' },
      verdict: 'not-met',
    },
    {
      when: words(
        'seals inside and outside, nothing between, in Britain',
        'Dichtungen innen und außen, dazwischen nichts, in Großbritannien',
      ),
      practice: 'UK',
      joint: { planned_mm: 8 },
      known: { filled: { outer: [tape], middle: [], inner: [membrane] }, duties: wall, proof: 'not-told' },
      verdict: 'met',
    },
    {
      when: words(
        'a caulk inside of which nobody knows how tight it is',
        'innen eine Masse, deren Dichtheit niemand kennt',
      ),
      practice: 'UK',
      joint: { planned_mm: 5 },
      known: { filled: { outer: [tape], middle: [foam], inner: [caulk] }, duties: wall, proof: 'none' },
      verdict: 'advice',
    },
    {
      when: words(
        'a wall of which no layer is said to be airtight',
        'eine Wand, von der keine Schicht als luftdicht benannt ist',
      ),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { filled: { outer: [tape], middle: [foam], inner: [membrane] }, proof: 'not-told' },
      verdict: 'unknown',
    },
  ],
})

const provenInside = words(
  'inside: proof that the seal is airtight',
  'innen: Nachweis, dass die Dichtung luftdicht ist',
)

const emptyOf = (filled: Filled, asked: readonly Plane[]): readonly Plane[] =>
  asked.filter(plane => filled[plane].length === 0)

const wanted: Readonly<Record<Plane, Words>> = {
  inner: words('inside: an airtight seal', 'innen: eine luftdichte Dichtung'),
  middle: words('middle: a fill over the depth', 'Mitte: eine Füllung über die Tiefe'),
  outer: words('outside: a seal against driving rain', 'außen: eine Dichtung gegen Schlagregen'),
}
