import type { Point } from '../../geometry'
import { type Language, type Words, words } from '../../words'
import type { ViewMark } from '../mark'
import type { DrawnSymbol } from '../symbols/symbol'
import { heights, linesOf, textWidth_mm } from '../text/lettering'
import { line, rectangle, text } from './marks'
import { titleBlock_mm } from './paper'

/** The fields of a title block by ISO 7200 (reported). What is empty is printed as a line to write on. */
export const titleFields = [
  'owner', 'title', 'subtitle', 'department', 'reference', 'creator', 'approver', 'date', 'type', 'status', 'project',
  'number', 'revision', 'language', 'scale', 'size', 'sheet',
] as const // prettier-ignore
export type TitleField = (typeof titleFields)[number]

const captions: Readonly<Record<TitleField, Words>> = {
  owner: words('Legal owner', 'Gesetzlicher Eigentümer'),
  title: words('Title, supplementary title', 'Titel, zusätzlicher Titel'),
  subtitle: words('', ''),
  department: words('Responsible dept.', 'Verantwortliche Abt.'),
  reference: words('Technical reference', 'Technische Referenz'),
  creator: words('Created by', 'Erstellt durch'),
  approver: words('Approved by', 'Genehmigt von'),
  date: words('Date of issue', 'Ausgabedatum'),
  type: words('Document type', 'Dokumentenart'),
  status: words('Document status', 'Dokumentenstatus'),
  project: words('Project', 'Projekt'),
  number: words('Identification number', 'Sachnummer'),
  revision: words('Rev.', 'Änd.'),
  language: words('Lang.', 'Spr.'),
  scale: words('Scale', 'Maßstab'),
  size: words('Size', 'Format'),
  sheet: words('Sheet', 'Blatt'),
}

/** A field's place in the block, from its lower left corner. */
type Cell = { readonly field: TitleField; readonly at: Point; readonly size: Point; readonly strong?: true }

const cells: readonly Cell[] = [
  { field: 'department', at: [0, 30.5], size: [36, 9.5] },
  { field: 'reference', at: [36, 30.5], size: [40, 9.5] },
  { field: 'creator', at: [76, 30.5], size: [36, 9.5] },
  { field: 'approver', at: [112, 30.5], size: [36, 9.5] },
  { field: 'date', at: [148, 30.5], size: [32, 9.5] },
  { field: 'owner', at: [0, 10], size: [52, 20.5], strong: true },
  { field: 'title', at: [52, 10], size: [78, 20.5], strong: true },
  { field: 'type', at: [130, 20.25], size: [50, 10.25] },
  { field: 'status', at: [130, 10], size: [50, 10.25] },
  { field: 'project', at: [0, 0], size: [52, 10] },
  { field: 'number', at: [52, 0], size: [40, 10], strong: true },
  { field: 'revision', at: [92, 0], size: [10, 10] },
  { field: 'language', at: [102, 0], size: [12, 10] },
  { field: 'scale', at: [114, 0], size: [16, 10], strong: true },
  { field: 'size', at: [130, 0], size: [14, 10] },
  { field: 'sheet', at: [144, 0], size: [16, 10] },
]

/** The title block as a symbol: its values are attributes, so a DXF can make a block of it. */
export const titleBlock: DrawnSymbol = {
  name: 'title-block',
  marks: (mark, language) => {
    const [x, y] = mark.at
    const [width, height] = titleBlock_mm
    return [
      rectangle('block', [x, y], [width, height]),
      ...cells.flatMap(cell => drawCell(cell, [x + cell.at[0], y + cell.at[1]], mark.values, language)),
      rectangle('field', [x + 160, y], [20, 10]),
      { kind: 'symbol', layer: 'sheet', name: 'first-angle', at: [x + 170.2, y + 5], values: {} },
    ]
  },
}

const pad_mm = 1.5

const drawCell = (
  cell: Cell,
  [x, y]: Point,
  values: Readonly<Record<string, string>>,
  language: Language,
): readonly ViewMark[] => {
  const [width, height] = cell.size
  const caption = text(captions[cell.field][language], [x + pad_mm, y + height - 2.9], {
    height_mm: heights.caption_mm,
    faint: true,
  })
  const value = values[cell.field] ?? ''
  const room = width - 2 * pad_mm
  return [
    rectangle('field', [x, y], cell.size),
    caption,
    ...(value === ''
      ? [ruledLine([x + pad_mm, y + 1.6], room)]
      : valueMarks(cell, value, [x + pad_mm, y], room)),
    ...(cell.field === 'title' ? subtitleMarks(values.subtitle ?? '', [x + pad_mm, y], room) : []),
  ]
}

/** An empty field is ruled, so that it can be filled in by hand and is not taken for a field without content. */
const ruledLine = (at: Point, width: number): ViewMark => line('field', at, [at[0] + width, at[1]])

const valueMarks = (cell: Cell, value: string, [x, y]: Point, room: number): readonly ViewMark[] => {
  const large = cell.size[1] > 12
  const height_mm =
    large && textWidth_mm(value, heights.subtitle_mm, true) <= room ? heights.subtitle_mm : heights.note_mm
  const lines = fittedLines(value, room, height_mm, cell.strong === true, large ? 2 : 1)
  const top = large ? y + (lines.length > 1 ? 12.2 : 9.4) : y + 2
  return lines.map((it, at) =>
    text(it, [x, top - at * height_mm * 1.6], { height_mm, bold: cell.strong === true }),
  )
}

const subtitleMarks = (value: string, [x, y]: Point, room: number): readonly ViewMark[] =>
  fittedLines(value, room, heights.note_mm, false, 1).map(it => text(it, [x, y + 2.6]))

/** As many lines as there is room for; what does not fit ends in an ellipsis, it is never made smaller. */
const fittedLines = (
  value: string,
  room: number,
  height_mm: number,
  bold: boolean,
  most: number,
): readonly string[] => {
  const lines = linesOf(value, room, height_mm, bold)
  if (lines.length <= most) return lines
  const kept = lines.slice(0, most)
  let last = kept[most - 1] ?? ''
  while (last !== '' && textWidth_mm(`${last}…`, height_mm, bold) > room) last = last.slice(0, -1)
  return [...kept.slice(0, -1), `${last.trimEnd()}…`]
}
