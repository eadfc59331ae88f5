import type { Project, ZonePlace } from '../../detail'
import { check } from '../../rules'
import type { Section } from '../../section'
import { filled, words } from '../../words'
import type { Drawing } from '../mark'
import { listedParts, onSheet } from '../section/listed-parts'
import { noteIn } from '../sizes/lengths'
import { cutLists } from './cut-lists'
import { checkRuler, sheetFrame } from './frame'
import { blockHeight_mm, blockMarks, headingMarks, headingOf, titleOfCut } from './headings'
import { keyElevation } from './key-elevation'
import { isUpright } from './listed-sheet'
import { openItems } from './open-items'
import { pad_mm, a4 } from './paper'
import { assumedAtAll } from './sheet-notes'
import { saysOf, type SheetOptions, titleOf } from './sheet-options'

/** Rows of the revision table: there is room to write on. */
const rows = 3
const heading_mm = 18

/**
 * The second sheet of a cut whose first has no room for lists: parts with their planes, everything that is open or
 * assumed, where the cut is taken, revisions. Nothing where the lists are longer than a sheet.
 */
export const listsSheet = (
  project: Project,
  { place, section }: { readonly place: ZonePlace; readonly section: Section },
  options: SheetOptions & { readonly scale: number },
): Drawing | undefined => {
  const { language, unit = 'mm', report = check(project) } = options
  const parts = onSheet(listedParts(project, place), [section]).map(it => ({
    ...it,
    note: noteIn(it.note, unit),
  }))
  const [[left, low], [right, top]] = a4.frame
  const listed = {
    parts,
    entries: [],
    open: openItems(report, [place]),
    assumed: assumedAtAll(project, [place], unit),
    opening: place.opening,
    count: 1,
  }
  const column = {
    left,
    right,
    low: low + blockHeight_mm(project, rows),
    top: top - heading_mm,
    language,
    unit,
  }
  const lists =
    cutLists(project, listed, { ...column, withKey: true }) ??
    cutLists(project, listed, { ...column, withKey: false })
  if (lists === undefined) return undefined
  const title = headingOf(project, place)
  return {
    size_mm: a4.size_mm,
    language,
    palette: options.palette,
    title: filled(
      words('{0}: parts and notes', '{0}: Bauteile und Hinweise'),
      titleOf(project, place, language),
    )[language],
    says: saysOf(title[language], parts, language),
    materials: new Map(),
    marks: [
      ...sheetFrame(a4),
      ...checkRuler(a4, { language, unit }),
      ...headingMarks(project, title, [left + pad_mm + 1, top - 8], {
        sub: filled(subWords, ...['2', '2']),
        language,
        until: right,
      }),
      ...lists.marks,
      ...(lists.keyAt
        ? keyElevation(
            project,
            place.opening,
            [{ letter: 'A', upright: isUpright({ place }) }],
            lists.keyAt,
            language,
          )
        : []),
      ...blockMarks(project, titleOfCut(project, place, { scale: options.scale, paper: a4 }, options), a4, {
        language,
        rows,
      }),
    ],
  }
}

const subWords = words(
  'parts, open points, revisions · sheet {0} of {1}',
  'Bauteile, offene Punkte, Änderungen · Blatt {0} von {1}',
)
