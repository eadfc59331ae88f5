import { openingOf, type Project, sideNameAt, type ZonePlace } from '../../detail'
import type { Point } from '../../geometry'
import type { Side } from '../../kinds'
import { filled, type Language, same, type Words, words } from '../../words'
import type { Mark, ViewMark } from '../mark'
import type { LengthUnit } from '../sizes/lengths'
import { heights, textWidth_mm } from '../text/lettering'
import type { Arrangement } from './room'
import { scaleBar, scaleBarLength_mm } from './frame'
import { text } from './marks'
import { type Paper, titleBlock_mm } from './paper'
import { revisionsHeight_mm, revisionTable } from './revision-table'
import { type OfSheet, supersededWords, titleValuesOf, type TitleValues } from './title-values'

const headings = {
  left: [words('Left jamb', 'Leibung links'), words('horizontal section', 'Horizontalschnitt')],
  right: [words('Right jamb', 'Leibung rechts'), words('horizontal section', 'Horizontalschnitt')],
  head: [words('Head', 'Sturz'), words('vertical section', 'Vertikalschnitt')],
  sill: [words('Sill', 'Brüstung'), words('vertical section', 'Vertikalschnitt')],
} as const

/** The foot of an opening where one walks through. */
const thresholdHeading = [words('Threshold', 'Schwelle'), headings.sill[1]] as const

/** A cut as its own title says it: what is cut, and how. */
export const cutHeadingAt = (project: Project, { opening, side }: ZonePlace): readonly [Words, Words] =>
  side === 'sill' && openingOf(project, opening).threshold ? thresholdHeading : headings[side]

/** What a sheet shows, in words. */
export const headingOf = (project: Project, place: ZonePlace): Words =>
  filled(same('{0}, {1}'), ...cutHeadingAt(project, place))

/** A scale as it is named: paper to model. */
export const scaleWords = (scale: number): string =>
  scale > 1 ? `${Math.round(scale)}:1` : `1:${Math.round(1 / scale)}`

/** Title, subtitle and scale bar at the top of a sheet; a sheet that no longer holds says so beside its title. */
export const heading = (
  project: Project,
  place: ZonePlace,
  on: Pick<Arrangement, 'paper' | 'scale' | 'headingAt'> & {
    /** how far to the right it may reach; absent: as far as the frame */
    readonly right?: number
    /** which of so many sheets of the cut this is; absent: there is one */
    readonly sheetOf?: readonly [string, string]
  },
  { language, unit }: { readonly language: Language; readonly unit: LengthUnit },
): readonly Mark[] => {
  const [name, cut] = cutHeadingAt(project, place)
  const barAt = (on.right ?? on.paper.frame[1][0]) - 10 - scaleBarLength_mm(on.scale, unit)
  return [
    ...headingMarks(project, name, on.headingAt, {
      sub: filled(
        on.sheetOf ? ofSheets : ofOne,
        openingOf(project, place.opening).name,
        cut,
        scaleWords(on.scale),
        unitWords[unit],
        ...(on.sheetOf ?? []),
      ),
      language,
      until: barAt,
    }),
    ...scaleBar([barAt, on.headingAt[1]], on.scale, unit),
  ]
}

const ofOne = words('{0}, {1} · scale {2} · sizes in {3}', '{0}, {1} · Maßstab {2} · Maße in {3}')
const ofSheets = words(
  '{0} · scale {2} · sizes in {3} · sheet {4} of {5}',
  '{0} · Maßstab {2} · Maße in {3} · Blatt {4} von {5}',
)

export const unitWords: Readonly<Record<LengthUnit, Words>> = { mm: same('mm'), inch: words('inch', 'Zoll') }

/** A title with what is said below it. */
export const headingMarks = (
  project: Project,
  name: Words,
  [x, y]: Point,
  { sub, language, until }: { readonly sub: Words; readonly language: Language; readonly until: number },
): readonly ViewMark[] => {
  const gone = supersededWords(project)
  const width = textWidth_mm(name[language], heights.title_mm, true)
  const said = gone?.[language] ?? ''
  // beside the title where there is room before the scale bar, else beside the line below it
  const beside = x + width + 8 + textWidth_mm(said, heights.subtitle_mm, true) < until
  const goneAt: Point = beside
    ? [x + width + 4, y]
    : [x + textWidth_mm(sub[language], heights.subtitle_mm) + 4, y - 6.2]
  return [
    text(name[language], [x, y], { height_mm: heights.title_mm, bold: true }),
    ...(gone ? [text(said, goneAt, { height_mm: heights.subtitle_mm, bold: true })] : []),
    text(sub[language], [x, y - 6.2], { height_mm: heights.subtitle_mm, faint: true }),
  ]
}

/** A cut of a view as its own title says it. */
export const cutHeading = (side: Side): readonly [Words, Words] => headings[side]

const detailDrawing = words('Detail drawing', 'Detailzeichnung')

/** The values of the title block of one cut. */
export const titleOfCut = (
  project: Project,
  place: ZonePlace,
  on: Pick<Arrangement, 'scale' | 'paper'>,
  options: Pick<OfSheet, 'language' | 'sheet' | 'title'>,
): TitleValues =>
  titleValuesOf(project, {
    ...options,
    subtitle: filled(
      same('{0}, {1}'),
      openingOf(project, place.opening).name,
      sideNameAt(project, place.opening, place.side),
    ),
    type: detailDrawing,
    scale: scaleWords(on.scale),
    size: on.paper.name,
  })

/** Title block and revision table in the lower right corner of a sheet. */
export const blockMarks = (
  project: Project,
  values: TitleValues,
  paper: Paper,
  { language, rows }: { readonly language: Language; readonly rows: number },
): readonly Mark[] => {
  const [right, low] = [paper.frame[1][0], paper.frame[0][1]]
  const x = right - titleBlock_mm[0]
  return [
    { kind: 'symbol', layer: 'sheet', name: 'title-block', at: [x, low], values: given(values) },
    ...revisionTable(project.title.revisions ?? [], rows, [x, low + titleBlock_mm[1]], language),
  ]
}

/** Values without those that are not there. */
const given = (values: TitleValues): Readonly<Record<string, string>> =>
  Object.fromEntries(Object.entries(values).flatMap(([key, it]) => (it === undefined ? [] : [[key, it]])))

/** How high the block of a project is with its table of revisions. */
export const blockHeight_mm = (project: Project, rows: number): number =>
  titleBlock_mm[1] + revisionsHeight_mm(project.title.revisions ?? [], rows)
