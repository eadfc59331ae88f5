import { openingOf } from '../../detail'
import type { Id, Point } from '../../geometry'
import { sideName } from '../../kinds'
import { filled, type Language, same, type Words, words } from '../../words'
import type { Drawing, Mark } from '../mark'
import { type CutBlock, mostTries } from '../sheet/cut-block'
import { type Enlarged, enlarge, isEnlarged, jointLetter } from '../sheet/enlarged'
import { checkRuler, scaleBar, scaleBarLength_mm, sheetFrame } from '../sheet/frame'
import { blockMarks, cutHeading, headingMarks, scaleWords, unitWords } from '../sheet/headings'
import { text } from '../sheet/marks'
import { pad_mm, a3 } from '../sheet/paper'
import { materialsOf } from '../sheet/sheet-options'
import { overlongIn } from '../sheet/title-block'
import { titleValuesOf, type TitleValues } from '../sheet/title-values'
import { standOf, zoneLook } from '../section/zone-view'
import { heights, linesOf } from '../text/lettering'
import { type Arranged, arrangedAt, type BesideOptions, scales } from './arrange-beside'
import { detailLetters } from './fault-list'
import { type Fault, faultNumbers, faultsOf, type Pair } from './faults'
import { stripMarks } from './foot-strip'

/**
 * Two details beside each other at one scale, as right beside wrong: what one of them does not meet is numbered in both,
 * and a list says of each number what both of them have there. The title block is that of one of their projects.
 */
export const besideSheet = (pair: Pair, options: BesideOptions): Drawing => {
  const { language, unit = 'mm', titled = 0 } = options
  const on = arrangedAt(pair, options, {
    tried: options.scale === undefined ? scales : [options.scale],
    tries: mostTries,
  })
  if (on === undefined) throw new Error('two details do not fit on one sheet')
  const { project } = pair[titled]
  const [{ place }] = pair
  const [[x0], [x1, y1]] = a3.frame
  const names = namesOf(pair)
  const title = filled(besideWords, cutHeading(place.side)[0])
  const barAt = x1 - 12 - scaleBarLength_mm(on.scale, unit)
  const drawn = on.details.map(it => it.block.draw(it.at))
  const joints = jointsOf(pair, on, drawn, options)
  return {
    size_mm: a3.size_mm,
    language,
    palette: options.palette,
    title: filled(same('{0}: {1}'), title, filled(same('A {0}, B {1}'), ...names))[language],
    says: saysOf(title, names, on.listed, language),
    materials: materialsOfBoth(pair),
    marks: [
      ...drawn.flatMap(({ view }, at): readonly Mark[] => {
        const joint = joints[at]
        return joint ? [{ ...view, marks: [...view.marks, ...joint.ring] }, joint.view] : [view]
      }),
      ...joints.flatMap(it => it.heading),
      ...sheetFrame(a3),
      ...checkRuler(a3, { language, unit }),
      ...headingMarks(project, title, [x0 + pad_mm + 1, y1 - 8], {
        sub: filled(
          words('{0} · scale {1} · sizes in {2}', '{0} · Maßstab {1} · Maße in {2}'),
          cutHeading(place.side)[1],
          scaleWords(on.scale),
          unitWords[unit],
        ),
        language,
        until: barAt,
      }),
      ...scaleBar([barAt, y1 - 8], on.scale, unit),
      ...drawn.flatMap(it => it.marks),
      ...on.details.flatMap(({ block, titleAt }, at) =>
        nameMarks(
          detailLetters[at] ?? '',
          names[at] ?? '',
          countOf(pair, at),
          { at: titleAt, width_mm: block.size_mm[0] },
          language,
        ),
      ),
      ...on.lines,
      ...on.list.draw(on.listAt),
      ...stripMarks(pair, on.low, language),
      ...blockMarks(project, titleOfPair(pair, names, on.scale, options), a3, { language, rows: 0 }),
    ],
  }
}

