import { family, fontSize_mm, type Ink, textWidth_mm } from '../../drawing'
import { base64 } from './base64'
import { escaped } from './escape'
import { mm } from './numbers'

/** Writes one piece of ink as an element; `height_mm` of the sheet turns y to run downwards. */
export const writeInk = (ink: Ink, height_mm: number): string => {
  switch (ink.kind) {
    case 'fill':
      return `<path fill="${ink.colour}" fill-rule="evenodd" d="${ink.loops.map(it => polyline(it, height_mm, true)).join('')}"/>`
    case 'stroke':
      return `<path ${strokeOf(ink)} d="${ink.lines.map(it => polyline(it, height_mm, ink.closed)).join('')}"/>`
    case 'rings':
      return `<path ${strokeOf(ink)} d="${circles(ink.circles, height_mm)}"/>`
    case 'discs':
      return `<path fill="${ink.colour}" d="${circles(ink.circles, height_mm)}"/>`
    case 'letters':
      return lettersOf(ink, height_mm)
    case 'picture':
      return (
        `<image x="${mm(ink.at[0])}" y="${mm(height_mm - ink.at[1] - ink.size[1])}" width="${mm(ink.size[0])}" ` +
        `height="${mm(ink.size[1])}" href="data:image/jpeg;base64,${base64(ink.jpeg)}"><title>${escaped(ink.says.en)}</title></image>`
      )
  }
}

const strokeOf = (ink: Extract<Ink, { kind: 'stroke' | 'rings' }>): string => {
  const dashes = ink.dash_mm.length === 0 ? '' : ` stroke-dasharray="${ink.dash_mm.map(mm).join(' ')}"`
  return `fill="none" stroke="${ink.colour}" stroke-width="${mm(ink.width_mm)}"${dashes}`
}

const polyline = (line: readonly number[], height_mm: number, closed: boolean): string => {
  let data = ''
  for (let at = 0; at + 1 < line.length; at += 2) {
    data += `${at === 0 ? 'M' : at === 2 ? 'L' : ' '}${mm(line[at] ?? 0)} ${mm(height_mm - (line[at + 1] ?? 0))}`
  }
  return closed ? `${data}Z` : data
}

const circles = (all: readonly number[], height_mm: number): string => {
  let data = ''
  for (let at = 0; at + 2 < all.length; at += 3) {
    const radius = mm(all[at + 2] ?? 0)
    const across = mm(2 * (all[at + 2] ?? 0))
    const x = mm((all[at] ?? 0) - (all[at + 2] ?? 0))
    const y = mm(height_mm - (all[at + 1] ?? 0))
    data += `M${x} ${y}a${radius} ${radius} 0 1 0 ${across} 0a${radius} ${radius} 0 1 0 -${across} 0Z`
  }
  return data
}

const fallbacks = `'Arial Narrow','Liberation Sans Narrow',sans-serif`

/** Words keep their measured length, so a reader without the font still sees nothing overlap. */
const lettersOf = (ink: Extract<Ink, { kind: 'letters' }>, height_mm: number): string => {
  const [x, y] = [mm(ink.at[0]), mm(height_mm - ink.at[1])]
  const turn = ink.turn_deg === 0 ? '' : ` transform="rotate(${mm(-ink.turn_deg)} ${x} ${y})"`
  const anchor = ink.anchor === 'start' ? '' : ` text-anchor="${ink.anchor}"`
  const bold = ink.bold ? ' font-weight="700"' : ''
  const words = escaped(ink.words)
  if (words === '') return ''
  const length = mm(textWidth_mm(ink.words, ink.height_mm, ink.bold))
  return (
    `<text x="${x}" y="${y}" font-family="'${family}',${fallbacks}" font-size="${mm(fontSize_mm(ink.height_mm))}"${bold} ` +
    `fill="${ink.colour}"${anchor} textLength="${length}" lengthAdjust="spacingAndGlyphs" ` +
    `xml:space="preserve"${turn}>${words}</text>`
  )
}
