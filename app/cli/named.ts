import type { Result } from '../../core/units'
import type { Change } from './change-project'

/** A value of a project that was asked for by name: how a typed text is read into edits, and how it is taken back. */
export type NamedValue = {
  readonly read: (typed: string) => Result<Change>
  readonly clear: () => Result<Change>
}
