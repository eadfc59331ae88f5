import type { Ink } from '../../drawing'

type Lines = Extract<Ink, { kind: 'stroke' | 'rings' }>

/** Ink that is written as bare operators. */
export type PathInk = Extract<Ink, { kind: 'fill' | 'stroke' | 'rings' | 'discs' }>

/** Writes ink as operators of a page whose unit is 1 mm with y downwards; `height_mm` is the height of the sheet. */
export const operatorsOf = (ink: PathInk, height_mm: number): string => {
  switch (ink.kind) {
    case 'fill':
      return `${fillOf(ink.colour)}${ink.loops.map(it => polyline(it, height_mm, true)).join('')}f*`
    case 'stroke':
      return `${penOf(ink)}${ink.lines.map(it => polyline(it, height_mm, ink.closed)).join('')}S`
    case 'rings':
      return `${penOf(ink)}${circles(ink.circles, height_mm)}S`
    case 'discs':
      return discs(ink.colour, ink.circles, height_mm)
  }
}

/** Sets the colour of fills and letters. */
export const fillOf = (colour: string): string => `${channels(colour)} rg\n`

const channels = (colour: string): string =>
  [1, 3, 5].map(at => number(parseInt(colour.slice(at, at + 2), 16) / 255)).join(' ')

const penOf = ({ colour, width_mm, dash_mm }: Lines): string =>
  `${channels(colour)} RG\n${number(width_mm)} w [${dash_mm.map(number).join(' ')}] 0 d\n`

/** To a thousandth of a millimetre, as the other formats are: finer than any printer, and they show the same picture. */
const number = (value: number): string => {
  const thousandths = Math.round(value * 1000)
  return thousandths === 0 ? '0' : String(thousandths / 1000)
}

const polyline = (line: readonly number[], height_mm: number, closed: boolean): string => {
  let out = ''
  for (let at = 0; at + 1 < line.length; at += 2)
    out += `${number(line[at] ?? 0)} ${number(height_mm - (line[at + 1] ?? 0))} ${at === 0 ? 'm' : 'l'}\n`
  return closed ? `${out}h\n` : out
}

/** How far the handles of a quarter circle lie from its ends, in radii. */
const handle = (4 / 3) * Math.tan(Math.PI / 8)

const circles = (all: readonly number[], height_mm: number): string => {
  let out = ''
  for (let at = 0; at + 2 < all.length; at += 3)
    out += circle(all[at] ?? 0, height_mm - (all[at + 1] ?? 0), all[at + 2] ?? 0)
  return out
}

const circle = (x: number, y: number, radius: number): string => {
  const to = (dx: number, dy: number) => `${number(x + dx * radius)} ${number(y + dy * radius)}`
  return (
    `${to(1, 0)} m\n` +
    `${to(1, handle)} ${to(handle, 1)} ${to(0, 1)} c\n` +
    `${to(-handle, 1)} ${to(-1, handle)} ${to(-1, 0)} c\n` +
    `${to(-1, -handle)} ${to(-handle, -1)} ${to(0, -1)} c\n` +
    `${to(handle, -1)} ${to(1, -handle)} ${to(1, 0)} c\nh\n`
  )
}

/** Dots below this are strokes with round ends, a tenth of the length in the file. */
const dotBelow_mm = 0.6
/** Some readers drop strokes of no length. */
const shortest_mm = 0.002

const discs = (colour: string, all: readonly number[], height_mm: number): string => {
  const dots = new Map<number, string>()
  let large = ''
  for (let at = 0; at + 2 < all.length; at += 3) {
    const [x, y, radius] = [all[at] ?? 0, height_mm - (all[at + 1] ?? 0), all[at + 2] ?? 0]
    if (2 * radius < dotBelow_mm)
      dots.set(
        radius,
        `${dots.get(radius) ?? ''}${number(x - shortest_mm / 2)} ${number(y)} m ${number(x + shortest_mm / 2)} ${number(y)} l\n`,
      )
    else large += circle(x, y, radius)
  }
  const small = [...dots].map(
    ([radius, strokes]) => `q ${channels(colour)} RG ${number(2 * radius)} w 1 J [] 0 d\n${strokes}S Q\n`,
  )
  return `${small.join('')}${large === '' ? '' : `${fillOf(colour)}${large}f`}`.trimEnd()
}
