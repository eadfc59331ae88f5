import type { Project } from '../../../core/detail'
import type { Practice } from '../../../core/practice'
import type { Report } from '../../../core/rules'
import type { Words } from '../../../core/words'

/** What a report is about. */
export type Reported = {
  readonly file: string
  readonly project: Project
  readonly practice: Practice
  readonly report: Report
  readonly notes: readonly Words[]
}
