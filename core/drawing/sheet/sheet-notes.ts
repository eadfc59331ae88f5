import { practiceOf } from '../../practice'
import type { Project, ZonePlace } from '../../detail'
import { filled, type Language, words } from '../../words'
import type { Mark } from '../mark'
import { type Arrangement, gap_mm, pad_mm } from './room'
import { assumedAt, firstOf } from './assumed'
import { drawLegend, type LegendEntry } from './legend'
import { line } from './marks'
import {
  assumedHeading,
  cautions,
  cautionsHeading,
  drawNotes,
  nothingAssumed,
  type Notes,
  notesHeight_mm,
} from './notes'

/** Between notes that stand in a column. Ours. */
const besideGap_mm = 1.6

/** What a sheet notes: what is assumed, and what a drawing cannot say by itself. */
export const notesOf = (project: Project, place: ZonePlace): readonly Notes[] => {
  const assumed = firstOf(assumedAt(project, place), 6)
  const practice = practiceOf(project.practice)
  const rests = filled(
    words('Limits: {0}, edition {1}.', 'Grenzwerte: {0}, Ausgabe {1}.'),
    practice.name,
    practice.edition,
  )
  return [
    { heading: assumedHeading, notes: assumed.length > 0 ? assumed : [nothingAssumed], assumed: true },
    { heading: cautionsHeading, notes: [rests, ...cautions] },
  ]
}

const columnShare = 0.4

const noteWidths = (width_mm: number): readonly [number, number] => [
  width_mm * columnShare - 4,
  width_mm * (1 - columnShare),
]

/** How high all notes are: side by side, or below each other in a column. */
export const notesTall_mm = (
  notes: readonly Notes[],
  width_mm: number,
  beside: boolean,
  language: Language,
): number =>
  beside
    ? notes.reduce(
        (sum, it) => sum + notesHeight_mm(it, width_mm, language),
        (notes.length - 1) * besideGap_mm,
      )
    : Math.max(...notes.map((it, at) => notesHeight_mm(it, noteWidths(width_mm)[at] ?? width_mm, language)))

/** The legend with the lines that bound it. */
export const legendMarks = (
  on: Arrangement,
  legend: readonly LegendEntry[],
  language: Language,
): readonly Mark[] => {
  const {
    at: [x, top],
    width_mm,
  } = on.legend
  return [
    line('field', [x - pad_mm, top + pad_mm], [x + width_mm + pad_mm, top + pad_mm]),
    ...[x - pad_mm, x + width_mm + pad_mm].map(side =>
      line('field', [side, top + pad_mm], [side, on.paper.frame[0][1]]),
    ),
    ...drawLegend(legend, [x, top], width_mm, language),
  ]
}

/** All notes where the arrangement puts them. */
export const notesMarks = (on: Arrangement, notes: readonly Notes[], language: Language): readonly Mark[] => {
  const {
    at: [x, top],
    width_mm,
    beside,
  } = on.notes
  if (!beside) {
    const widths = noteWidths(width_mm)
    return [
      line('field', [x - pad_mm, top + gap_mm / 2], [x + width_mm + pad_mm, top + gap_mm / 2]),
      ...notes.flatMap((it, at) =>
        drawNotes(it, [at === 0 ? x : x + width_mm * columnShare, top], widths[at] ?? width_mm, language),
      ),
    ]
  }
  let y = top
  return notes.flatMap(it => {
    const marks = drawNotes(it, [x, y], width_mm, language)
    y -= notesHeight_mm(it, width_mm, language) + besideGap_mm
    return marks
  })
}
