import type { Project } from '../../../core/detail'
import { check, type Verdict, verdicts } from '../../../core/rules'

/** The worst verdict about a project, and how many of it there are. */
export type Worst = { readonly verdict: Verdict; readonly count: number }

/** The worst verdict about a project; nothing where no rule applies. */
export const worstOf = (project: Project): Worst | undefined => {
  const { findings } = check(project)
  const verdict = verdicts.find(one => findings.some(it => it.verdict === one))
  return verdict && { verdict, count: findings.filter(it => it.verdict === verdict).length }
}
