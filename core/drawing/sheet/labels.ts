import type { Point } from '../../geometry'
import type { Language } from '../../words'
import type { Column, Layout } from '../labels/lay-out'
import type { ViewMark } from '../mark'
import type { ListedPart } from '../section/listed-part'
import { callout } from '../style/spacing'
import { heights, linesOf, textWidth_mm } from '../text/lettering'
import { text, underWords_mm } from './marks'

/** From one line of a label to the next; labels are small blocks and may be a little tighter than notes. Ours. */
const pitch_mm = 3.7

type Label = { readonly bold: readonly string[]; readonly plain: readonly string[] }

const labelOf = (part: ListedPart, width_mm: number, language: Language): Label => ({
  bold: linesOf(capital(part.name[language]), width_mm, heights.label_mm, true),
  plain: linesOf(part.note[language].replace('s_d', 'sd'), width_mm, heights.label_mm),
})

/** A label begins with a capital, whatever its name is elsewhere. */
const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1)

/** How wide the longest word of all labels is: in a narrower column it would be broken inside. */
export const longestWord_mm = (parts: readonly ListedPart[], language: Language): number =>
  Math.max(
    0,
    ...parts.flatMap(({ name, note }) => [
      ...capital(name[language])
        .split(' ')
        .map(it => textWidth_mm(it, heights.label_mm, true)),
      ...note[language].split(' ').map(it => textWidth_mm(it, heights.label_mm)),
    ]),
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
