import type { Project } from '../detail'
import { type Practice, practiceOf } from '../practice'
import { type Finding, check, needsHeat } from '../rules'
import { type PhysicsOf, physicsDesk } from '../vapour'

/**
 * The verdicts that need heat or vapour, with their sums written out and their remedies tried: plain values, so that a worker
 * can send them to a window that checks everything else by itself. A desk that is kept solves nothing twice.
 */
export const heatFindings = (
  project: Project,
  practice: Practice = practiceOf(project.practice),
  physics: PhysicsOf = physicsDesk(),
): readonly Finding[] =>
  check(project, practice, physics)
    .findings.filter(it => needsHeat.includes(it.rule))
    .map(plain)

/** A finding with everything in it that is otherwise found when it is read, and nothing that cannot be sent. */
const plain = (it: Finding): Finding =>
  // Its own members by name are those of a finding; what a check keeps beside them has no name.
  Object.fromEntries(Object.entries(it)) as unknown as Finding
