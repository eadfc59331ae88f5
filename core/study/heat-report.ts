import type { Project } from '../detail'
import { practiceOf } from '../practice'
import {
  type Finding,
  type Memory,
  type Remedy,
  type Report,
  check,
  emptyMemory,
  findingKey,
  needsHeat,
  worstFirst,
} from '../rules'
import { type PhysicsOf, physicsDesk } from '../vapour'

/** Heat and vapour that somebody else is working out: rules that rest on them say that it is not known yet. */
export const beingSolved: PhysicsOf = () => undefined

/**
 * What the rules on heat and vapour say of a project, as plain values that a worker can send to a window which checks
 * everything else by itself. Their remedies are left out: `remediesOf` seeks them. A desk and a memory that are kept solve and ask
 * nothing twice.
 */
export const heatReport = (
  project: Project,
  physics: PhysicsOf = physicsDesk(),
  memory: Memory = emptyMemory(),
): Report => {
  const { findings, notApplicable } = check(project, practiceOf(project.practice), physics, memory)
  return {
    findings: findings.filter(it => needsHeat.includes(it.rule)).map(plain),
    notApplicable: notApplicable.filter(it => needsHeat.includes(it.rule)),
  }
}

/** A report with what was found of heat and vapour in the stead of what was not known yet. Places that are new stay unknown. */
export const withHeat = (report: Report, heat: Report): Report => {
  const told = new Set([...heat.findings, ...heat.notApplicable].map(findingKey))
  const asked = new Set(
    [...report.findings, ...report.notApplicable].filter(it => needsHeat.includes(it.rule)).map(findingKey),
  )
  const isOpen = (it: Pick<Finding, 'rule' | 'where'>): boolean =>
    !needsHeat.includes(it.rule) || !told.has(findingKey(it))
  const isAsked = (it: Pick<Finding, 'rule' | 'where'>): boolean => asked.has(findingKey(it))
  return {
    findings: worstFirst([...report.findings.filter(isOpen), ...heat.findings.filter(isAsked)]),
    notApplicable: [...report.notApplicable.filter(isOpen), ...heat.notApplicable.filter(isAsked)],
  }
}

/** What cures one finding of a project, tried with heat and vapour solved; nothing where the finding is not there. */
export const remediesOf = (
  project: Project,
  key: string,
  physics: PhysicsOf = physicsDesk(),
  memory: Memory = emptyMemory(),
): readonly Remedy[] => {
  const { findings } = check(project, practiceOf(project.practice), physics, memory)
  const found = findings.find(it => findingKey(it) === key)
  return found?.verdict === 'not-met' || found?.verdict === 'advice' ? found.remedies : []
}

/** A finding with its sum written out, and nothing that cannot be sent. */
const plain = (it: Finding): Finding => {
  // Members by name are those of a finding; what a check keeps beside them has no name. Remedies are sought only when read.
  const members = Object.keys(it).filter(name => name !== 'remedies')
  const sent = Object.fromEntries(members.map(name => [name, Reflect.get(it, name) as unknown]))
  return { ...sent, ...('remedies' in it ? { remedies: [] } : {}) } as unknown as Finding
}
