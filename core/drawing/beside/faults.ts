import { jointOf, type Project, type ZonePlace } from '../../detail'
import type { Id } from '../../geometry'
import { type Finding, findingRows, labels, type Report, worstFirst } from '../../rules'
import type { Section } from '../../section'
import { filled, same, type Words } from '../../words'
import type { ListedPart } from '../section/listed-part'
import { listedParts } from '../section/listed-parts'
import { stands } from '../sheet/open-items'

/** One of two details that stand beside each other, with the verdicts of its project. */
export type Beside = {
  readonly project: Project
  readonly place: ZonePlace
  readonly section: Section
  readonly report: Report
}

/** Two details that are compared: one as it should be, say, and one as it should not. */
export type Pair = readonly [Beside, Beside]

/** What one of the details says about a fault: in words, and the parts of its section that it is about. */
export type Told = { readonly say: Words; readonly at: readonly Id[] }

/** A rule that one of two details does not meet, with what both of them say to it. */
export type Fault = {
  readonly number: string
  readonly title: Words
  /** the part that it is about, where it is about one */
  readonly part: Words | undefined
  readonly told: readonly [Told, Told]
}

/**
 * The faults of two details, numbered, the worst first: rules that one of them at least does not meet at its place. A rule
 * that is asked of several parts is held against itself in the order of the parts, outside to inside.
 */
export const faultsOf = (pair: Pair): readonly Fault[] => {
  const [a, b] = [byQuestion(pair[0]), byQuestion(pair[1])]
  const notMet = worstFirst([...b.values(), ...a.values()].filter(it => it.verdict === 'not-met'))
  const keyOf = new Map([...a, ...b].map(([key, it]) => [it, key]))
  const keys = [...new Set(notMet.flatMap(it => keyOf.get(it) ?? []))]
  return keys.flatMap((key, at): readonly Fault[] => {
    const [first, second] = [a.get(key), b.get(key)]
    const [shown, of] = second?.verdict === 'not-met' ? [second, pair[1]] : [first, pair[0]]
    if (shown === undefined) return []
    return [
      {
        number: `${at + 1}`,
        title: shown.title,
        part: partNamed(of, shown),
        told: [toldBy(pair[0], first, shown), toldBy(pair[1], second, shown)],
      },
    ]
  })
}

/** What a finding compares amounts in: a rule may ask for a force and for a length, which are not held against each other. */
const unitOf = (it: Finding): string =>
  'compared' in it && it.compared?.kind === 'amount' ? it.compared.required.unit : ''

/** Findings at the place of a detail by what they answer: rule, title, unit, and which of several answers. */
const byQuestion = ({ report, place }: Beside): ReadonlyMap<string, Finding> => {
  const counts = new Map<string, number>()
  return new Map(
    report.findings
      .filter(it => stands(it.where, place))
      .map(it => {
        const question = `${it.rule} ${it.title.en} ${unitOf(it)}`
        const count = counts.get(question) ?? 0
        counts.set(question, count + 1)
        return [`${question} ${count}`, it] as const
      }),
  )
}

/** The part that a finding of a detail is about: two projects may call different parts by one id. */
const partNamed = ({ project, place }: Beside, { where }: Finding): Words | undefined =>
  listedParts(project, place).find(it => it.id === where.part)?.name

const toldBy = (of: Beside, finding: Finding | undefined, asked: Finding): Told => {
  if (finding) return { say: saidOf(finding), at: placesOf(of, finding) }
  // what a detail does not know it compares in no unit
  const unknown = of.report.findings.find(
    it => it.rule === asked.rule && it.verdict === 'unknown' && stands(it.where, of.place),
  )
  if (unknown) return { say: saidOf(unknown), at: placesOf(of, unknown) }
  const silent = of.report.notApplicable.find(it => it.rule === asked.rule && stands(it.where, of.place))
  return {
    say: silent ? filled(same('{0}: {1}'), labels.notApplicable, silent.because) : labels.notApplicable,
    at: [],
  }
}

/** The verdict with what it compares: *not met · actual: 3 · required: 2*. */
const saidOf = (it: Finding): Words => {
  const verdict = labels.verdictName[it.verdict].word
  const compared = findingRows(it)
    .filter(row => said.some(label => label === row.label))
    .map(row => filled(same('{0}: {1}'), row.label, row.text))
  return [verdict, ...compared].reduce((so, row) => filled(same('{0} · {1}'), so, row))
}

const { actual, required, there, missing, state } = labels.label
const said: readonly Words[] = [actual, required, there, missing, state]

/** The parts of a section that a finding is about: its part, or the joint with its seals. One of a whole opening has none. */
const placesOf = ({ project, place }: Beside, { where }: Finding): readonly Id[] => {
  if (where.part !== undefined) return [where.part]
  if (where.zone === undefined) return []
  const joint = jointOf(project, place.zone)
  return [joint.id, ...joint.seals.map(it => it.id)]
}

/** Faults as numbers at one of the details: what its leaders point at. A fault without a place in the section has none. */
export const faultNumbers = (faults: readonly Fault[], of: Beside, which: 0 | 1): readonly ListedPart[] => {
  const parts = listedParts(of.project, of.place)
  return faults.flatMap(({ number, title, told }): readonly ListedPart[] => {
    const { at } = told[which]
    if (at.length === 0) return []
    const part = parts.find(it => it.id === at[0])
    return [
      {
        id: `fault-${number}`,
        number,
        of: part?.of ?? at,
        name: title,
        note: same(''),
        assumed: false,
        role: part?.role ?? 'seal',
      },
    ]
  })
}
