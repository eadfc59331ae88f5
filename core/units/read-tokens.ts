import { type Words, filled, same, words } from '../words'
import { type TypedUnit, typedUnits } from './read-units'
import type { Unit } from './unit'

/** A piece of what was typed. A number carries the unit behind it, and whether its three decimals may be thousands. */
export type Token =
  | {
      readonly kind: 'number'
      readonly value: number
      readonly unit?: TypedUnit
      readonly isPlain: boolean
      readonly maybeThousands: boolean
    }
  | { readonly kind: 'sign'; readonly sign: '+' | '-' | '*' | '/' | '(' | ')' }

/** Either the pieces, or why they cannot be told apart. */
export type Tokens = { readonly tokens: readonly Token[] } | { readonly refusal: Words }

/** Takes a typed sum apart. Spaces of any width only separate; they group thousands where exactly three digits follow. */
export const tokensOf = (text: string, unit: Unit): Tokens => {
  const units = typedUnits(unit)
  const tokens: Token[] = []
  let rest = text.trim()
  while (rest !== '') {
    const taken = signAt(rest) ?? numberAt(rest, units)
    if (taken === undefined) return { refusal: filled(notUnderstood, same(firstPiece(rest))) }
    if ('refusal' in taken) return taken
    tokens.push(taken.token)
    rest = rest.slice(taken.length).trimStart()
  }
  return { tokens }
}

type Taken = { readonly token: Token; readonly length: number }

const notUnderstood = words('“{0}” is not understood', '„{0}“ ist nicht verständlich')
const manyMarks = words(
  '“{0}” has more than one decimal mark; write it without thousands marks',
  '„{0}“ hat mehr als ein Dezimalzeichen; bitte ohne Tausenderzeichen schreiben',
)
const byNothing = words('“{0}” divides by zero', '„{0}“ teilt durch null')

/** Signs as they are typed and as they are printed. */
const signs: ReadonlyMap<string, '+' | '-' | '*' | '/' | '(' | ')'> = new Map([
  ['+', '+'],
  ['-', '-'],
  ['−', '-'],
  ['–', '-'],
  ['*', '*'],
  ['×', '*'],
  ['·', '*'],
  ['/', '/'],
  ['÷', '/'],
  [':', '/'],
  ['(', '('],
  [')', ')'],
])

const signAt = (text: string): Taken | undefined => {
  const sign = signs.get(text.charAt(0))
  return sign && { token: { kind: 'sign', sign }, length: 1 }
}

/** `7/16` before a unit, or behind whole ones: one broken number, not a division by a quantity. */
const broken = /^(?:(\d{1,9})\s+)?(\d{1,4})\s*\/\s*(\d{1,4})(?!\d|\s*[.,]\d)/
const grouped = /^\d{1,3}(?:\s\d{3})+(?!\d)(?:[.,]\d+)?/
const simple = /^(?:\d+(?:[.,]\d*)?|[.,]\d+)/
const marksAgain = /^[\d.,]*\d[.,]\d+[.,]\d[\d.,]*/

const numberAt = (
  text: string,
  units: readonly TypedUnit[],
): Taken | { readonly refusal: Words } | undefined => {
  const many = marksAgain.exec(text)?.[0]
  if (many !== undefined) return { refusal: filled(manyMarks, same(many)) }
  const group = grouped.exec(text)?.[0]
  if (group !== undefined) return withUnit(text, group, decimal(group.replaceAll(/\s/g, '')), false, units)
  const fraction = fractionAt(text, units)
  if (fraction !== undefined) return fraction
  const plain = simple.exec(text)?.[0]
  return plain === undefined
    ? undefined
    : withUnit(text, plain, decimal(plain), isThousandsLike(plain), units)
}

const fractionAt = (
  text: string,
  units: readonly TypedUnit[],
): Taken | { readonly refusal: Words } | undefined => {
  const found = broken.exec(text)
  if (found === null) return undefined
  const [whole, ones, parts] = [Number(found[1] ?? 0), Number(found[2]), Number(found[3])]
  const isMixed = found[1] !== undefined && ones < parts
  const isBeforeUnit = found[1] === undefined && unitAt(text.slice(found[0].length), units) !== undefined
  if (!isMixed && !isBeforeUnit) return undefined
  if (parts === 0) return { refusal: filled(byNothing, same(found[0])) }
  return withUnit(text, found[0], whole + ones / parts, false, units)
}

const decimal = (digits: string): number => Number(digits.replace(',', '.'))

/** `1.200` and `12,500` may be thousands of somebody else's habit; `0.125` and `1250.125` may not. */
const isThousandsLike = (digits: string): boolean => /^[1-9]\d{0,2}[.,]\d{3}$/.test(digits)

const withUnit = (
  text: string,
  digits: string,
  value: number,
  thousandsLike: boolean,
  units: readonly TypedUnit[],
): Taken => {
  const unit = unitAt(text.slice(digits.length), units)
  const token = {
    kind: 'number',
    value,
    isPlain: /^\d+(?:[.,]\d+)?$/.test(digits),
    // A joint is never kilometres long, so metres with three decimals are meant as they stand.
    maybeThousands: thousandsLike && unit?.unit.isMetre !== true,
    ...(unit && { unit: unit.unit }),
  } as const
  return { token, length: digits.length + (unit?.length ?? 0) }
}

const unitAt = (
  text: string,
  units: readonly TypedUnit[],
): { readonly unit: TypedUnit; readonly length: number } | undefined => {
  const gap = text.length - text.trimStart().length
  const rest = text.slice(gap)
  const found = units.find(({ sign }) => {
    if (rest.slice(0, sign.length).toLowerCase() !== sign.toLowerCase()) return false
    // "m" must not be taken from the front of a word.
    return !/\p{L}$/u.test(sign) || !/^[\p{L}\d]/u.test(rest.slice(sign.length))
  })
  return found && { unit: found, length: gap + found.sign.length }
}

/** The stretch that a message quotes: a word, or one sign; never more than fits a line. */
const firstPiece = (text: string): string => {
  const word = /^[\p{L}\p{N}_.,]+/u.exec(text)?.[0] ?? [...text][0] ?? ''
  return word.length <= 20 ? word : `${word.slice(0, 20)}…`
}
