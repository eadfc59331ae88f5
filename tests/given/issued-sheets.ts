import { type Project, type Sample, samples, type ZonePlace, zonesOf } from '../../core/detail'
import {
  besideSheet,
  checkReport,
  cutsSheet,
  detailSheets,
  type Drawing,
  type LengthUnit,
  type Palette,
  sheetScales,
} from '../../core/drawing'
import { jointBand } from '../../core/movement'
import { check, type Report } from '../../core/rules'
import { cutSection } from '../../core/section'
import { type Language, type Some } from '../../core/words'
import { aDetail } from './a-detail-beside'
import { cutsOf } from './sample-cuts'

/** What a sheet is asked for. */
export type Choices = {
  readonly of: 'zone' | 'cuts' | 'beside' | 'report'
  readonly sample: string
  readonly side: string
  readonly language: Language
  readonly palette: Palette
  readonly paper: 'A4' | 'A3'
  readonly unit: LengthUnit
}

/** A sheet, or the pages of a report, as they are issued. */
export type Issued = Choices & {
  readonly name: string
  readonly project: Project
  readonly place: ZonePlace | undefined
  readonly drawings: Some<Drawing>
}

/**
 * Sheets of every sample: each of its zones, head, jamb and sill together, and the check report. Languages, inks, papers
 * and units are spread over them so that each value and each pair of values occurs, and the tight ones come besides.
 * `EVERY_SHEET=1` tries every zone in each language and ink on each paper: 8 times as many, as before a release.
 */
export const issuedSheets = (): readonly Issued[] =>
  samples
    .flatMap((sample, at) => {
      const report = check(sample.project)
      return [
        ...zoneSheets(sample, at, report),
        ...tightSheets(sample, report),
        ...cutSheets(sample, at),
        ...reports(sample, at, report),
      ]
    })
    .concat(besides.map(besideOf))

const languages = ['en', 'de'] as const
const palettes = ['colour', 'black'] as const
const papers = ['A4', 'A3'] as const
const units = ['mm', 'inch'] as const
const nth = <T>(of: readonly [T, T], at: number): T => of[at % 2 === 0 ? 0 : 1]

type Spread = Pick<Choices, 'language' | 'palette' | 'paper' | 'unit'>

/** The choices for a zone: one of all, or every language, ink and paper. */
const choicesOf = (k: number, at: number): readonly Spread[] => {
  const half = Math.floor(k / 2)
  const unit = nth(units, k === (at + Math.floor(at / 4)) % 4 ? 1 : 0)
  if (process.env.EVERY_SHEET !== '1')
    return [
      {
        language: nth(languages, k + at),
        palette: nth(palettes, half + Math.floor(at / 2)),
        paper: nth(papers, k + half + Math.floor(at / 4)),
        unit,
      },
    ]
  return languages.flatMap(language =>
    palettes.flatMap(palette => papers.map(paper => ({ language, palette, paper, unit }))),
  )
}

const zoneSheets = ({ file, project }: Sample, at: number, report: Report): readonly Issued[] =>
  zonesOf(project).flatMap((place, k) =>
    choicesOf(k, at).map(it => zoneSheet({ file, project, place, k, report }, it)),
  )

type Zone = Pick<Sample, 'file' | 'project'> & {
  readonly place: ZonePlace
  readonly k: number
  readonly report: Report
}

const zoneSheet = (
  { file, project, place, k, report }: Zone,
  { language, palette, unit, paper: wanted }: Spread,
): Issued => {
  const { planned_mm } = jointBand(project, place.opening, place.side, place.zone.id)
  const section = cutSection(project, place, { state: 'planned', width_mm: planned_mm })
  const how = { language, palette, unit, report, sheet: `${k + 1} / ${zonesOf(project).length}` }
  // a thick wall fits on A3 alone
  const fits = sheetScales(project, place, section, { ...how, paper: wanted }).length > 0
  const paper = fits ? wanted : 'A3'
  return {
      of: 'zone', sample: file, side: place.side, language, palette, paper, unit, project, place,
      name: `${file}, ${place.side}, ${language}, ${palette}, ${paper}, ${unit}`,
      drawings: detailSheets(project, place, section, { ...how, paper }),
    } // prettier-ignore
}

