import { openingOf } from '../../../core/detail'
import { sideName, sides } from '../../../core/kinds'
import { type Finding, labels } from '../../../core/rules'
import { type Language, filled, words } from '../../../core/words'
import { findingLines } from './finding'
import { byOpening } from './by-opening'
import type { Reported } from './reported'
import { wrapped } from './wrap'

/** More openings than these are not read one by one: ours. */
export const fewOpenings = 6

/**
 * The findings of many openings: each rule with each verdict once, worst first, its worst place in full and all other
 * places by name. What is met, and what does not apply, is counted.
 */
export const manyLines = (it: Reported, language: Language): readonly string[] => {
  const groups = groupsOf(it.report.findings)
  const told = groups.filter(({ worst }) => worst.verdict !== 'met')
  const met = groups.filter(({ worst }) => worst.verdict === 'met')
  return [
    ...told.flatMap(group => ['', ...groupLines(it, group, language)]),
    ...(met.length === 0 ? [] : ['']),
    ...wrapped(
      `${labels.verdictName.met.mark} ${labels.verdictName.met.word[language]}  `,
      met.map(({ worst, all }) => `${worst.title[language]} (${all.length})`).join(', '),
    ),
    ...wrapped(
      `– ${labels.notApplicable[language]}  `,
      filled(words('{0} answers', '{0} Antworten'), `${it.report.notApplicable.length}`)[language],
    ),
  ]
}

/** Findings of one rule with one verdict; they stand worst first, so the first is the worst. */
type Group = { readonly worst: Finding; readonly all: readonly Finding[] }

const groupsOf = (findings: readonly Finding[]): readonly Group[] => {
  const groups = new Map<string, Finding[]>()
  for (const it of findings) {
    const key = `${it.verdict} ${it.rule}`
    const group = groups.get(key) ?? []
    groups.set(key, group)
    group.push(it)
  }
  return [...groups.values()].flatMap(all => (all[0] ? [{ worst: all[0], all }] : []))
}

const groupLines = (it: Reported, { worst, all }: Group, language: Language): readonly string[] => {
  const places = byOpening(all)
  const named = [...places].map(
    ([opening, at]) => `${openingOf(it.project, opening).name}${sidesOf(at, language)}`,
  )
  const head = filled(
    words('{0} of {1} openings', '{0} von {1} Öffnungen'),
    `${places.size}`,
    `${Object.keys(it.project.openings).length}`,
  )
  return [
    ...findingLines(worst, language),
    ...wrapped(`    ${at[language].padEnd(14)}`, named[0] ?? ''),
    ...(named.length < 2
      ? []
      : wrapped(
          `    ${alsoAt[language].padEnd(14)}`,
          `${head[language]}: ${shortened(named.slice(1), language)}`,
        )),
  ]
}

const at = words('worst at', 'am ärgsten')
const alsoAt = words('in', 'in')

/** " (head, sill)"; nothing where the whole opening is meant, or all of its sides. */
const sidesOf = (all: readonly Finding[], language: Language): string => {
  const named = sides.filter(side => all.some(it => it.where.side === side))
  return named.length === 0 || named.length === sides.length
    ? ''
    : ` (${named.map(side => sideName[side][language]).join(', ')})`
}

/** So many names are read; of more, only how many: ours. */
const mostNames = 12

const shortened = (names: readonly string[], language: Language): string =>
  names.length <= mostNames
    ? names.join(', ')
    : filled(
        words('{0} and {1} more', '{0} und {1} weitere'),
        names.slice(0, mostNames).join(', '),
        `${names.length - mostNames}`,
      )[language]
