import type { Project } from '../detail'
import { type Practice, practiceOf } from '../practice'
import { type Cure, cureIn } from './cure'
import type { Finding, NotApplicable, Report } from './finding'
import { type Judged, judgeOpening } from './judge-opening'
import { whereOf } from './place'
import { worstFirst } from './worst-first'

/**
 * Asks every rule everywhere in a project, under the practice that it names. Findings come worst first.
 * Every change among the remedies has been tried: it cures its finding and breaks nothing that was met. Trying takes
 * longer than checking, so the remedies of a finding are sought when they are first read: a drag does not pay for them.
 */
export const check = (project: Project, practice: Practice = practiceOf(project.practice)): Report => {
  const judged = Object.keys(project.openings).flatMap(id => judgeOpening(project, practice, id))
  const cure = cureIn(project, practice, judged)
  return {
    findings: worstFirst(judged.flatMap(it => findingOf(it, cure) ?? [])),
    notApplicable: judged.flatMap(it => notApplicableOf(it) ?? []),
  }
}

const findingOf = (it: Judged, cure: Cure): Finding | undefined => {
  const { found } = it
  const head = { rule: it.rule.id, title: it.rule.title, where: whereOf(it.rule.about, it.at) }
  if (found.verdict === 'not-applicable') return undefined
  if (found.verdict === 'unknown')
    return { ...head, sum: [], restsOn: found.restsOn, verdict: 'unknown', missing: found.missing }
  const grounds = { ...head, ...(found.cite ? { cite: found.cite } : {}), restsOn: found.restsOn }
  // Sums are written out, and remedies sought, when somebody reads them.
  if (found.verdict === 'met') {
    return {
      ...grounds,
      verdict: 'met',
      compared: found.compared,
      get sum() {
        return found.sum()
      },
    }
  }
  if (found.verdict === 'refer') {
    return {
      ...grounds,
      ...(found.compared ? { compared: found.compared } : {}),
      verdict: 'refer',
      to: found.to,
      handOver: found.handOver,
      get sum() {
        return found.sum()
      },
    }
  }
  return {
    ...grounds,
    verdict: found.verdict,
    compared: found.compared,
    get sum() {
      return found.sum()
    },
    get remedies() {
      return cure(it, found.remedies)
    },
  }
}

const notApplicableOf = ({ rule, at, found }: Judged): NotApplicable | undefined =>
  found.verdict === 'not-applicable'
    ? { rule: rule.id, title: rule.title, where: whereOf(rule.about, at), because: found.because }
    : undefined
