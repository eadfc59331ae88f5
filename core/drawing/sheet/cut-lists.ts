import { type Project, sideNameAt } from '../../detail'
import type { Id, Point } from '../../geometry'
import type { Language, Words } from '../../words'
import type { Mark } from '../mark'
import type { ListedPart } from '../section/listed-part'
import type { LengthUnit } from '../sizes/lengths'
import { keySize_mm } from './key-elevation'
import { drawLegend, type LegendEntry, legendHeight_mm } from './legend'
import { line } from './marks'
import { drawNotes, type Notes, notesHeight_mm } from './notes'
import { openBySide, type OpenItem } from './open-items'
import { partsList, partsListHeight_mm } from './parts-list'
import { assumedNote, cautionNotes } from './sheet-notes'

/** What stands once for all cuts of a sheet. */
export type Listed = {
  readonly parts: readonly ListedPart[]
  readonly entries: readonly LegendEntry[]
  readonly open: readonly OpenItem[]
  /** every assumed value, for a note that says so many of them */
  readonly assumed: readonly Words[]
  /** the opening that is cut */
  readonly opening: Id
  /** how many cuts there are */
  readonly count: number
}

/** A column for lists: its corners, whether the key elevation stands in it, and the foot of the line at its left. */
export type ListColumn = {
  readonly left: number
  readonly right: number
  readonly low: number
  readonly top: number
  readonly withKey: boolean
  readonly language: Language
  readonly unit: LengthUnit
}

const pad_mm = 3
/** Between two lists, half of it on each side of the line that parts them. */
const listGap_mm = 5
/** Notes of two columns stand this far apart; notes below each other this far. */
const between_mm = 4
const below_mm = 3

/** The lists of a column with the marks, and where a key elevation goes; nothing where they do not fit. */
export const cutLists = (
  project: Project,
  { parts, entries, open, assumed, opening, count }: Listed,
  column: ListColumn,
): { readonly marks: readonly Mark[]; readonly keyAt: Point | undefined } | undefined => {
  const { language, unit, withKey } = column
  const [x, top] = [column.left + pad_mm, column.top - pad_mm]
  const width_mm = column.right - column.left - 2 * pad_mm
  const half = (width_mm - between_mm) / 2
  const legendTop = top - partsListHeight_mm(project, parts, width_mm, language) - listGap_mm
  // the lists of a sheet of their own have their legend beside the drawing
  const hasLegend = entries.length > 0
  const notesTop = hasLegend ? legendTop - legendHeight_mm(entries.length, width_mm) - listGap_mm : legendTop
  const key_mm = withKey ? keySize_mm[1] : 0
  const room = notesTop - column.low - pad_mm
  const cautions = cautionNotes(project)
  const height = (notes: Notes) => notesHeight_mm(notes, half, language)
  const chosen = mostListed
    .map(most => ({
      open: openBySide(open, count, most, side => sideNameAt(project, opening, side)),
      assumed: assumedNote(assumed, Math.max(3, Math.floor(most / 2))),
    }))
    .find(it => Math.max(height(it.open), height(it.assumed) + below_mm + height(cautions) + key_mm) <= room)
  if (chosen === undefined) return undefined
  const second = x + half + between_mm
  const rule = (at: number) =>
    line('field', [column.left, at + listGap_mm / 2], [column.right, at + listGap_mm / 2])
  return {
    keyAt: withKey ? [second + (half - keySize_mm[0]) / 2, column.low + 2.5] : undefined,
    marks: [
      line('field', [column.left, column.top], [column.left, column.low]),
      ...partsList(project, parts, [x, top], { width_mm, language, unit }),
      ...(hasLegend ? [rule(legendTop), ...drawLegend(entries, [x, legendTop], width_mm, language)] : []),
      rule(notesTop),
      ...drawNotes(chosen.open, [x, notesTop], half, language),
      ...drawNotes(chosen.assumed, [second, notesTop], half, language),
      ...drawNotes(cautions, [second, notesTop - height(chosen.assumed) - below_mm], half, language),
    ],
  }
}

/** So many open findings are listed, fewer where there is no room: the rest is in the check report. Ours. */
const mostListed = [24, 18, 14, 12, 10, 8, 6, 5, 4]
