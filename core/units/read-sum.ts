import { type Words, words } from '../words'
import { inchesToFoot } from './read-units'
import { type Token, tokensOf } from './read-tokens'
import type { Unit } from './unit'

/** What a typed sum comes to. */
export type Sum = {
  /** in the unit that was asked for */
  readonly value: number
  /** a unit was typed somewhere, so `value` does not depend on which unit is understood */
  readonly hasUnit: boolean
  /** size of the last unit that was typed, in the unit that was asked for */
  readonly unitSize: number
  /** it is one plain number, in the unit that was asked for */
  readonly isPlain: boolean
  /** three decimals that may have been meant as thousands */
  readonly maybeThousands: boolean
}

/** Longest text that is read: a sum that nobody can check at a glance is a mistake. *Ours.* */
export const longestText = 200

/**
 * Works out a typed sum of numbers, units, `+ - * / ( )`. A number without a unit counts in `plainSize` of the unit
 * that is asked for, as soon as it meets a length or stands alone.
 */
export const sumOf = (text: string, unit: Unit, plainSize = 1): Sum | Refusal => {
  if (longestText < text.length) return { refusal: tooLong }
  const found = tokensOf(text, unit)
  if ('refusal' in found) return found
  const { tokens } = found
  if (tokens.length === 0) return { refusal: nothing }
  const total = sumFrom({ tokens, plainSize }, 0)
  if ('refusal' in total) return total
  if (total.next < tokens.length) return { refusal: unfinished }
  const value = sizeOf(total.value, 1, plainSize)
  if (!Number.isFinite(value)) return { refusal: tooLarge }
  const numbers = tokens.filter(it => it.kind === 'number')
  const [only] = numbers
  return {
    value,
    hasUnit: total.value.power === 1,
    unitSize: numbers.findLast(it => it.unit !== undefined)?.unit?.size ?? 1,
    isPlain: tokens.length === 1 && only !== undefined && only.isPlain && (only.unit?.size ?? 1) === 1,
    maybeThousands: numbers.some(it => it.maybeThousands),
  }
}

type Refusal = { readonly refusal: Words }

/** What is being worked out: its pieces, and what a number without a unit counts. */
type Typed = { readonly tokens: readonly Token[]; readonly plainSize: number }

/** A number, or (power 1) a quantity in the unit that was asked for. */
type Sized = { readonly size: number; readonly power: number }

/** What was worked out, and where to go on. */
type Got = { readonly value: Sized; readonly next: number } | Refusal

const sumFrom = (typed: Typed, from: number): Got => {
  let left = productFrom(typed, from)
  while (!('refusal' in left)) {
    const sign = signAt(typed, left.next)
    if (sign !== '+' && sign !== '-') break
    const right = productFrom(typed, left.next + 1)
    if ('refusal' in right) return right
    left = { value: added(left.value, right.value, sign, typed.plainSize), next: right.next }
  }
  return left
}

const productFrom = (typed: Typed, from: number): Got => {
  let left = factorFrom(typed, from)
  while (!('refusal' in left)) {
    const sign = signAt(typed, left.next)
    if (sign !== '*' && sign !== '/') break
    const right = factorFrom(typed, left.next + 1)
    if ('refusal' in right) return right
    const value = sign === '*' ? multiplied(left.value, right.value) : divided(left.value, right.value)
    if ('refusal' in value) return value
    left = { value, next: right.next }
  }
  return left
}

const factorFrom = (typed: Typed, from: number): Got => {
  const token = typed.tokens[from]
  if (token === undefined) return { refusal: unfinished }
  if (token.kind === 'number') return quantityFrom(typed, from, token)
  if (token.sign === '(') {
    const inner = sumFrom(typed, from + 1)
    if ('refusal' in inner) return inner
    return signAt(typed, inner.next) === ')' ? { ...inner, next: inner.next + 1 } : { refusal: openBracket }
  }
  if (token.sign !== '+' && token.sign !== '-') return { refusal: unfinished }
  const inner = factorFrom(typed, from + 1)
  if ('refusal' in inner || token.sign === '+') return inner
  return { ...inner, value: { ...inner.value, size: -inner.value.size } }
}

/** A number with its unit; feet take the inches behind them along. */
const quantityFrom = ({ tokens }: Typed, from: number, token: Token & { kind: 'number' }): Got => {
  if (token.unit === undefined) return { value: { size: token.value, power: 0 }, next: from + 1 }
  const size = token.value * token.unit.size
  const inches = token.unit.isFeet ? tokens[from + 1] : undefined
  if (inches?.kind !== 'number') return { value: { size, power: 1 }, next: from + 1 }
  const inch = token.unit.size / inchesToFoot
  const isInches = inches.unit === undefined || Math.abs(inches.unit.size - inch) < 1e-9
  if (!isInches || inchesToFoot <= inches.value) return { refusal: inchesAfterFeet }
  return { value: { size: size + inches.value * inch, power: 1 }, next: from + 2 }
}

/** Where a number meets a quantity, it counts in the unit that is understood. */
const added = (a: Sized, b: Sized, sign: '+' | '-', plainSize: number): Sized => {
  const power = Math.max(a.power, b.power)
  const more = sizeOf(b, power, plainSize)
  return { size: sizeOf(a, power, plainSize) + (sign === '+' ? more : -more), power }
}

const sizeOf = (it: Sized, power: number, plainSize: number): number =>
  it.power < power ? it.size * plainSize : it.size

const multiplied = (a: Sized, b: Sized): Sized | Refusal =>
  a.power + b.power === 2
    ? { refusal: lengthTimesLength }
    : { size: a.size * b.size, power: a.power + b.power }

const divided = (a: Sized, b: Sized): Sized | Refusal => {
  if (b.size === 0) return { refusal: byZero }
  return a.power < b.power ? { refusal: byLength } : { size: a.size / b.size, power: a.power - b.power }
}

const signAt = ({ tokens }: Typed, at: number): string | undefined => {
  const token = tokens[at]
  return token?.kind === 'sign' ? token.sign : undefined
}

const nothing = words('nothing is typed', 'nichts eingegeben')
const tooLong = words(
  `longer than ${longestText} characters, so not read`,
  `länger als ${longestText} Zeichen, daher nicht gelesen`,
)
const tooLarge = words('too large a number', 'die Zahl ist zu groß')
const unfinished = words('the sum is not complete', 'die Rechnung ist nicht vollständig')
const openBracket = words('a bracket is not closed', 'eine Klammer ist nicht geschlossen')
const byZero = words('nothing can be divided by zero', 'durch null kann nicht geteilt werden')
const byLength = words(
  'a number cannot be divided by a length here',
  'eine Zahl lässt sich hier nicht durch eine Länge teilen',
)
const lengthTimesLength = words('a length times a length is no length', 'Länge mal Länge ist keine Länge')
const inchesAfterFeet = words('after feet come inches below 12', 'nach Fuß folgen Zoll unter 12')
