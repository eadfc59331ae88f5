import { membersAt } from '../../detail'
import { sides } from '../../kinds'
import { deflection_mm, type FreeSpan, memberLoad_N_m, neededInertia_cm4 } from '../../load'
import type { Term } from '../../movement'
import { exactly } from '../../units'
import { type Words, words } from '../../words'
import type { Place } from '../place'
import { placed, type Reading } from '../reading'
import { edgeOf, isUnheld, windOn } from '../readings/loads'
import { toldOr } from '../readings/told'
import { toldAmount } from '../readings/told'
import { act } from '../remedies/state'
import { rule } from '../rule'

/** What of an element spans free: a side that nothing holds, else its longest mullion or transom. */
type Spanning = { readonly is: 'side' | 'member'; readonly load_N_m: number; readonly span_mm: number }

const spanningAt = (at: Place): Spanning | 'none' | undefined => {
  const bare = sides.filter(side => isUnheld(at, side))
  const members = (['head', 'left'] as const).flatMap(side =>
    membersAt(at.opening, side).map(it => ({ side, at_mm: it.at_mm.value })),
  )
  if (bare.length === 0 && members.length === 0) return 'none'
  const wind = windOn(at)
  if (!wind) return undefined
  const { width_mm, height_mm } = at.opening
  const spans: readonly Spanning[] =
    bare.length > 0
      ? bare.map(side => ({
          is: 'side',
          load_N_m: wind.edge_N_m,
          span_mm: edgeOf(side) === 'level' ? width_mm.value : height_mm.value,
        }))
      : members.map(({ side, at_mm }) => ({
          is: 'member',
          load_N_m: memberLoad_N_m(wind.element, { edge: edgeOf(side), at_mm }, wind.pressure_Pa),
          span_mm: edgeOf(side) === 'level' ? height_mm.value : width_mm.value,
        }))
  return spans.toSorted((a, b) => b.load_N_m * b.span_mm ** 4 - a.load_N_m * a.span_mm ** 4)[0]
}

const spanning: Reading<Spanning> = placed({
  id: 'opening.free-span',
  name: words('What spans free, under wind', 'Was frei spannt, unter Wind'),
  compute: at => {
    const found = spanningAt(at)
    return found === 'none' ? undefined : found
  },
  beneath: at => [{ field: 'opening.wind', part: at.opening.id, stated: at.opening.told?.wind_Pa }],
})

/** A head without fixings, a mullion, a transom bend no further than the element stands. */
export const freeSpan = rule({
  id: 'free-span',
  about: 'opening',
  title: words('Stiffness of what spans free', 'Steifigkeit dessen, was frei spannt'),
  says: words(
    'A side that nothing holds, a mullion or a transom bends under wind by no more than a part of its span.',
    'Eine Seite ohne Befestigung, ein Pfosten oder Riegel biegt sich unter Wind höchstens um einen Teil der Stützweite.',
  ),
  why: words(
    'What bends too far pulls its seals apart and breaks the glass at its edge.',
    'Was sich zu weit biegt, reißt seine Dichtungen auseinander und bricht das Glas am Rand.',
  ),
  reads: {
    spanning,
    inertia_cm4: toldAmount('opening.free-inertia', 'inertia_cm4'),
    modulus_N_mm2: toldAmount('opening.free-modulus', 'modulus_N_mm2'),
    deflection: toldOr('opening.deflection-class', 'deflection'),
  },
  limit: 'free-span',
  band: [],
  applies: (at): true | Words =>
    spanningAt(at) === 'none' ? words('every side is held, and no member spans free', 'jede Seite ist gehalten, kein Glied spannt frei') : true,
  ask: ({ deflection }) => [{ given: { deflection } }],
  compare: (known, { part }) => ({
    kind: 'amount',
    actual: exactly(deflection_mm(spanOf(known), known.inertia_cm4)),
    required: { unit: 'mm', max: known.spanning.span_mm / part },
  }),
  sum: (known, { part }) => [
    ...spanSum(known.spanning),
    { sign: '', value: deflection_mm(spanOf(known), known.inertia_cm4), unit: 'mm', says: words('5 q L⁴ ÷ 384 E I', '5 q L⁴ ÷ 384 E I, Durchbiegung') },
    { sign: '', value: neededInertia_cm4(spanOf(known), part), unit: 'cm4', says: words('second moment that is needed', 'nötiges Trägheitsmoment') },
  ],
  soFar: ({ spanning: it }) => (it ? spanSum(it) : []),
  *remedies(known, _then, at) {
    yield known.spanning.is === 'side'
      ? act(words('Hold the side by brackets, or stiffen it', 'Seite mit Konsolen halten oder aussteifen'), 'opening.free-inertia', at.opening.id)
      : act(words('Choose a stiffer member', 'Steiferes Glied wählen'), 'opening.free-inertia', at.opening.id)
  },
  examples: [
    {
      when: words('a timber mullion of 500 cm⁴ over 1.5 m', 'ein Holzpfosten von 500 cm⁴ über 1,5 m'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { spanning: { is: 'member', load_N_m: 583, span_mm: 1500 }, inertia_cm4: 500, modulus_N_mm2: 11_000, deflection: 'C' },
      verdict: 'met',
    },
    {
      when: words('a head of 2.4 m with 4 cm⁴ of steel', 'ein Sturz von 2,4 m mit 4 cm⁴ Stahl'),
      practice: 'DE',
      joint: { planned_mm: 20 },
      known: { spanning: { is: 'side', load_N_m: 683, span_mm: 2400 }, inertia_cm4: 4, modulus_N_mm2: 210_000, deflection: 'not-told' },
      verdict: 'not-met',
    },
  ],
}) // prettier-ignore

const spanOf = (known: { readonly spanning: Spanning; readonly modulus_N_mm2: number }): FreeSpan => ({
  load_N_m: known.spanning.load_N_m,
  span_mm: known.spanning.span_mm,
  modulus_N_mm2: known.modulus_N_mm2,
})

const spanSum = ({ load_N_m, span_mm }: Spanning): readonly Term[] => [
  { sign: '', value: load_N_m, unit: 'N_m', says: words('wind on it', 'Wind darauf') },
  { sign: '', value: span_mm, unit: 'mm', says: words('free span', 'freie Stützweite') },
]
