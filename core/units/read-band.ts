import { type Words, words } from '../words'
import { type Band, bandOf } from './band'
import { type Reading, type Wanted, asking, outsideOf, problem } from './read'
import { type Sum, longestText, sumOf } from './read-sum'
import { tokensOf } from './read-tokens'
import { type Result, ok, refused } from './result'
import type { Unit } from './unit'
import { inWords, writeBand } from './write'

/**
 * Reads a typed range: `10..15`, `10-15`, `10 to 15`, `10 bis 15`, `12 ±3`, `12 -2/+3`, or a single value.
 * Each end may be a sum with units; an end without a unit takes the other's. Ends the wrong way round are swapped,
 * with a note. Refused with the allowed range like a quantity.
 */
export const readBand = (text: string, wanted: Wanted): Result<Reading<Band>> => {
  const ends = endsOf(text, wanted.unit)
  if ('refusal' in ends) return refused(problem(ends.refusal, wanted))
  const band = bandOf(...ends.values)
  const [first, last] = ends.values
  const problems = [...new Set([band.min, band.max])].flatMap(end => outsideOf(end, wanted) ?? [])
  const [bad, ...more] = problems
  if (bad !== undefined) return refused(bad, ...more)
  const understood = inWords(language => writeBand(band, wanted.unit, language))
  return ok({
    value: band,
    understood,
    differs: ends.isReckoned || last < first,
    notes: last < first ? [swapped] : [],
    ...asking(understood, ends.sums),
  })
}

type Ends =
  | {
      readonly values: readonly [number, number]
      readonly sums: readonly Sum[]
      /** the ends are not simply what stands there */
      readonly isReckoned: boolean
    }
  | { readonly refusal: Words }

const endsOf = (text: string, unit: Unit): Ends => {
  if (longestText < text.length) return oneOf(text, unit)
  const span = spanOf(text, unit)
  if (span !== undefined) return spanning(span, unit)
  const tolerance = toleranceOf(text)
  if (tolerance === undefined) return oneOf(text, unit)
  return 'refusal' in tolerance ? tolerance : around(tolerance, unit)
}

const oneOf = (text: string, unit: Unit): Ends => {
  const sum = sumOf(text, unit)
  return 'refusal' in sum ? sum : { values: [sum.value, sum.value], sums: [sum], isReckoned: !sum.isPlain }
}

const spanning = (span: readonly [string, string], unit: Unit): Ends => {
  const sums = sumsOf(span, unit)
  if ('refusal' in sums) return sums
  const [from, to] = sums.values
  return { values: [from.value, to.value], sums: sums.values, isReckoned: !from.isPlain || !to.isPlain }
}

const around = (it: Tolerance, unit: Unit): Ends => {
  const low = sumsOf([it.middle, it.below], unit)
  if ('refusal' in low) return low
  const high = sumsOf([it.middle, it.above], unit)
  if ('refusal' in high) return high
  const [middle, below] = low.values
  const above = high.values[1]
  if (below.value < 0 || above.value < 0) return { refusal: twoSigns }
  return {
    values: [middle.value - below.value, middle.value + above.value],
    sums: [middle, below, above],
    isReckoned: true,
  }
}

/** Both sums; the one without a unit counts in the unit of the other. */
const sumsOf = (
  [a, b]: readonly [string, string],
  unit: Unit,
): { readonly values: readonly [Sum, Sum] } | { readonly refusal: Words } => {
  const [first, last] = [sumOf(a, unit), sumOf(b, unit)]
  if ('refusal' in first) return first
  if ('refusal' in last) return last
  if (first.hasUnit === last.hasUnit) return { values: [first, last] }
  const lent = first.hasUnit ? sumOf(b, unit, first.unitSize) : sumOf(a, unit, last.unitSize)
  if ('refusal' in lent) return lent
  return { values: first.hasUnit ? [first, lent] : [lent, last] }
}

/** Signs and words that only a range has; between two plain numbers also a dash. */
const betweens = /\.{2,3}|…|(?<=[\s\d"'])(?:to|bis)(?=[\s\d])/i

const spanOf = (text: string, unit: Unit): readonly [string, string] | undefined => {
  const between = betweens.exec(text)
  if (between !== null) return [text.slice(0, between.index), text.slice(between.index + between[0].length)]
  return [...text.matchAll(/[-–−]/g)]
    .map(({ index }) => [text.slice(0, index), text.slice(index + 1)] as const)
    .find(([from, to]) => isOneNumber(from, unit) && isOneNumber(to, unit))
}

const isOneNumber = (text: string, unit: Unit): boolean => {
  const found = tokensOf(text, unit)
  if ('refusal' in found) return false
  const [first, second, ...more] = found.tokens
  const isSigned = first?.kind === 'sign' && /[+-]/.test(first.sign)
  return isSigned
    ? second?.kind === 'number' && more.length === 0
    : first?.kind === 'number' && second === undefined
}

type Tolerance = { readonly middle: string; readonly below: string; readonly above: string }

const evenly = /^(.+?)(?:±|\+\s*\/?\s*[-−])(.+)$/
const unevenly = /^(.+?)([+\-−])([^+\-−/]+)\/\s*([+\-−])([^+\-−]+)$/

const toleranceOf = (text: string): Tolerance | { readonly refusal: Words } | undefined => {
  const [, middle, first, one, second, other] = unevenly.exec(text) ?? []
  if (middle !== undefined && one !== undefined && other !== undefined) {
    if ((first === '+') === (second === '+')) return { refusal: sameWay }
    return first === '+' ? { middle, below: other, above: one } : { middle, below: one, above: other }
  }
  const [, centre, each] = evenly.exec(text) ?? []
  return centre === undefined || each === undefined ? undefined : { middle: centre, below: each, above: each }
}

const swapped = words(
  'the ends were the wrong way round and are swapped',
  'die Enden waren vertauscht und sind gewechselt',
)
const twoSigns = words(
  'a tolerance has its sign in front already',
  'eine Toleranz trägt ihr Vorzeichen schon',
)
const sameWay = words('both tolerances go the same way', 'beide Toleranzen gehen in dieselbe Richtung')