/** The joints of both details drawn once more where they are small: both at one scale, with as much round them. */
const jointsOf = (
  pair: Pair,
  on: Arranged,
  drawn: readonly ReturnType<CutBlock['draw']>[],
  { language, unit = 'mm', enlarged }: BesideOptions,
): readonly Enlarged[] => {
  if (!isEnlarged(enlarged, on.scale)) return []
  const jointsFrom = (rank: number) =>
    pair.flatMap((it, at): readonly Enlarged[] => {
      const [own, detail] = [drawn[at], on.details[at]]
      if (own === undefined || detail === undefined) return []
      const look = { ...zoneLook(it.project, it.place, language, unit), ...standOf[it.place.side] }
      const numbered = faultNumbers(on.listed, it, at === 0 ? 0 : 1)
      const of = { section: it.section, look, letter: jointLetter, numbered }
      const where = { room: detail.room, marks: [own.view, ...own.marks], kept: [] }
      const joint = enlarge(of, own.view, where, enlarged, rank)
      return joint ? [joint] : []
    })
  // until both stand at one rank: each round begins at a later one
  for (let rank = 0; ;) {
    const joints = jointsFrom(rank)
    if (joints.length < pair.length) return []
    if (joints.every(it => it.rank === joints[0]?.rank)) return joints
    rank = Math.max(...joints.map(it => it.rank))
  }
}

/** The values of the title block; names that are too long for it stand over the details alone. */
const titleOfPair = (
  pair: Pair,
  names: readonly [string, string],
  scale: number,
  { language, sheet, title, titled = 0 }: BesideOptions,
): TitleValues => {
  const { project, place } = pair[titled]
  const withSubtitle = (subtitle: Words) =>
    titleValuesOf(project, {
      language,
      ...(sheet !== undefined && { sheet }),
      ...(title && { title }),
      subtitle,
      type: words('Comparison', 'Vergleich'),
      scale: scaleWords(scale),
      size: a3.name,
    })
  const named = withSubtitle(filled(same('{0}: A {1}, B {2}'), sideName[place.side], ...names))
  const isLong = overlongIn(named).some(it => it.field === 'subtitle')
  return isLong ? withSubtitle(sideName[place.side]) : named
}

/** The scales at which two details fit on one sheet, the largest first. */
export const besideScales = (
  pair: Pair,
  options: Pick<BesideOptions, 'language' | 'unit' | 'titled'>,
): readonly number[] =>
  scales.filter(scale => arrangedAt(pair, options, { tried: [scale], tries: 0 }) !== undefined)

const besideWords = words('{0}, two details compared', '{0}, zwei Details im Vergleich')

/** The name of a detail, as far as it has room, and how many faults it has. */
const nameMarks = (
  letter: string,
  name: string,
  count: Words,
  { at: [x, y], width_mm }: { readonly at: Point; readonly width_mm: number },
  language: Language,
): readonly Mark[] => {
  const [first = '', ...more] = linesOf(name, width_mm - toName_mm - 3, heights.subtitle_mm, true)
  const how = { height_mm: heights.subtitle_mm, bold: true }
  return [
    text(letter, [x, y], how),
    text(more.length > 0 ? `${first} …` : first, [x + toName_mm, y], how),
    text(count[language], [x + toName_mm, y - 4.6], { faint: true }),
  ]
}

/** From the letter of a detail to its name. Ours. */
const toName_mm = 5

/** How many rules a detail does not meet at its place. */
const countOf = (pair: Pair, which: number): Words => {
  const faults = faultsOf([pair[which === 0 ? 0 : 1], pair[which === 0 ? 0 : 1]]).length
  return faults === 0
    ? words('no fault', 'kein Fehler')
    : filled(faults === 1 ? words('{0} fault', '{0} Fehler') : words('{0} faults', '{0} Fehler'), faults)
}

/** The openings by their names; where both are called alike, by their projects as well. */
const namesOf = (pair: Pair): readonly [string, string] => {
  const names = pair.map(it => openingOf(it.project, it.place.opening).name)
  const [a = '', b = ''] = names
  if (a !== b) return [a, b]
  const [first, second] = pair.map(
    ({ project: { title } }) => [title.number, title.name].find(it => it !== '') ?? '',
  )
  return first === second ? [a, b] : [`${a}, ${first ?? ''}`, `${b}, ${second ?? ''}`]
}

/** What parts are made of; a part of one project that has its name in the other with another material is left out. */
const materialsOfBoth = (pair: Pair): ReadonlyMap<Id, Id> => {
  const [a = new Map<Id, Id>(), b = new Map<Id, Id>()] = pair.map(it => materialsOf(it.project, it.section))
  return new Map([...a, ...b].filter(([part, of]) => (a.get(part) ?? of) === (b.get(part) ?? of)))
}

const saysOf = (
  title: Words,
  names: readonly string[],
  faults: readonly Fault[],
  language: Language,
): string =>
  [
    `${title[language]}: A ${names[0] ?? ''}, B ${names[1] ?? ''}.`,
    ...faults.map(
      ({ number, title: of, told: [a, b] }) =>
        `${number} ${of[language]}: A ${a.say[language]}; B ${b.say[language]}.`,
    ),
  ].join(' ')
