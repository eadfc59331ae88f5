import type { FieldAt, PartKind } from '../detail'
import type { Id } from '../geometry'
import type { Term } from '../movement'
import type { LimitKey } from '../practice'
import type { Citation } from '../sources'
import { inWords, writeBand, writeQuantity } from '../units'
import { filled, isSome, type Some, type Words, words } from '../words'
import type { Compared, Remedy } from './finding'
import { type About, type Place, whereOf } from './place'
import {
  missingAt,
  missingThere,
  readAt,
  readThere,
  type Reading,
  type Readings,
  type ValuesOf,
} from './reading'
import type { BandUse, Caution, Rule } from './rule-shape'
import { weigh } from './weigh'

/** What a rule says of one place, before its remedies are tried. */
export type Judgement =
  | { readonly verdict: 'not-applicable'; readonly because: Words }
  | {
      readonly verdict: 'unknown'
      readonly missing: Some<FieldAt>
      readonly restsOn: readonly FieldAt[]
      /** what could be computed all the same */
      readonly sum: () => readonly Term[]
    }
  | (Grounds & {
      readonly verdict: 'refer'
      readonly compared?: Compared
      readonly to: Words
      readonly handOver: readonly Words[]
    })
  | (Grounds & { readonly verdict: 'met'; readonly compared: Compared })
  | (Grounds & {
      readonly verdict: 'advice' | 'not-met'
      readonly compared: Compared
      readonly remedies: () => Iterable<Remedy>
    })

type Grounds = {
  readonly cite?: Citation
  readonly restsOn: readonly FieldAt[]
  readonly sum: () => readonly Term[]
}

/** Asks a rule at one place. */
export const judge = <R extends Readings, L extends LimitKey>(it: Rule<R, L>, at: Place): Judgement => {
  const notAsked = at.practice.notAsked[it.limit]
  if (notAsked) return { verdict: 'not-applicable', because: notAsked }
  const applies = it.applies(at)
  if (applies !== true) return { verdict: 'not-applicable', because: applies }
  const noFigure = at.practice.noFigure[it.limit]
  if (noFigure && !at.practice.limits[it.limit])
    return { verdict: 'refer', to: noFigure, handOver: namesOf(it.reads), restsOn: [], sum: () => [] }
  if (it.about === 'fixing' && !at.fixing)
    return {
      verdict: 'unknown',
      missing: [{ field: 'opening.fixings', part: at.opening.id }],
      restsOn: [],
      sum: () => [],
    }
  const read = readAll(it.reads, at)
  const restsOn = unique([...read.assumed, ...bandRests(at, it.band)])
  if (read.missing)
    return { verdict: 'unknown', missing: read.missing, restsOn, sum: () => soFar(it, read.known, at) }
  const { known } = read
  const found = weigh(it, known, at.band, at.practice)
  if (!found.compared) {
    const handOver = [...namesOf(it.reads), ...bandWords(at, it.band)]
    return { verdict: 'refer', to: noRow, handOver, restsOn, sum: () => [] }
  }
  const { compared, cite, sum, wanted } = found
  const grounds = { cite, restsOn, sum }
  if (found.verdict === 'met') return { ...grounds, verdict: 'met', compared }
  if (found.verdict === 'refer')
    return { ...grounds, to: qualified, handOver: [], ...found.caution, verdict: 'refer', compared }
  const excuse = found.verdict === 'not-met' ? (it.excused?.(at) ?? staying(it.about, at)) : undefined
  if (excuse) return { ...grounds, ...excuse, verdict: 'refer', compared }
  return { ...grounds, verdict: found.verdict, compared, remedies: () => it.remedies(known, wanted, at) }
}

const namesOf = (reads: Readings): readonly Words[] => Object.values(reads).map(it => it.name)

/** What a rule can compute of what is known, held to the first row that depends on nothing. */
const soFar = <R extends Readings, L extends LimitKey>(
  it: Rule<R, L>,
  known: Partial<ValuesOf<R>>,
  { practice }: Place,
): readonly Term[] => {
  const row = it.soFar && practice.limits[it.limit]?.find(one => Object.keys(one.when).length === 0)
  return row ? (it.soFar?.(known, row.then) ?? []) : []
}

