import type { Project } from '../../detail'
import type { Language } from '../../words'
import type { Mark } from '../mark'
import { blockHeight_mm } from '../sheet/headings'
import { drawLegend, type LegendEntry, legendHeight_mm } from '../sheet/legend'
import { legendOfAll } from '../sheet/listed-sheet'
import { line } from '../sheet/marks'
import { drawNotes, type Notes, notesHeight_mm } from '../sheet/notes'
import { a3, titleBlock_mm } from '../sheet/paper'
import { cautionNotes } from '../sheet/sheet-notes'
import type { Pair } from './faults'

const pad_mm = 3

/** The width of the cautions beside the title block, and of the legend beside them. Ours. */
const cautions_mm = 58
const legend_mm = a3.frame[1][0] - titleBlock_mm[0] - a3.frame[0][0] - cautions_mm - 4 * pad_mm

/** How high the strip at the foot is: as high as the title block, its legend or its cautions. */
export const stripHeight_mm = (pair: Pair, titled: Project, language: Language): number =>
  Math.max(
    blockHeight_mm(titled, 0),
    legendHeight_mm(legendOfBoth(pair, language).length, legend_mm) + 2 * pad_mm,
    notesHeight_mm(cautionsOf(pair), cautions_mm, language) + 2 * pad_mm,
  )

/** Beside the title block: what hatches and lines mean, and what stands on every sheet. */
export const stripMarks = (pair: Pair, top: number, language: Language): readonly Mark[] => {
  const [[x0, y0], [x1]] = a3.frame
  const notesX = x1 - titleBlock_mm[0] - cautions_mm - pad_mm
  return [
    line('field', [x0, top], [x1, top]),
    ...drawLegend(legendOfBoth(pair, language), [x0 + pad_mm, top - pad_mm], legend_mm, language),
    line('field', [notesX - pad_mm, top], [notesX - pad_mm, y0]),
    ...drawNotes(cautionsOf(pair), [notesX, top - pad_mm], cautions_mm, language),
  ]
}

const legendOfBoth = (pair: Pair, language: Language): readonly LegendEntry[] => {
  const all = pair.flatMap(it => legendOfAll(it.project, [it], language))
  const named = [...new Map(all.map(it => [it.name.en, it])).values()]
  return [...named.filter(it => it.kind === 'hatch'), ...named.filter(it => it.kind === 'line')]
}

/** The cautions of every sheet, with the limits of both details where they follow two practices. */
const cautionsOf = (pair: Pair): Notes => {
  const [a, b] = pair.map(it => cautionNotes(it.project))
  if (!a || !b) throw new Error('a comparison has two details')
  const limits = [a.notes[0], b.notes[0]].filter(it => it !== undefined)
  return { ...a, notes: [...new Map([...limits, ...a.notes.slice(1)].map(it => [it.en, it])).values()] }
}
