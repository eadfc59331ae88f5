import { type Project, type ZonePlace, jointOf, openingOf, zonesOf } from '../../../core/detail'
import { sideName } from '../../../core/kinds'
import { jointBand } from '../../../core/movement'
import type { Practice } from '../../../core/practice'
import { type Finding, type NotApplicable, type Report, type Where, verdicts } from '../../../core/rules'
import { inWords, usualDecimals, writeBand, writeQuantity } from '../../../core/units'
import type { Language, Words } from '../../../core/words'
import { findingLines, wordWidth } from './finding'
import * as labels from './labels'
import { wrapped } from './wrap'

/** What a report is about. */
export type Reported = {
  readonly file: string
  readonly project: Project
  readonly practice: Practice
  readonly report: Report
  readonly notes: readonly Words[]
}

/** A report to be read: how many of each verdict, then every zone with its findings, worst first. */
export const reportText = (it: Reported, language: Language): string =>
  [...headLines(it, language), ...zonesOf(it.project).flatMap(place => zoneLines(it, place, language))]
    .map(line => `${line}\n`)
    .join('')

const headLines = (
  { file, project, practice, report, notes }: Reported,
  language: Language,
): readonly string[] => [
  ...wrapped('', [project.title.number, project.title.name, file].filter(Boolean).join(' · ')),
  ...wrapped('', `${labels.practiceWord[language]}: ${practice.name[language]}, ${practice.edition}`),
  ...wrapped('', countsOf(report, language)),
  ...notes.flatMap(it => wrapped(`${labels.note[language]}: `, it[language])),
]

/** "2 not met, 1 advice, 24 met, 3 do not apply", verdicts that do not occur left out. */
const countsOf = ({ findings, notApplicable }: Report, language: Language): string => {
  const counts = verdicts.map(verdict => {
    const { mark, word } = labels.verdictName[verdict]
    return [findings.filter(it => it.verdict === verdict).length, `${mark} ${word[language]}`] as const
  })
  return [...counts, [notApplicable.length, `– ${labels.notApplicable[language]}`] as const]
    .filter(([count]) => 0 < count)
    .map(([count, word]) => `${count} ${word}`)
    .join('   ')
}

const zoneLines = (it: Reported, place: ZonePlace, language: Language): readonly string[] => {
  const isHere = ({ opening, side, zone }: Where) =>
    opening === place.opening && side === place.side && zone === place.zone.id
  const here = it.report.findings.filter(finding => isHere(finding.where))
  const silent = it.report.notApplicable.filter(rule => isHere(rule.where))
  return [
    '',
    ...heading(it.project, place, language),
    ...here.flatMap((finding: Finding) => ['', ...findingLines(finding, language)]),
    ...(silent.length === 0 ? [] : ['']),
    ...silent.flatMap(rule => silentLines(rule, language)),
  ]
}

/** Which side, and where its joint can be. */
const heading = (project: Project, place: ZonePlace, language: Language): readonly string[] => {
  const band = jointBand(project, place.opening, place.side, place.zone.id)
  const widths = inWords(language => {
    const planned = writeQuantity(band.planned_mm, 'mm', language)
    const moving = writeBand(band.moving_mm, 'mm', language, usualDecimals.mm)
    return `${planned} ${labels.planned[language]}, ${moving} ${labels.withMovement[language]}`
  })
  const side = sideName[place.side][language]
  const name = jointOf(project, place.zone).name
  const text = `${openingOf(project, place.opening).name}, ${side} – ${name}: ${widths[language]}`
  const lines = wrapped('', text)
  return [...lines, '─'.repeat(Math.max(...lines.map(line => [...line].length)))]
}

const silentLines = ({ title, because }: NotApplicable, language: Language): readonly string[] =>
  wrapped(
    `– ${labels.notApplicable[language].padEnd(Math.max(wordWidth[language], 14))}  `,
    `${title[language]}: ${because[language]}`,
  )
