import { fieldsOf, known, type Part, type Project, sealOf } from '../../../core/detail'
import type { Side } from '../../../core/kinds'
import type { Report, Verdict } from '../../../core/rules'
import { worst } from '../all-round/stretches'

/** A row of the parts list: the part with its number, the worst verdict about it, and whether a guess stands in it. */
export type PartRow = {
  readonly part: Part
  readonly number: number
  readonly verdict: Verdict | undefined
  readonly isAssumed: boolean
  readonly plane: string | undefined
}

export const partRows = (
  project: Project,
  parts: readonly Part[],
  report: Report,
  side: Side,
): readonly PartRow[] =>
  parts.map((part, at) => ({
    part,
    number: at + 1,
    verdict: worst(
      report.findings.filter(it => it.where.part === part.id && it.where.side === side).map(it => it.verdict),
    ),
    // What is shown of a frame is its profile; that its movement is assumed shows in its fields.
    isAssumed:
      part.kind !== 'frame' &&
      fieldsOf(project, part.id).some(
        field => known(project, { field: field.id, part: part.id })?.basis === 'assumed',
      ),
    plane: sealOf(project, part.id)?.seal.plane,
  }))

/** The number of a part in the list; absent where it is not listed. */
export const numberOf = (parts: readonly Part[], id: string): number | undefined => {
  const at = parts.findIndex(it => it.id === id)
  return at < 0 ? undefined : at + 1
}