type ReadAll<R extends Readings> =
  | { readonly missing?: undefined; readonly known: ValuesOf<R>; readonly assumed: readonly FieldAt[] }
  | {
      readonly missing: Some<FieldAt>
      readonly known: Partial<ValuesOf<R>>
      readonly assumed: readonly FieldAt[]
    }

const readAll = <R extends Readings>(reads: R, at: Place): ReadAll<R> => {
  const values: Record<string, unknown> = {}
  const rests: FieldAt[] = []
  const missing: FieldAt[] = []
  for (const [key, reading] of Object.entries<Reading<unknown>>(reads)) {
    const read = reading.placed
      ? readThere(reading.placed, at)
      : readAt(reading, at.tables ?? at.project, partFor(reading.of, at))
    if (read) {
      values[key] = read.known.value
      rests.push(...read.assumed)
    } else if (reading.placed) missing.push(...missingThere(reading.placed, at))
    else missing.push(...missingAt(reading, at.tables ?? at.project, partFor(reading.of, at)))
  }
  // Every reading gave a value of its own type, under its own key.
  const known = values as ValuesOf<R>
  return isSome(missing) ? { missing, known, assumed: rests } : { known, assumed: rests }
}

/** The part of a place that values of a kind belong to. It is read from the project: all of it counts as looked at. */
const partFor = (of: PartKind, at: Place): Id => {
  const part = partOf(of, at)
  if (part === undefined) throw new Error(`A rule reads a value of a ${of}, and there is none here`)
  lookedAt(part)
  return part.id
}

/** Whether a part is there, all of whose members now count as looked at. */
const lookedAt = (part: object): boolean => Reflect.ownKeys(part).length > 0

/** A value of a seal may hang on the joint around it. */
const partOf = (of: PartKind, at: Place): { readonly id: Id } | undefined => {
  if (of === 'wall') return at.wall
  if (of === 'frame') return at.frame
  if (of === 'joint') return at.joint
  if (of === 'seal') return lookedAt(at.joint) ? at.seal : undefined
  if (of === 'opening') return at.opening
  return of === 'fixing' ? at.fixing : of === 'sill' ? { ...at.opening }.sill : undefined
}

const usedBy: Readonly<Record<BandUse, readonly string[]>> = {
  still: ['joint.planned', 'joint.tolerance'],
  size: ['opening.width', 'opening.height'],
  movement: ['frame.movement', 'opening.width', 'opening.height'],
}

const bandRests = (at: Place, uses: readonly BandUse[]): readonly FieldAt[] => {
  const used = uses.flatMap(use => usedBy[use])
  return at.band.restsOn.filter(it => used.includes(it.field))
}

const unique = (all: readonly FieldAt[]): readonly FieldAt[] =>
  all.filter((it, i) => all.findIndex(other => other.field === it.field && other.part === it.part) === i)

/** What of the joint a person who has to prove it needs to know. */
const bandWords = ({ band }: Place, uses: readonly BandUse[]): readonly Words[] => [
  ...(uses.includes('still')
    ? [
        filled(
          stillJoint,
          inWords(language => writeBand(band.still_mm, 'mm', language, 1)),
        ),
      ]
    : []),
  ...(uses.includes('size')
    ? [
        filled(
          frameSize,
          inWords(language => writeQuantity(band.frame_mm, 'mm', language, 0)),
        ),
      ]
    : []),
  ...(uses.includes('movement')
    ? [
        filled(
          movement,
          inWords(language => writeQuantity(band.opens_mm, 'mm', language, 1)),
        ),
      ]
    : []),
]

/** A part that is there and must stay is not simply changed: whoever protects it decides. */
const staying = (about: About, at: Place): Caution | undefined => {
  const { part } = whereOf(about, at)
  return part !== undefined && at.opening.stays.includes(part.split('/')[0] ?? part)
    ? protectedPart
    : undefined
}

const protectedPart: Caution = {
  to: words('whoever protects the part that has to stay', 'die Stelle, die das zu erhaltende Teil schützt'),
  handOver: [],
}
const stillJoint = words('joint {0} wide', 'Fuge {0} breit')
const frameSize = words('frame {0} across the joint', 'Rahmen {0} quer zur Fuge')
const movement = words('movement {0} each way', 'Bewegung {0} je Richtung')
const noRow = words('the practice in use has no value here', 'das Regelwerk hat hier keinen Wert')
const qualified = words('a qualified person', 'eine sachkundige Person')
