import type { Point } from '../../geometry'
import type { Language } from '../../words'
import type { Column } from '../labels/columns'
import type { Layout } from '../labels/lay-out'
import type { ViewMark } from '../mark'
import type { ListedPart } from '../section/listed-part'
import { callout } from '../style/spacing'
import { heights, linesOf, textWidth_mm } from '../text/lettering'
import { text, underWords_mm } from './marks'
import type { Box } from './side-words'

/** From one line of a label to the next; labels are small blocks and may be a little tighter than notes. Ours. */
const pitch_mm = 3.8

type Label = { readonly bold: readonly string[]; readonly plain: readonly string[] }

const labelOf = (part: ListedPart, width_mm: number, language: Language): Label => {
  const [name, note] = wordsOf(part, language)
  return {
    bold: linesOf(name, width_mm, heights.label_mm, true).map(spaced),
    plain: linesOf(note, width_mm, heights.label_mm).map(spaced),
  }
}

/** The name and the note of a label. A figure and its unit stand in one line. */
const wordsOf = ({ name, note }: ListedPart, language: Language): readonly [name: string, note: string] => [
  kept(capital(name[language])),
  kept(note[language].replace('s_d', 'sd')),
]

const kept = (words: string): string =>
  words.replaceAll(/(?<=\d) (?=(mm|m|%|kg\/m³)(\W|$))|(?<=Ø) /g, '\u00a0')
const spaced = (words: string): string => words.replaceAll('\u00a0', ' ')

/** A label begins with a capital, whatever its name is elsewhere. */
const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1)

/** How wide the longest word of all labels is: in a narrower column it would be broken inside. */
export const longestWord_mm = (parts: readonly ListedPart[], language: Language): number =>
  Math.max(
    0,
    ...parts.flatMap(part => {
      const [name, note] = wordsOf(part, language)
      return [
        ...name.split(' ').map(it => textWidth_mm(it, heights.label_mm, true)),
        ...note.split(' ').map(it => textWidth_mm(it, heights.label_mm)),
      ]
    }),
  )

/** How far slots must be apart so that no two labels of a list touch: half of each of the two tallest. */
export const slotPitch_mm = (parts: readonly ListedPart[], width_mm: number, language: Language): number => {
  const tallest = parts
    .map(part => labelOf(part, width_mm, language))
    .map(({ bold, plain }) => (bold.length + plain.length) * pitch_mm + apart_mm)
    .toSorted((a, b) => b - a)
  const [first = 0, second = 0] = tallest
  return Math.max(callout.balloon_mm + apart_mm, (first + second) / 2)
}

/** Between two labels. */
const apart_mm = 1.4

/** Names and notes beside the circles of a column. An assumed note stands on a dashed line. */
export const drawLabels = (
  parts: readonly ListedPart[],
  layout: Layout,
  columns: readonly (Column & { readonly width_mm: number })[],
  language: Language,
): readonly ViewMark[] =>
  layout.slots.flatMap(({ id, side, y }) => {
    const part = parts.find(it => it.id === id)
    const column = columns.find(it => it.side === side)
    if (part === undefined || column === undefined) return []
    const { bold, plain } = labelOf(part, column.width_mm, language)
    const right = column.side === 'right'
    const off = callout.balloon_mm + callout.textGap_mm
    const x = column.x + (right ? off : -off)
    const how = { anchor: right ? 'start' : 'end' } as const
    const count = bold.length + plain.length
    const first = y + ((count - 1) * pitch_mm - heights.label_mm) / 2
    return [
      ...bold.map((it, at) => text(it, [x, first - at * pitch_mm], { ...how, bold: true })),
      ...plain.map((it, at) => text(it, [x, first - (bold.length + at) * pitch_mm], { ...how, faint: true })),
      ...(part.assumed
        ? underline(plain.at(-1) ?? '', [x, first - (count - 1) * pitch_mm - underWords_mm], right)
        : []),
    ]
  })

const underline = (words: string, [x, y]: Point, right: boolean): readonly ViewMark[] => {
  const width = textWidth_mm(words, heights.label_mm)
  const points: readonly Point[] = [
    [x, y],
    [right ? x + width : x - width, y],
  ]
  return [{ kind: 'path', layer: 'words', pen: 'hidden', points, closed: false }]
}

/** The columns of labels from the highest to the lowest, words and circles: nothing else is written among them. */
export const labelBoxes = (
  layout: Layout,
  columns: readonly (Column & { readonly width_mm: number })[],
): readonly Box[] =>
  columns.flatMap(({ side, x, width_mm, pitch_mm }): readonly Box[] => {
    const ys = layout.slots.filter(it => it.side === side).map(it => it.y)
    if (ys.length === 0) return []
    const wide = callout.balloon_mm + callout.textGap_mm + width_mm
    const [low, high] = [Math.min(...ys) - pitch_mm / 2, Math.max(...ys) + pitch_mm / 2]
    return side === 'right' ? [[[x, low], [x + wide, high]]] : [[[x - wide, low], [x, high]]] // prettier-ignore
  })
