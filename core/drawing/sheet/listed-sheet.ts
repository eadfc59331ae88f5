import type { Project } from '../../detail'
import type { Point } from '../../geometry'
import { check } from '../../rules'
import type { Language, Some } from '../../words'
import { drawSection } from '../section/draw-section'
import type { ListedPart } from '../section/listed-part'
import { onSheet } from '../section/listed-parts'
import { standOf, usualWindow, zoneLook } from '../section/zone-view'
import { noteIn } from '../sizes/lengths'
import { type Cut, type CutBlock, type CutBlocks, mostTries, scaledCut } from './cut-block'
import { cutLists, type ListColumn } from './cut-lists'
import { blockHeight_mm } from './headings'
import { type LegendEntry, legendOf } from './legend'
import { levelAt } from './level-mark'
import { openItems } from './open-items'
import { pad_mm, a3, titleBlock_mm } from './paper'
import { couldFit, placeBlocks, type PlacedBlocks, type Region } from './place-blocks'
import type { SheetOptions } from './sheet-options'
import { assumedAtAll } from './sheet-notes'

/** The paper of a sheet with lists, and the rows of its revision table that are left to write on. */
export const listedPaper = a3
export const revisionRows = 2
const heading_mm = 16

/** Widths of the column of lists that are tried; a narrower one leaves more room for thick walls. Ours. */
const listWidths_mm = [titleBlock_mm[0], 164, 152, 144] as const

/** Where everything stands at the first of some scales at which it fits; the scales behind that are not looked at. */
export const arrangedFirst = (scales: readonly number[], of: ListedPlan): OnListed | undefined => {
  for (const scale of scales) {
    const found = arrangedAt(scale, of)
    if (found !== undefined) return found
  }
  return undefined
}

/** Where everything stands on a sheet at a scale; nothing where it does not fit. */
const arrangedAt = (scale: number, of: ListedPlan): OnListed | undefined => {
  const withLevels = of.hasLevels ? arrangedAs(scale, of, true) : undefined
  return withLevels ?? arrangedAs(scale, of, false)
}

const arrangedAs = (scale: number, of: ListedPlan, levels: boolean): OnListed | undefined => {
  if (!couldFitAt(scale, of)) return undefined
  const blocks = of.cuts.map(it => it.at(scale, levels))
  const arrangedBy = (blockOf: (of: CutBlocks, at: number) => CutBlock) =>
    arrangedWith(scale, of, blocks.map(blockOf))
  const close = arrangedBy(it => it.close)
  // what does not fit closely need not be tried with more room for its numbers
  if (close === undefined) return undefined
  const fits = (cut: number) => (way: CutBlock) =>
    arrangedBy((other, at) => (at === cut ? way : other.close)) !== undefined
  const roomy = (tries: number) => arrangedBy((it, at) => it.roomy(tries, fits(at)))
  return roomy(mostTries) ?? roomy(2) ?? close
}

/** Whether cuts and lists fit on a sheet at a scale. */
export const fitsAt = (scale: number, of: ListedPlan): boolean =>
  couldFitAt(scale, of) &&
  arrangedWith(
    scale,
    of,
    of.cuts.map(it => it.at(scale, false).close),
  ) !== undefined

/** Whether cuts could fit beside the narrowest lists: no chain and no number is laid out to see that they do not. */
const couldFitAt = (scale: number, of: ListedPlan): boolean =>
  couldFit(
    of.cuts.map(it => it.least_mm(scale)),
    regionBeside(Math.min(...listWidths_mm), of),
  )

/** Where cuts may stand beside lists of a width. */
const regionBeside = (width_mm: number, { block_mm }: ListedPlan): Region => {
  const [[x0, y0], [x1, y1]] = listedPaper.frame
  return {
    left: x0 + pad_mm + 1,
    right: x1 - width_mm,
    low: y0 + pad_mm,
    top: y1 - heading_mm,
    block: [x1 - titleBlock_mm[0], y0 + block_mm],
  }
}