/** Small sheets with little room to spare, in which labels, sizes or the words inside and outside have met something before. */
const tight = [
  ['timber-wall', 'head', 'de', 'mm'],
  ['unheld-head', 'head', 'de', 'mm'],
  ['on-consoles', 'head', 'en', 'mm'],
  ['soft-flank', 'right', 'en', 'inch'],
  ['facing-leaf', 'left', 'de', 'inch'],
] as const

const tightSheets = ({ file, project }: Sample, report: Report): readonly Issued[] =>
  zonesOf(project).flatMap((place, k) =>
    tight
      .filter(([of, side]) => of === file && side === place.side)
      .map(([, , language, unit]) =>
        zoneSheet({ file, project, place, k, report }, { language, palette: 'black', paper: 'A4', unit }),
      ),
  )

const cutSheets = ({ file, project }: Sample, at: number): readonly Issued[] =>
  languages.map((language, k): Issued => {
    const palette = nth(palettes, k + at)
    const unit = nth(units, k + Math.floor(at / 2))
    return {
      of: 'cuts', sample: file, side: 'all', language, palette, paper: 'A3', unit, project, place: undefined,
      name: `${file}, head, jamb and sill, ${language}, ${palette}, A3, ${unit}`,
      drawings: [cutsSheet(project, cutsOf(project), { language, palette, unit, sheet: '1 / 1' })],
    } // prettier-ignore
  })

const reports = ({ file, project }: Sample, at: number, report: Report): readonly Issued[] =>
  languages.map((language, k): Issued => {
    const palette = nth(palettes, k + at + 1)
    return {
      of: 'report', sample: file, side: 'all', language, palette, paper: 'A4', unit: 'mm', project, place: undefined,
      name: `${file}, check report, ${language}, ${palette}`,
      drawings: checkReport(project, report, { language, palette }),
    } // prettier-ignore
  })

/** Samples that stand beside each other on a sheet, each with what they are drawn as. */
const besides = [
  ['right-jamb', 'foam-only', 'left', 'en', 'mm'],
  ['right-jamb', 'tight-outside', 'right', 'de', 'mm'],
  ['tight-outside', 'frame-too-large', 'head', 'de', 'inch'],
  ['on-consoles', 'soft-flank', 'sill', 'en', 'inch'],
  ['facing-leaf', 'unheld-head', 'left', 'de', 'mm'],
] as const

const besideOf = ([sample, other, side, language, unit]: (typeof besides)[number]): Issued => {
  const details = [aDetail(sample, side), aDetail(other, side)] as const
  const palette = 'black'
  return {
    of: 'beside', sample, side, language, palette, paper: 'A3', unit, project: details[0].project, place: undefined,
    name: `${sample} beside ${other}, ${side}, ${language}, A3, ${unit}`,
    drawings: [besideSheet(details, { language, palette, unit, sheet: '1 / 1' })],
  } // prettier-ignore
}

/** Pairs of choices that no sheet of a kind has, of those that could be. */
export const pairsMissing = (
  issued: readonly Choices[],
  keys: readonly (keyof Choices)[],
): readonly string[] => {
  const valuesOf = (key: keyof Choices) => [...new Set(issued.map(it => it[key]))]
  return keys.flatMap((a, at) =>
    keys
      .slice(at + 1)
      .flatMap(b =>
        valuesOf(a).flatMap(one =>
          valuesOf(b).flatMap(other =>
            issued.some(it => it[a] === one && it[b] === other) ? [] : [`${a} ${one} with ${b} ${other}`],
          ),
        ),
      ),
  )
}
