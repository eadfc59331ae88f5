import { openingOf, sideNameAt, type Project } from '../../detail'
import type { Id } from '../../geometry'
import { filled, same, type Some, words } from '../../words'
import type { Drawing } from '../mark'
import type { ListedPart } from '../section/listed-part'
import { listedParts, onSheet } from '../section/listed-parts'
import type { Cut } from './cut-block'
import { checkRuler, scaleBar, scaleBarLength_mm, sheetFrame } from './frame'
import { blockMarks, headingMarks, scaleWords, unitWords } from './headings'
import { keyElevation } from './key-elevation'
import { arrangedFirst, fitsAt, isUpright, listedPaper, listedPlan, revisionRows } from './listed-sheet'
import { planesOf } from './parts-list'
import { materialsOf, type SheetOptions } from './sheet-options'
import { titleValuesOf, type TitleValues } from './title-values'
import { pad_mm } from './paper'

const scales = [0.5, 0.2, 0.1] as const
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
  const on = arrangedFirst(tried, plan)
  if (on === undefined) throw new Error(`${cuts.length} cuts do not fit on one sheet`)
  const { language, unit = 'mm' } = options
  const { opening } = cuts[0].place
  const { scale } = on
  const barAt = on.right - 12 - scaleBarLength_mm(scale, unit)
  const drawn = on.placed.cuts.map(it => it.block.draw(it.at))
  const heading = filled(same('{0}: {1}'), openingOf(project, opening).name, namesOf(project, cuts))
  return {
    size_mm: listedPaper.size_mm,
    language,
    palette: options.palette,
    title: heading[language],
    says: `${heading[language]}. ${plan.parts.map(it => `${it.number} ${it.name[language]}`).join('; ')}.`,
    materials: new Map(cuts.flatMap(it => [...materialsOf(project, it.section)])),
    marks: [
      ...drawn.map(it => it.view),
      ...sheetFrame(listedPaper),
      ...checkRuler(listedPaper, { language, unit }),
      ...headingMarks(project, heading, [listedPaper.frame[0][0] + pad_mm + 1, listedPaper.frame[1][1] - 8], {
        sub: filled(
          words('scale {0} · sizes in {1}', 'Maßstab {0} · Maße in {1}'),
          scaleWords(scale),
          unitWords[unit],
        ),
        language,
        until: barAt,
      }),
      ...scaleBar([barAt, listedPaper.frame[1][1] - 8], scale, unit),
      ...drawn.flatMap(it => it.marks),
      ...(on.keyAt ? keyElevation(project, opening, plan.planes, on.keyAt, language) : []),
      ...on.lists.marks,
      ...blockMarks(project, titleOfCuts(project, cuts, scale, options), listedPaper, {
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
  return scales.filter(scale => fitsAt(scale, plan))
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
    subtitle: filled(
      same('{0}: {1}'),
      openingOf(project, cuts[0].place.opening).name,
      namesOf(project, cuts),
    ),
    type: words('Detail drawing', 'Detailzeichnung'),
    scale: scaleWords(scale),
    size: listedPaper.name,
  })

const sideWord = {
  head: words('head', 'Sturz'),
  left: words('left jamb', 'Leibung links'),
  right: words('right jamb', 'Leibung rechts'),
  sill: words('sill', 'Brüstung'),
} as const

const namesOf = (project: Project, cuts: readonly Omit<Cut, 'letter'>[]) => {
  const names = cuts.map(({ place: { opening, side } }) =>
    openingOf(project, opening).threshold && side === 'sill'
      ? sideNameAt(project, opening, side)
      : sideWord[side],
  )
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
  const sections = cuts.map(it => it.section)
  for (const { place } of cuts) {
    let at = 0
    const here = new Set<Id>()
    for (const part of onSheet(listedParts(project, place), sections)) {
      const name = likenessOf(project, part)
      const same = merged.findIndex(it => it.id === part.id)
      const known =
        same >= 0 ? same : merged.findIndex(it => !here.has(it.id) && likenessOf(project, it) === name)
      const before = merged[known]
      if (before === undefined) merged.splice(at, 0, part)
      else if (same < 0) merged[known] = { ...before, of: [...before.of, ...part.of] }
      else if (part.name.en !== before.name.en) merged[known] = named(before, part)
      here.add(before?.id ?? part.id)
      at = known < 0 ? at + 1 : Math.max(at, known + 1)
    }
  }
  return merged.map((it, at) => ({ ...it, number: `${at + 1}` }))
}

/** What is called otherwise in another cut, as the frame of a door at its threshold, has both names. */
const named = (before: ListedPart, part: ListedPart): ListedPart => ({
  ...before,
  name: filled(same('{0}; {1}'), before.name, part.name),
  note: filled(same('{0}; {1}'), before.note, part.note),
})

/** What a list says of a part: parts that it says the same of are one entry. */
const likenessOf = (project: Project, { role, name, note, assumed, line, id }: ListedPart): string =>
  JSON.stringify([role, name.en, note.en, assumed, line, planesOf(project, id).en])

/** Head and sill are cut by one upright plane, jambs by one level plane. */
const letterOf = (cut: Omit<Cut, 'letter'>): string => (isUpright(cut) ? 'A' : 'B')

const planOf = (
  project: Project,
  cuts: Some<Omit<Cut, 'letter'>>,
  options: Pick<SheetOptions, 'language' | 'unit' | 'report'>,
) => {
  const [first, ...more] = cuts
  const lettered = (it: Omit<Cut, 'letter'>): Cut => ({ ...it, letter: letterOf(it) })
  return listedPlan(project, [lettered(first), ...more.map(lettered)], mergedParts(project, cuts), options)
}
