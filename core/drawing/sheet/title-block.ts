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
  { field: 'department', at: [0, 28.5], size: [36, 11.5] },
  { field: 'reference', at: [36, 28.5], size: [40, 11.5] },
  { field: 'creator', at: [76, 28.5], size: [36, 11.5] },
  { field: 'approver', at: [112, 28.5], size: [36, 11.5] },
  { field: 'date', at: [148, 28.5], size: [32, 11.5] },
  { field: 'owner', at: [0, 11.5], size: [52, 17], strong: true },
  { field: 'title', at: [52, 11.5], size: [78, 17], strong: true },
  { field: 'type', at: [130, 20], size: [50, 8.5] },
  { field: 'status', at: [130, 11.5], size: [50, 8.5] },
  { field: 'project', at: [0, 0], size: [52, 11.5] },
  { field: 'number', at: [52, 0], size: [40, 11.5], strong: true },
  { field: 'revision', at: [92, 0], size: [10, 11.5] },
  { field: 'language', at: [102, 0], size: [12, 11.5] },
  { field: 'scale', at: [114, 0], size: [16, 11.5], strong: true },
  { field: 'size', at: [130, 0], size: [14, 11.5] },
  { field: 'sheet', at: [144, 0], size: [16, 11.5] },
]

/** Fields that no issued sheet may leave empty (ISO 7200, reported). */
export const mandatoryFields: readonly TitleField[] = [
  'owner', 'number', 'date', 'sheet', 'title', 'approver', 'creator', 'type',
] // prettier-ignore

export const titleCaption = (field: TitleField): Words =>
  field === 'subtitle' ? words('Supplementary title', 'Zusätzlicher Titel') : captions[field]

/** The title block as a symbol: its values are attributes, so a DXF can make a block of it. */
export const titleBlock: DrawnSymbol = {
  name: 'title-block',
  marks: (mark, language) => {
    const [x, y] = mark.at
    const [width, height] = titleBlock_mm
    return [
      rectangle('block', [x, y], [width, height]),
      ...cells.flatMap(cell => drawCell(cell, [x + cell.at[0], y + cell.at[1]], mark.values, language)),
      rectangle('field', [x + 160, y], [20, 11.5]),
      { kind: 'symbol', layer: 'sheet', name: 'first-angle', at: [x + 170.2, y + 5.75], values: {} },
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
    ...(value === '' ? [ruledLine([x + pad_mm, y + 1.6], room)] : valueMarks(cell, value, [x + pad_mm, y])),
    ...(cell.field === 'title' ? subtitleMarks(values.subtitle ?? '', [x + pad_mm, y], room) : []),
  ]
}

/** An empty field is ruled, so that it can be filled in by hand and is not taken for a field without content. */
const ruledLine = (at: Point, width: number): ViewMark => line('field', at, [at[0] + width, at[1]])

/** The room of a field: how many lines of which height it takes. Large fields take one large line or three small. */
const linesIn = (
  cell: Cell,
  value: string,
): { readonly height_mm: number; readonly lines: readonly string[] } => {
  const room = cell.size[0] - 2 * pad_mm
  const large = cell.size[1] > 12 && textWidth_mm(value, heights.subtitle_mm, true) <= room
  const height_mm = large ? heights.subtitle_mm : heights.note_mm
  return { height_mm, lines: linesOf(value, room, height_mm, cell.strong === true) }
}

const mostLines = (cell: Cell): number =>
  cell.field === 'title' ? 2 : cell.size[1] > 12 ? 3 : cell.size[1] > 11 ? 2 : 1

const valueMarks = (cell: Cell, value: string, [x, y]: Point): readonly ViewMark[] => {
  const large = cell.size[1] > 12
  const { height_mm, lines } = linesIn(cell, value)
  const shown = fitted(lines, mostLines(cell))
  const middle = large ? (cell.field === 'title' ? 7.9 : 6.1) : 0
  const top = large
    ? y + middle + ((shown.length - 1) * pitch_mm) / 2 - (height_mm - heights.note_mm) / 2
    : y + (shown.length > 1 ? 5.4 : cell.size[1] > 11 ? 2.6 : 1.6)
  return shown.map((it, at) => text(it, [x, top - at * pitch_mm], { height_mm, bold: cell.strong === true }))
}

/** From one line of a value to the next. */
const pitch_mm = 3.8

const subtitleMarks = (value: string, [x, y]: Point, room: number): readonly ViewMark[] =>
  fitted(linesOf(value, room, heights.note_mm), 1).map(it => text(it, [x, y + 1.9]))

/** As many lines as there is room for. What does not fit ends in an ellipsis on the screen; it is never written to a file. */
const fitted = (lines: readonly string[], most: number): readonly string[] =>
  lines.length <= most
    ? lines
    : [...lines.slice(0, most - 1), `${(lines[most - 1] ?? '').slice(0, -2).trimEnd()}…`]

/** Values that are longer than their fields, with their letters and about how many fit. */
export const overlongIn = (
  values: Readonly<Record<string, string | undefined>>,
): readonly { readonly field: TitleField; readonly letters: number; readonly room: number }[] =>
  titleFields.flatMap(field => {
    const value = values[field] ?? ''
    const cell = cells.find(it => it.field === (field === 'subtitle' ? 'title' : field))
    if (value === '' || cell === undefined) return []
    const isSub = field === 'subtitle'
    const lines = isSub
      ? linesOf(value, cell.size[0] - 2 * pad_mm, heights.note_mm)
      : linesIn(cell, value).lines
    const most = isSub ? 1 : mostLines(cell)
    const letters = [...value].length
    return lines.length <= most ? [] : [{ field, letters, room: [...lines.slice(0, most).join(' ')].length }]
  })
