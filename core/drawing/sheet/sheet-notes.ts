import { practiceOf } from '../../practice'
import type { Project, ZonePlace } from '../../detail'
import { filled, type Language, type Words, words } from '../../words'
import type { Report } from '../../rules'
import type { Mark } from '../mark'
import type { LengthUnit } from '../sizes/lengths'
import { type Arrangement, gap_mm } from './room'
import { assumedAt, firstOf } from './assumed'
import { line } from './marks'
import { openByVerdict, openItems } from './open-items'
import {
  assumedHeading,
  cautions,
  cautionsHeading,
  drawNotes,
  nothingAssumed,
  type Notes,
  notesHeight_mm,
} from './notes'
import { pad_mm } from './paper'

/** Between notes that stand in a column. Ours. */
const besideGap_mm = 1.6

/** What a sheet notes: what is open, what is assumed, and what a drawing cannot say by itself. */
export const notesOf = (
  project: Project,
  place: ZonePlace,
  report: Report,
  unit: LengthUnit,
): readonly Notes[] => [
  openByVerdict(openItems(report, [place]), mostOpen),
  assumedNote(assumedAtAll(project, [place], unit), 5),
  cautionNotes(project),
]

/** So many titles of a verdict stand on a sheet of one cut. Ours: the rest is in the check report. */
const mostOpen = 4

/** Every value that is assumed at some zones, once. */
export const assumedAtAll = (
  project: Project,
  places: readonly ZonePlace[],
  unit: LengthUnit,
): readonly Words[] => [
  ...new Map(places.flatMap(place => assumedAt(project, place, unit)).map(it => [it.en, it])).values(),
]

/** The first of the assumed values, and how many more there are. */
export const assumedNote = (all: readonly Words[], most: number): Notes => {
  const shown = firstOf(all, most)
  return { heading: assumedHeading, notes: shown.length > 0 ? shown : [nothingAssumed], assumed: true }
}

/** Limits with their edition, and the cautions that stand on every sheet. */
export const cautionNotes = (project: Project): Notes => {
  const practice = practiceOf(project.practice)
  const rests = filled(
    words('Limits: {0}, edition {1}.', 'Grenzwerte: {0}, Ausgabe {1}.'),
    practice.name,
    practice.edition,
  )
  return { heading: cautionsHeading, notes: [rests, ...cautions] }
}

/** How notes that stand side by side share a width: the open ones have the longest lines. Ours. */
const shares = [0.38, 0.27, 0.35] as const

/** The left edges and widths of notes side by side. */
const shareOut = (x: number, width_mm: number) =>
  shares.map((share, at) => ({
    x: x + width_mm * shares.slice(0, at).reduce((sum, it) => sum + it, 0),
    width_mm: width_mm * share - (at === shares.length - 1 ? 0 : 4),
  }))

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
    : Math.max(
        ...shareOut(0, width_mm).map((it, at) => {
          const own = notes[at]
          return own ? notesHeight_mm(own, it.width_mm, language) : 0
        }),
      )

/** A legend with the lines that bound it. */
export const legendMarks = (on: Arrangement, legend: readonly Mark[]): readonly Mark[] => {
  const {
    at: [x, top],
    width_mm,
  } = on.legend
  return [
    line('field', [x - pad_mm, top + pad_mm], [x + width_mm + pad_mm, top + pad_mm]),
    ...[x - pad_mm, x + width_mm + pad_mm].map(side =>
      line('field', [side, top + pad_mm], [side, on.paper.frame[0][1]]),
    ),
    ...legend,
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
    return [
      line('field', [x - pad_mm, top + gap_mm / 2], [x + width_mm + pad_mm, top + gap_mm / 2]),
      ...shareOut(x, width_mm).flatMap((it, at) => {
        const own = notes[at]
        return own ? drawNotes(own, [it.x, top], it.width_mm, language) : []
      }),
    ]
  }
  let y = top
  return notes.flatMap(it => {
    const marks = drawNotes(it, [x, y], width_mm, language)
    y -= notesHeight_mm(it, width_mm, language) + besideGap_mm
    return marks
  })
}
