import { printable } from '../../drawing'
import type { Point } from '../../geometry'

/** A group code and its value: what a DXF consists of. */
export type Tag = readonly [code: number, value: string | number]
export type Tags = readonly Tag[]

/** A handle: the name of an object in the file, hexadecimal. */
export type Handle = string

/** A point in the plane with the group codes of its three coordinates. */
export const point = (code: number, [x, y]: Point): Tags => [
  [code, x],
  [code + 10, y],
  [code + 20, 0],
]

/** A point of a polyline or hatch, which have no third coordinate. */
export const flatPoint = (code: number, [x, y]: Point): Tags => [
  [code, x],
  [code + 10, y],
]

/** Tags as lines with CR LF. A string can never end its line: whatever breaks or turns lines is taken out of it. */
export const linesOf = (tags: Tags, encode: (words: string) => string): string => {
  let out = ''
  for (const [code, value] of tags)
    out += `${code}\r\n${typeof value === 'string' ? encode(printable(value)) : numberOf(code, value)}\r\n`
  return out
}

const numberOf = (code: number, value: number): string => {
  if (!Number.isFinite(value)) throw new Error(`${value} cannot stand at group code ${code}`)
  if (!isReal(code)) return String(Math.round(value))
  const millionths = value.toFixed(6)
  const short = millionths.replace(/0+$/, '')
  const pointed = short.endsWith('.') ? `${short}0` : short
  return pointed === '-0.0' ? '0.0' : pointed
}

/** Group codes whose values are real numbers. */
const isReal = (code: number): boolean =>
  (10 <= code && code <= 59) || (110 <= code && code <= 149) || (210 <= code && code <= 239) || code === 460
