import { type Compared, type Finding, verdicts } from './finding'
import { marginIn } from './weigh'

/** Findings in the order in which they need attention: by verdict, then by how near the limit is; alike ones keep their order. */
export const worstFirst = (findings: readonly Finding[]): readonly Finding[] => {
  const byVerdict = new Map(verdicts.map(it => [it, [] as Near[]]))
  for (const it of findings) byVerdict.get(it.verdict)?.push({ it, near: nearness(it) })
  return [...byVerdict.values()].flatMap(here =>
    here.sort((a, b) => order(a.near, b.near)).map(({ it }) => it),
  )
}

/** A finding, and how near its limit it is. */
type Near = { readonly it: Finding; readonly near: number }

/** How far a finding is inside its limit, negative outside; nothing where no amounts are compared. */
export const marginOfFinding = (it: Finding): number | undefined => {
  const compared = comparedIn(it)
  return compared && marginIn(compared)
}

const comparedIn = (it: Finding): Compared | undefined => ('compared' in it ? it.compared : undefined)

/** The margin as a share of the limit, so that millimetres and ratios can stand in one list; a plane that is missing comes first. */
const nearness = (it: Finding): number => {
  const compared = comparedIn(it)
  if (compared?.kind !== 'amount') return -Infinity
  const { min = 0, max = min } = compared.required
  return (marginIn(compared) ?? 0) / Math.max(Math.abs(min), Math.abs(max), 1e-9)
}

const order = (a: number, b: number): number => (a === b ? 0 : a < b ? -1 : 1)
