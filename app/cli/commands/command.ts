import type { ExitCode, Io } from '../io'

/** An option of a command as it is typed: `--practice <id>`, or a bare switch like `--json`. */
export type Option = {
  readonly flags: string
  readonly says: string
  readonly choices?: readonly string[]
  readonly usually?: string
}

/** What was typed for the options, by name. */
export type Chosen = Readonly<Record<string, string | boolean | undefined>>

/** One command, in one file. It catches nothing: input at fault is a result, and faults of ours end at the outer edge. */
export type Command = {
  readonly name: string
  readonly says: string
  /** what is given without a name; one that may miss comes as an empty text */
  readonly takes: readonly { readonly name: string; readonly says: string; readonly mayMiss?: true }[]
  readonly options: readonly Option[]
  readonly run: (given: readonly string[], chosen: Chosen, io: Io) => Promise<ExitCode>
}
