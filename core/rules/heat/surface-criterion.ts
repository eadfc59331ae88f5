import { surfaceFactor, surfaceLimit_C, mould_pct } from '../../air'
import { type Edit, choiceOf, fieldOf } from '../../detail'
import { exactly, specified } from '../../units'
import { filled, words } from '../../words'
import type { LimitShapes } from '../../practice'
import type { Remedy } from '../finding'
import type { Place } from '../place'
import { type Surface, coldestSurface, roomKnown, solvesHeat } from '../readings/physics'
import { lengthIn } from '../remedies/fit'
import { act } from '../remedies/state'
import { rule } from '../rule'

type Then = LimitShapes['surface-criterion']['then']

/** The coldest place inside stays so warm that no mould grows on it. */
export const surfaceCriterion = rule({
  id: 'surface-criterion',
  about: 'zone',
  title: words('Warm enough inside against mould', 'Innen warm genug gegen Schimmel'),
  says: words(
    'At the coldest place of wall, reveal or sill fRsi reaches the limit of the use of the room: 0.70 in dwellings, elsewhere what keeps the air at 80 % on that surface.',
    'An der kältesten Stelle von Wand, Leibung oder Fensterbank erreicht fRsi den Grenzwert der Raumnutzung: 0,70 in Wohnräumen, sonst so viel, dass die Luft dort 80 % nicht überschreitet.',
  ),
  why: words(
    'Where room air touches a colder surface it gets so humid that mould grows without a drop of water.',
    'Wo Raumluft eine kältere Oberfläche berührt, wird sie so feucht, dass Schimmel ohne einen Tropfen Wasser wächst.',
  ),
  reads: { surface: coldestSurface, room: roomKnown },
  limit: 'surface-criterion',
  band: [],
  applies: solvesHeat,
  ask: ({ room }) => [{ given: { room: room.use, air: room.air } }],
  compare: ({ surface }, then) => ({
    kind: 'amount',
    actual: exactly(surface.fRsi),
    required: { unit: 'one', min: leastFactor(surface, then) },
  }),
  sum: ({ surface }, then) => [
    { sign: '', value: surface.temperature_C, unit: 'C', says: words('coldest surface', 'kälteste Oberfläche') },
    { sign: '−', value: surface.outside_C, unit: 'C', says: words('outside', 'außen') },
    { sign: '÷', value: surface.inside_C - surface.outside_C, unit: 'K', says: words('inside less outside', 'innen weniger außen') },
    { sign: '=', value: surface.fRsi, unit: 'one', says: words('fRsi', 'fRsi') },
    ...(then.fRsi === undefined
      ? ([{ sign: '', value: surfaceLimit_C(surface.vapour_Pa, then.humidity_pct ?? mould_pct), unit: 'C', says: filled(words('surface on which the room air reaches {0} %', 'Oberfläche, an der die Raumluft {0} % erreicht'), then.humidity_pct ?? mould_pct) }] as const)
      : []),
  ], // prettier-ignore
  *remedies(_known, _then, at) {
    yield* otherPlaces(at)
    yield* moreCover(at)
    yield* boardOnReveal(at)
    yield act(warmer, 'reveal.cover', at.wall.id)
  },
  examples: [
    {
      when: words('a reveal of 13.9 °C in a dwelling at 20 and −5 °C', 'eine Leibung von 13,9 °C in einem Wohnraum bei 20 und −5 °C'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { surface: at(13.9), room: { use: 'dwelling', air: 'norm' } },
      verdict: 'met',
    },
    {
      when: words('a reveal of 11.8 °C in the same dwelling', 'eine Leibung von 11,8 °C im selben Wohnraum'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { surface: at(11.8), room: { use: 'dwelling', air: 'norm' } },
      verdict: 'not-met',
    },
    {
      when: words('12.55 °C: 0.70 is reached, 80 % is not kept', '12,55 °C: 0,70 ist erreicht, 80 % sind es nicht'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { surface: at(12.55), room: { use: 'dwelling', air: 'own' } },
      verdict: 'not-met',
    },
    {
      when: words('12.55 °C under the standard conditions of a dwelling', '12,55 °C unter den Normbedingungen eines Wohnraums'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { surface: at(12.55), room: { use: 'dwelling', air: 'norm' } },
      verdict: 'met',
    },
    {
      when: words('heat that is still being solved', 'Wärme, die noch gerechnet wird'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { room: { use: 'dwelling', air: 'norm' } },
      verdict: 'unknown',
    },
  ], // prettier-ignore
})

/** What fRsi has to reach: the limit itself, or that of the surface on which the air reaches a humidity. */
const leastFactor = (surface: Surface, then: Then): number =>
  then.fRsi ?? surfaceFactor(surfaceLimit_C(surface.vapour_Pa, then.humidity_pct ?? mould_pct), surface)

/** Further into the wall or further out, nearest first; the check keeps those that cure. */
function* otherPlaces({ project, opening }: Place): Iterable<Remedy> {
  const field = fieldOf('opening.position')
  const { min = 0, max = 0 } = field?.allowed(project, opening.id).bounds ?? {}
  const now_mm = opening.position_mm.value
  for (let off_mm = step_mm; off_mm <= furthest_mm; off_mm += step_mm)
    for (const to_mm of [now_mm - off_mm, now_mm + off_mm])
      if (min <= to_mm && to_mm <= max)
        yield changing(
          filled(
            words('Frame {0} from the bearing layer', 'Rahmen {0} ab tragender Schicht'),
            lengthIn(to_mm),
          ),
          stating('opening.position', opening.id, to_mm),
        )
}

/** Steps in which another place is tried, and how far off: ours. Each takes a solution of every side. */
const step_mm = 20
const furthest_mm = 100

/** What is left where no single change is enough, as on a bare leaf of solid brick. */
const warmer = words(
  'Insulate wall or reveal further, with more than one change, and solve again',
  'Wand oder Leibung weiter dämmen, mit mehr als einer Änderung, und neu rechnen',
)

/** Insulation that laps further over the frame. */
function* moreCover({ project, wall }: Place): Iterable<Remedy> {
  const field = fieldOf('reveal.cover')
  const { max = 0 } = field?.allowed(project, wall.id).bounds ?? {}
  const now_mm = wall.reveal.cover_mm.value
  for (const to_mm of [now_mm + 15, now_mm + 30])
    if (to_mm <= max)
      yield changing(
        filled(words('Cover the frame by {0}', 'Rahmen {0} überdecken'), lengthIn(to_mm)),
        stating('reveal.cover', wall.id, to_mm),
      )
}

/** An insulating board on the flank of the reveal, under its finish. */
function* boardOnReveal({ project, wall }: Place): Iterable<Remedy> {
  const board = choiceOf('reveal.board-material')
  if (wall.reveal.board || !board?.allowed(project, wall.id).choices.some(it => it.value === boardMaterial))
    return
  for (const thickness_mm of [20, 30, 50])
    yield {
      kind: 'change',
      say: filled(
        words('Insulate the reveal by a board of {0}', 'Leibung mit einer Platte von {0} dämmen'),
        lengthIn(thickness_mm),
      ),
      edits: [
        {
          kind: 'state',
          at: { field: 'reveal.board-material', part: wall.id },
          to: specified(boardMaterial),
        },
        stating('reveal.board', wall.id, thickness_mm),
      ],
    }
}

/** What reveals are lined with: thin, firm and indifferent to damp. Common practice, no source. */
const boardMaterial = 'xps'

const stating = (field: string, part: string, value: number): Edit => ({
  kind: 'state',
  at: { field, part },
  to: specified(value),
})

const changing = (say: Remedy['say'], edit: Edit): Remedy => ({ kind: 'change', say, edits: [edit] })

/** A surface under the standard conditions of a dwelling. A function, because the examples above call it. */
function at(temperature_C: number): Surface {
  return {
    of: 'reveal',
    temperature_C,
    fRsi: (temperature_C + 5) / 25,
    inside_C: 20,
    outside_C: -5,
    vapour_Pa: 1168.475571901171,
  }
}
