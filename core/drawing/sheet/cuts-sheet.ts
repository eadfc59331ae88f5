import { openingOf, type Project } from '../../detail'
import type { Id } from '../../geometry'
import { type Language, filled, same, type Some, words } from '../../words'
import { check } from '../../rules'
import type { Drawing } from '../mark'
import { drawSection } from '../section/draw-section'
import type { ListedPart } from '../section/listed-part'
import { listedParts } from '../section/listed-parts'
import { standOf, usualWindow, zoneLook } from '../section/zone-view'
import { noteIn } from '../sizes/lengths'
import { type Cut, type CutBlock, cutBlocks, mostTries } from './cut-block'
import { cutLists, type ListColumn } from './cut-lists'
import { materialsOf, type SheetOptions } from './detail-sheet'
import { checkRuler, scaleBar, scaleBarLength_mm, sheetFrame } from './frame'
import { blockHeight_mm, blockMarks, headingMarks, scaleWords, unitWords } from './headings'
import { keyElevation } from './key-elevation'
import { type LegendEntry, legendOf } from './legend'
import { openItems } from './open-items'
import { a3, titleBlock_mm } from './paper'
import { planesOf } from './parts-list'
import { placeBlocks } from './place-blocks'
import { assumedAtAll } from './sheet-notes'
import { titleValuesOf, type TitleValues } from './title-values'

const scales = [0.5, 0.2, 0.1] as const
/** The paper of several cuts, and the rows of its revision table that are left to write on. */
const paper = a3
const revisionRows = 2
const pad_mm = 3
const heading_mm = 16

/**
 * One sheet of several cuts of an opening: each with its title and scale, then once for all a legend, a list of the
 * parts with their planes, a key elevation, what is open and assumed, and the title block.
 */
export const cutsSheet = (
  project: Project,
  cuts: Some<Omit<Cut, 'letter'>>,
  options: SheetOptions,
): Drawing => {
  const plan = planOf(project, cuts, options)
  const tried = options.scale === undefined ? scales : [options.scale]
  const on = tried.map(scale => arrangedAt(scale, plan)).find(it => it !== undefined)
  if (on === undefined) throw new Error(`${cuts.length} cuts do not fit on one sheet`)
  const { language, unit = 'mm' } = options
  const { opening } = cuts[0].place
  const { scale } = on
  const barAt = on.right - 12 - scaleBarLength_mm(scale, unit)
  const drawn = on.placed.cuts.map(it => it.block.draw(it.at))
  const heading = filled(same('{0}: {1}'), openingOf(project, opening).name, namesOf(cuts))
  return {
    size_mm: paper.size_mm,
    language,
    palette: options.palette,
    title: heading[language],
    says: `${heading[language]}. ${plan.parts.map(it => `${it.number} ${it.name[language]}`).join('; ')}.`,
    materials: new Map(cuts.flatMap(it => [...materialsOf(project, it.section)])),
    marks: [
      ...drawn.map(it => it.view),
      ...sheetFrame(paper),
      ...checkRuler(paper, { language, unit }),
      ...headingMarks(project, heading, [paper.frame[0][0] + pad_mm + 1, paper.frame[1][1] - 8], {
        sub: filled(
          words('scale {0} · sizes in {1}', 'Maßstab {0} · Maße in {1}'),
          scaleWords(scale),
          unitWords[unit],
        ),
        language,
        until: barAt,
      }),
      ...scaleBar([barAt, paper.frame[1][1] - 8], scale, unit),
      ...drawn.flatMap(it => it.marks),
      ...(on.keyAt ? keyElevation(project, opening, plan.planes, on.keyAt, language) : []),
      ...on.lists.marks,
      ...blockMarks(project, titleOfCuts(project, cuts, scale, options), paper, {
        language,
        rows: revisionRows,
      }),
    ],
  }
}

/** The scales at which several cuts fit on one sheet, the largest first. */
export const cutsScales = (
  project: Project,
  cuts: Some<Omit<Cut, 'letter'>>,
  options: Pick<SheetOptions, 'language' | 'unit' | 'report'>,
): readonly number[] => {
  const plan = planOf(project, cuts, options)
  return scales.filter(scale => arrangedAt(scale, plan) !== undefined)
}

/** The values of the title block of a sheet of several cuts. */
export const titleOfCuts = (
  project: Project,
  cuts: Some<Omit<Cut, 'letter'>>,
  scale: number,
  options: Pick<SheetOptions, 'language' | 'sheet' | 'title'>,
): TitleValues =>
  titleValuesOf(project, {
    language: options.language,
    ...(options.sheet !== undefined && { sheet: options.sheet }),
    ...(options.title && { title: options.title }),
    subtitle: filled(same('{0}: {1}'), openingOf(project, cuts[0].place.opening).name, namesOf(cuts)),
    type: words('Detail drawing', 'Detailzeichnung'),
    scale: scaleWords(scale),
    size: paper.name,
  })