const arrangedWith = (scale: number, of: ListedPlan, blocks: readonly CutBlock[]): OnListed | undefined => {
  const [[, y0], [x1, y1]] = listedPaper.frame
  for (const width of listWidths_mm)
    for (const withKey of [false, true]) {
      const lists = of.lists({ left: x1 - width, right: x1, low: y0 + of.block_mm, top: y1, withKey }, scale)
      if (lists === undefined) continue
      const placed = placeBlocks(blocks, regionBeside(width, of), !withKey)
      if (placed.fits) return { scale, placed, lists, right: x1 - width, keyAt: lists.keyAt ?? placed.keyAt }
    }
  return undefined
}

/** Where everything stands: the cuts with the key elevation, the lists, and how far to the right cuts may reach. */
export type OnListed = {
  readonly scale: number
  readonly placed: PlacedBlocks
  readonly lists: NonNullable<ReturnType<typeof cutLists>>
  readonly right: number
  readonly keyAt: Point | undefined
}

/** What stands on a sheet with lists, at any scale. */
export type ListedPlan = ReturnType<typeof listedPlan>

/** Cuts with their parts in one list. `letters` names their planes; a single cut has its title over the sheet. */
export const listedPlan = (
  project: Project,
  cuts: Some<Cut>,
  listed: readonly ListedPart[],
  { language, unit = 'mm', report = check(project) }: Pick<SheetOptions, 'language' | 'unit' | 'report'>,
) => {
  const sections = cuts.map(it => it.section)
  const parts = onSheet(listed, sections).map(it => ({ ...it, note: noteIn(it.note, unit) }))
  const places = cuts.map(it => it.place)
  const lists = {
    parts,
    open: openItems(report, places),
    assumed: assumedAtAll(project, places, unit),
    opening: cuts[0].place.opening,
    count: cuts.length,
  }
  const laid = new Map<string, ReturnType<typeof cutLists>>()
  const entriesAt = new Map<number, readonly LegendEntry[]>()
  return {
    parts,
    block_mm: blockHeight_mm(project, revisionRows),
    planes: [...new Map(cuts.map(it => [it.letter, { letter: it.letter, upright: isUpright(it) }])).values()],
    /** whether the model holds a level at one of the cuts: it is drawn where there is room for it */
    hasLevels: cuts.some(
      it => levelAt(project, it.place, { language, unit, section: it.section }) !== undefined,
    ),
    cuts: cuts.map(it => scaledCut(project, it, parts, { language, unit, titled: cuts.length > 1 })),
    // The same column is asked for with every room for numbers.
    lists: (column: Omit<ListColumn, 'language' | 'unit'>, scale: number) => {
      const key = JSON.stringify([column, scale])
      if (!laid.has(key)) {
        const entries = entriesAt.get(scale) ?? legendOfAll(project, cuts, language, scale)
        entriesAt.set(scale, entries)
        laid.set(key, cutLists(project, { ...lists, entries }, { ...column, language, unit }))
      }
      return laid.get(key)
    },
  }
}

/** Head and sill are cut by an upright plane, jambs by a level one. */
export const isUpright = ({ place: { side } }: Pick<Cut, 'place'>): boolean =>
  side === 'head' || side === 'sill'

/** What the cuts of a sheet show at a scale and a reader must know, once for all: hatches, then membranes. */
export const legendOfAll = (
  project: Project,
  cuts: readonly Pick<Cut, 'place' | 'section'>[],
  language: Language,
  scale = 1,
): readonly LegendEntry[] => {
  const all = cuts.flatMap(({ place, section }) =>
    legendOf(
      drawSection(section, {
        ...zoneLook(project, place, language),
        ...standOf[place.side],
        window: usualWindow(project, place, section),
        at: [0, 0],
        scale: 0.2,
        show: { sizes: false, numbers: false },
      }).view,
      scale,
    ),
  )
  const named = new Map(all.map(it => [it.name.en, it]))
  const kinds = ['hatch', 'line'] as const
  return kinds.flatMap(kind => [...named.values()].filter(it => it.kind === kind))
}
