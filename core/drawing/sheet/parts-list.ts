import { layerOf, type Project, sealOf } from '../../detail'
import type { Id, Point } from '../../geometry'
import { dutyName, type Plane, planes } from '../../kinds'
import { serves } from '../../seals'
import { type Language, same, type Words, words } from '../../words'
import type { ViewMark } from '../mark'
import type { ListedPart } from '../section/listed-part'
import { lengthSign, type LengthUnit } from '../sizes/lengths'
import { callout } from '../style/spacing'
import { heights, linesOf, textWidth_mm } from '../text/lettering'
import { line, text, underWords_mm } from './marks'

/** Where the columns of a parts list start: a number, a name, then shares of the width. Ours. */
const columnsOf = (width_mm: number) => ({ name: 8, note: 0.39 * width_mm, plane: 0.73 * width_mm })
const headingRow_mm = 5.6
const lineRow_mm = 3.7
const rowGap_mm = 1.6

const captions = {
  name: words('Parts', 'Bauteile'),
  note: words('Size, kind ({0})', 'Maß, Art ({0})'),
  plane: words('Plane, duty', 'Ebene, Aufgabe'),
}

const planeWord: Readonly<Record<Plane, Words>> = {
  outer: words('outer', 'außen'),
  middle: words('middle', 'Mitte'),
  inner: words('inner', 'innen'),
}

/** The planes that a seal closes, or the duties of a layer: nothing for frame, glass and fixings. */
export const planesOf = (project: Project, part: Id): Words => {
  const seal = sealOf(project, part)?.seal
  if (seal)
    return dotted(
      planes
        .toReversed()
        .filter(it => serves(seal, it))
        .map(it => planeWord[it]),
    )
  return dotted((layerOf(project, part)?.layer.duties ?? []).map(it => dutyName[it]))
}

const dotted = (all: readonly Words[]): Words => ({
  en: all.map(it => it.en).join(', '),
  de: all.map(it => it.de).join(', '),
})

type Row = {
  readonly part: ListedPart
  readonly cells: readonly { readonly x: number; readonly lines: readonly string[]; readonly bold: boolean }[]
  readonly height_mm: number
}

const rowsOf = (
  project: Project,
  parts: readonly ListedPart[],
  width_mm: number,
  language: Language,
): readonly Row[] => {
  const columns_mm = columnsOf(width_mm)
  return parts.map(part => {
    const cell = (words: Words, from: number, to: number, bold = false) => ({
      x: from,
      lines: linesOf(capital(words[language]), to - from - 2, heights.note_mm, bold),
      bold,
    })
    const cells = [
      cell(part.name, columns_mm.name, columns_mm.note, true),
      cell(same(part.note[language].replace('s_d', 'sd')), columns_mm.note, columns_mm.plane),
      cell(planesOf(project, part.id), columns_mm.plane, width_mm),
    ]
    const lines = Math.max(1, ...cells.map(it => it.lines.length))
    return { part, cells, height_mm: Math.max(callout.balloon_mm + 0.4, lines * lineRow_mm + rowGap_mm) }
  })
}

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1)

/** How high a list of parts is. */
export const partsListHeight_mm = (
  project: Project,
  parts: readonly ListedPart[],
  width_mm: number,
  language: Language,
): number =>
  headingRow_mm + rowsOf(project, parts, width_mm, language).reduce((sum, it) => sum + it.height_mm, 0)

/** A list of parts from its upper left corner: number, name, size, plane. Assumed sizes stand on a dashed line. */
export const partsList = (
  project: Project,
  parts: readonly ListedPart[],
  [x, top]: Point,
  how: { readonly width_mm: number; readonly language: Language; readonly unit: LengthUnit },
): readonly ViewMark[] => {
  const { width_mm, language, unit } = how
  const columns_mm = columnsOf(width_mm)
  let y = top - headingRow_mm
  const rows = rowsOf(project, parts, width_mm, language).flatMap(({ part, cells, height_mm }) => {
    const middle = y - height_mm / 2
    y -= height_mm
    return [
      ...balloon(part.number, [x + callout.balloon_mm / 2, middle]),
      ...cells.flatMap(cell => cellMarks(cell, [x, middle], part.assumed && cell.x === columns_mm.note)),
      line('faint', [x + columns_mm.name, y], [x + width_mm, y]),
    ]
  })
  return [
    ...(['name', 'note', 'plane'] as const).map(it =>
      text(
        captions[it][language].replace('{0}', lengthSign[unit]),
        [x + columns_mm[it], top - heights.note_mm - 0.6],
        {
          bold: it === 'name',
          faint: it !== 'name',
        },
      ),
    ),
    ...rows.flat(),
  ]
}

const cellMarks = (
  { x, lines, bold }: Row['cells'][number],
  [left, middle]: Point,
  assumed: boolean,
): readonly ViewMark[] => {
  const first = middle + ((lines.length - 1) * lineRow_mm - heights.note_mm) / 2
  const last = first - (lines.length - 1) * lineRow_mm - underWords_mm
  const width = textWidth_mm(lines.at(-1) ?? '', heights.note_mm)
  return [
    ...lines.map((it, at) => text(it, [left + x, first - at * lineRow_mm], { bold })),
    ...(assumed && width > 0 ? [line('hidden', [left + x, last], [left + x + width, last])] : []),
  ]
}

/** A number in its circle, as leaders end: the leader is in the drawing. */
export const balloon = (number: string, [x, y]: Point): readonly ViewMark[] => [
  {
    kind: 'path',
    layer: 'numbers',
    pen: 'stroke',
    closed: true,
    points: Array.from({ length: corners }, (_, at): Point => {
      const angle = (2 * Math.PI * at) / corners
      return [x + radius_mm * Math.cos(angle), y + radius_mm * Math.sin(angle)]
    }),
  },
  text(number, [x, y - heights.label_mm / 2], { anchor: 'middle', bold: true }),
]

const radius_mm = callout.balloon_mm / 2
/** A polygon of so many corners is a circle to the eye: its sides lie 0.005 mm inside. */
const corners = 48
