import type { FieldAt, Project } from '../detail'
import { type Practice, practiceOf } from '../practice'
import { type Cure, cureIn } from './cure'
import type { Finding, NotApplicable, Outcome, Report } from './finding'
import type { Judgement } from './judge'
import { type Judged, judging } from './judge-opening'
import { whereOf } from './place'
import { emptyMemory, type Memory, sumOf } from './memory'
import { ownId } from './own-id'
import type { PhysicsOf } from '../vapour'
import { usesIn } from './uses'
import { worstFirst } from './worst-first'

/**
 * Asks every rule everywhere in a project, under the practice that it names. Findings come worst first.
 * Every change among the remedies has been tried: it cures its finding and breaks nothing that was met. Trying takes
 * longer than checking, so the remedies of a finding are sought when they are first read: a drag does not pay for them.
 * With a memory that is kept from one check to the next only those rules are asked that look at what has changed.
 */
export const check = (
  project: Project,
  practice: Practice = practiceOf(project.practice),
  physics?: PhysicsOf,
  memory: Memory = emptyMemory(),
): Report => {
  const job = { project, practice, uses: usesIn(project), memory, ...(physics ? { physics } : {}) }
  const judge = judging(job)
  const notMet: Judged[] = []
  const told = telling(cureIn(job, notMet), memory)
  const findings: Finding[] = []
  const notApplicable: NotApplicable[] = []
  for (const opening of Object.keys(project.openings))
    for (const it of judge(opening)) {
      const { id, title, about } = it.rule
      const { answer } = it.found
      const where = whereOf(about, it.at)
      if (answer.verdict === 'not-applicable')
        notApplicable.push({ rule: id, title, where, because: answer.because })
      else findings.push(findingOf(it, answer, { rule: id, title, where }, told))
      if (answer.verdict === 'not-met') notMet.push(it)
    }
  return { findings: worstFirst(findings), notApplicable }
}

type Told = Exclude<Judgement, { readonly verdict: 'not-applicable' }>
type Head = Pick<Finding, 'rule' | 'title' | 'where'>
type Making = { -readonly [K in keyof (Finding & Outcome)]?: unknown } & {
  [judgedAs]?: Judged
  cite?: unknown
  compared?: unknown
  to?: unknown
  handOver?: unknown
  missing?: unknown
}

/** A finding with its members in the order in which they are written. Thousands are made at once: none is made twice. */
const findingOf = (it: Judged, found: Told, head: Head, told: Telling): Finding => {
  const made: Making = head
  if ('cite' in found && found.cite) made.cite = found.cite
  if (found.verdict === 'unknown') Object.defineProperty(made, 'sum', told.sum)
  made.restsOn = namedHere(found.restsOn, it)
  if (found.verdict === 'refer') {
    if (found.compared) made.compared = found.compared
    made.verdict = found.verdict
    made.to = found.to
    made.handOver = found.handOver
  } else {
    made.verdict = found.verdict
    if (found.verdict === 'unknown') made.missing = namedHere(found.missing, it)
    else made.compared = found.compared
  }
  made[judgedAs] = it
  if (found.verdict !== 'unknown') {
    Object.defineProperty(made, 'sum', told.sum)
    if (found.verdict === 'advice' || found.verdict === 'not-met') Object.defineProperty(made, 'remedies', told.remedies)
  }
  // Each verdict now has its own members, as its outcome lists them.
  return made as Finding
} // prettier-ignore

/** What a finding was made of: sums are written out, and remedies sought, when somebody reads them. */
const judgedAs = Symbol('judged as')
type Telling = { readonly sum: PropertyDescriptor; readonly remedies: PropertyDescriptor }

/** How findings tell what is found only when it is read. One getter serves them all: one for each costs ten times more. */
const telling = (cure: Cure, memory: Memory): Telling => {
  const later = (of: (it: Judged) => unknown): PropertyDescriptor => ({
    enumerable: true,
    get(this: Making) {
      return this[judgedAs] && of(this[judgedAs])
    },
  })
  return {
    sum: later(({ rule, at, found }) =>
      found.at === at ? sumOf(found.answer) : memory.sums(at)(rule).answer,
    ),
    remedies: later(cure),
  }
}

/** Values as they are called here, where an answer was first given for another place. */
const namedHere = (all: readonly FieldAt[], { found, at }: Judged): readonly FieldAt[] =>
  found.at === at || all.length === 0
    ? all
    : all.map(({ field, part }) => ({ field, part: ownId(part, found.at, at) }))
