import type { z } from 'zod'
import type { Id } from '../geometry'
import type { Stated } from '../units'
import type { Some, Words } from '../words'
import type { Readable } from './field'
import type { Project } from './model'

/** A word of a closed list, and how people say it. */
export type Word = { readonly value: string; readonly name: Words }

/** A named word out of a closed list: the sibling of `Field` for what is chosen instead of measured. */
export type ChoiceField = Readable<string> & {
  /** whether a part of its kind has the word at all; absent: each has */
  readonly has?: (project: Project, part: Id) => boolean
  readonly schema: z.ZodType<string>
  /** a fact of the site: no remedy may write it */
  readonly surveyed: boolean
  /** it tells how the design is made: nobody guesses or measures it, so nothing is said of how it came to be known */
  readonly isPlain?: true
  /** the words that this part may have */
  readonly allowed: (project: Project, part: Id) => { readonly choices: Some<Word>; readonly because: Words }
  readonly write: (project: Project, part: Id, to: Stated<string> | undefined) => Project
}
