import { type Project, type ZonePlace, jointOf, openingOf, sideNameAt } from '../../../core/detail'
import type { Id } from '../../../core/geometry'
import { type Side, sides } from '../../../core/kinds'
import { jointBand } from '../../../core/movement'
import {
  type Finding,
  type NotApplicable,
  type Report,
  type Where,
  labels,
  verdicts,
} from '../../../core/rules'
import { usualDecimals, writeBand, writeQuantity } from '../../../core/units'
import type { Language } from '../../../core/words'
import { byOpening } from './by-opening'
import { findingLines } from './finding'
import { fewOpenings, manyLines } from './many'
import type { Reported } from './reported'
import { wrapped } from './wrap'

/**
 * A report to be read: how many of each verdict, then every place with its findings, worst first. Sides of an opening
 * that say the very same are said once. Of many openings each finding is said once, with all its places, unless every
 * opening is wanted by itself.
 */
export const reportText = (it: Reported, language: Language, of: 'all' | 'each' = 'all'): string =>
  [
    ...headLines(it, language),
    ...(of === 'all' && Object.keys(it.project.openings).length > fewOpenings
      ? manyLines(it, language)
      : eachLines(it, language)),
  ]
    .map(line => `${line}\n`)
    .join('')

/** Every opening by itself. */
const eachLines = (it: Reported, language: Language): readonly string[] => {
  const findings = byOpening(it.report.findings)
  const notApplicable = byOpening(it.report.notApplicable)
  return Object.keys(it.project.openings).flatMap(opening => {
    const report = { findings: findings.get(opening) ?? [], notApplicable: notApplicable.get(opening) ?? [] }
    const groups = groupsOf(it.project, opening)
    return merged(groups.flatMap(group => groupText({ ...it, report }, group, language))).flatMap(groupLines)
  })
}

const headLines = (
  { file, project, practice, report, notes }: Reported,
  language: Language,
): readonly string[] => [
  ...wrapped('', [project.title.number, project.title.name, file].filter(Boolean).join(' · ')),
  ...wrapped(
    '',
    `${labels.practiceWord[language]}: ${practice.name[language]}, ${labels.edition[language]} ${practice.edition}`,
  ),
  ...wrapped('', countsOf(report, language)),
  ...notes.flatMap(it => wrapped(`${labels.note[language]}: `, it[language])),
]

/** "not met 2 · advice 1 · met 24 · does not apply 3", verdicts that do not occur left out. */
const countsOf = ({ findings, notApplicable }: Report, language: Language): string => {
  const counts = verdicts.map(
    it =>
      [
        findings.filter(finding => finding.verdict === it).length,
        labels.verdictName[it].word[language],
      ] as const,
  )
  return [...counts, [notApplicable.length, labels.notApplicable[language]] as const]
    .filter(([count]) => 0 < count)
    .map(([count, word]) => `${word} ${count}`)
    .join(' · ')
}

/** What findings are said of together: a whole opening, a side of it, or one zone of a side. */
type Group = {
  readonly opening: Id
  readonly side?: Side
  readonly place?: ZonePlace
  readonly has: (where: Where) => boolean
}

/** Every place of an opening that a finding can be about. A side of one zone is said together with it. */
const groupsOf = (project: Project, opening: Id): readonly Group[] =>
  [openingOf(project, opening)].flatMap(({ id, sides: zones }) => {
    const at = (where: Where) => where.opening === id
    const bySide = sides.flatMap((side): readonly Group[] => {
      const of = (zone: Id | undefined) => (where: Where) =>
        at(where) && where.side === side && where.zone === zone
      const places = zones[side].map((zone): Group => ({
        opening: id,
        side,
        place: { opening: id, side, zone },
        has: zones[side].length === 1 ? where => of(undefined)(where) || of(zone.id)(where) : of(zone.id),
      }))
      return places.length === 1 ? places : [{ opening: id, side, has: of(undefined) }, ...places]
    })
    return [{ opening: id, has: (where: Where) => at(where) && where.side === undefined }, ...bySide]
  })

/** What is said of a group, with the names of all sides that it is said of. */
type GroupText = {
  readonly opening: string
  readonly sides: readonly string[]
  readonly joint: string
  readonly body: readonly string[]
}

/** A group that has no joint of its own and of which nothing is said is left out. */
const groupText = (
  it: Reported,
  { opening, side, place, has }: Group,
  language: Language,
): readonly GroupText[] => {
  const here = it.report.findings.filter(finding => has(finding.where))
  const silent = it.report.notApplicable.filter(rule => has(rule.where))
  if (!place && here.length === 0 && silent.length === 0) return []
  return [
    {
      opening: openingOf(it.project, opening).name,
      sides: [side ? sideNameAt(it.project, opening, side)[language] : labels.wholeOpening[language]],
      joint: place ? jointText(it.project, place, language) : '',
      body: [
        ...here.flatMap((finding: Finding) => ['', ...findingLines(finding, language)]),
        ...(silent.length === 0 ? [] : ['']),
        ...silentLines(silent, language),
      ],
    },
  ]
}

const merged = (all: readonly GroupText[]): readonly GroupText[] =>
  all.reduce<readonly GroupText[]>((so, it) => {
    const alike = so.find(
      other =>
        other.opening === it.opening && other.joint === it.joint && other.body.join() === it.body.join(),
    )
    if (alike === undefined) return [...so, it]
    return so.map(other => (other === alike ? { ...other, sides: [...other.sides, ...it.sides] } : other))
  }, [])

const groupLines = ({ opening, sides, joint, body }: GroupText): readonly string[] => {
  const heading = wrapped('', `${opening}, ${sides.join(' + ')}${joint && ` – ${joint}`}`)
  return ['', ...heading, '─'.repeat(Math.max(...heading.map(line => [...line].length))), ...body]
}

/** Name of a joint, and where it can be. */
const jointText = (project: Project, place: ZonePlace, language: Language): string => {
  const band = jointBand(project, place.opening, place.side, place.zone.id)
  const planned = writeQuantity(band.planned_mm, 'mm', language)
  const moving = writeBand(band.moving_mm, 'mm', language, usualDecimals.mm)
  const { planned: asPlanned, withMovement } = labels
  return `${jointOf(project, place.zone).name}: ${planned} ${asPlanned[language]}, ${moving} ${withMovement[language]}`
}

/** Rules that do not apply, those with the same reason together. */
const silentLines = (all: readonly NotApplicable[], language: Language): readonly string[] => {
  const reasons = [...new Set(all.map(it => it.because[language]))]
  return reasons.flatMap(because => {
    const titles = all.filter(it => it.because[language] === because).map(it => it.title[language])
    return wrapped(`– ${labels.notApplicable[language]}  `, `${titles.join(', ')}: ${because}`)
  })
}