const sideWord = {
  head: words('head', 'Sturz'),
  left: words('left jamb', 'Leibung links'),
  right: words('right jamb', 'Leibung rechts'),
  sill: words('sill', 'Brüstung'),
} as const

const namesOf = (cuts: readonly Omit<Cut, 'letter'>[]) => {
  const names = cuts.map(it => sideWord[it.place.side])
  return { en: names.map(it => it.en).join(', '), de: names.map(it => it.de).join(', ') }
}

/**
 * The parts of all cuts in one list: those that a later cut adds stand behind the part that they follow there. What is
 * made alike at several sides (one bead all round) is one entry with one number; two alike in one cut stay two.
 */
export const mergedParts = (
  project: Project,
  cuts: readonly Omit<Cut, 'letter'>[],
): readonly ListedPart[] => {
  const merged: ListedPart[] = []
  for (const { place } of cuts) {
    let at = 0
    const here = new Set<Id>()
    for (const part of listedParts(project, place)) {
      const name = likenessOf(project, part)
      const same = merged.findIndex(it => it.id === part.id)
      const known =
        same >= 0 ? same : merged.findIndex(it => !here.has(it.id) && likenessOf(project, it) === name)
      const before = merged[known]
      if (before === undefined) merged.splice(at, 0, part)
      else if (same < 0) merged[known] = { ...before, of: [...before.of, ...part.of] }
      here.add(before?.id ?? part.id)
      at = known < 0 ? at + 1 : Math.max(at, known + 1)
    }
  }
  return merged.map((it, at) => ({ ...it, number: `${at + 1}` }))
}

/** What a list says of a part: parts that it says the same of are one entry. */
const likenessOf = (project: Project, { role, name, note, assumed, line, id }: ListedPart): string =>
  JSON.stringify([role, name.en, note.en, assumed, line, planesOf(project, id).en])

/** Head and sill are cut by one upright plane, jambs by one level plane. */
const letterOf = (cut: Omit<Cut, 'letter'>): string =>
  cut.place.side === 'head' || cut.place.side === 'sill' ? 'A' : 'B'

/** Widths of the column of lists that are tried; a narrower one leaves more room for thick walls. Ours. */
const listWidths_mm = [titleBlock_mm[0], 164, 152] as const

/** A sheet of several cuts at a scale: where everything stands. */
const arrangedAt = (scale: number, of: Plan) => {
  const blocks = of.blocks(scale)
  const close = arrangedWith(
    scale,
    of,
    blocks.map(it => it.close),
  )
  // what does not fit closely need not be tried with more room for its numbers
  if (close === undefined) return undefined
  const roomy = (tries: number) =>
    arrangedWith(
      scale,
      of,
      blocks.map(it => it.roomy(tries)),
    )
  return roomy(mostTries) ?? roomy(2) ?? close
}

const arrangedWith = (scale: number, of: Plan, blocks: readonly CutBlock[]) => {
  const [[x0, y0], [x1, y1]] = paper.frame
  for (const width of listWidths_mm)
    for (const withKey of [false, true]) {
      const lists = of.lists({ left: x1 - width, right: x1, low: y0 + of.block_mm, top: y1, withKey })
      if (lists === undefined) continue
      const placed = placeBlocks(
        blocks,
        {
          left: x0 + pad_mm + 1,
          right: x1 - width,
          low: y0 + pad_mm,
          top: y1 - heading_mm,
          block: [x1 - titleBlock_mm[0], y0 + of.block_mm],
        },
        !withKey,
      )
      if (placed.fits) return { scale, placed, lists, right: x1 - width, keyAt: lists.keyAt ?? placed.keyAt }
    }
  return undefined
}

type Plan = ReturnType<typeof planOf>

const planOf = (
  project: Project,
  cuts: Some<Omit<Cut, 'letter'>>,
  { language, unit = 'mm', report = check(project) }: Pick<SheetOptions, 'language' | 'unit' | 'report'>,
) => {
  const parts = mergedParts(project, cuts).map(it => ({ ...it, note: noteIn(it.note, unit) }))
  const places = cuts.map(it => it.place)
  const listed = {
    parts,
    entries: legendOfAll(project, cuts, language),
    open: openItems(report, places),
    assumed: assumedAtAll(project, places, unit),
    count: cuts.length,
  }
  return {
    parts,
    block_mm: blockHeight_mm(project, revisionRows),
    planes: [...new Set(cuts.map(letterOf))].map(letter => ({ letter, upright: letter === 'A' })),
    blocks: (scale: number) =>
      cuts.map(it => cutBlocks(project, { ...it, letter: letterOf(it) }, parts, { scale, language, unit })),
    lists: (column: Omit<ListColumn, 'language' | 'unit'>) =>
      cutLists(project, listed, { ...column, language, unit }),
  }
}

const legendOfAll = (
  project: Project,
  cuts: readonly Omit<Cut, 'letter'>[],
  language: Language,
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
    ),
  )
  const named = new Map(all.map(it => [it.name.en, it]))
  const kinds = ['hatch', 'line'] as const
  return kinds.flatMap(kind => [...named.values()].filter(it => it.kind === kind))
}
