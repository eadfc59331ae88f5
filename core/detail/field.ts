import type { z } from 'zod'
import type { Id } from '../geometry'
import type { Bounds, Stated, Unit } from '../units'
import type { Words } from '../words'
import type { Project } from './model'

/** Where a value that is used came from. */
export type Origin = 'file' | 'survey' | 'practice' | 'material' | 'computed'

/** A value in use: stated, or fallen back on. */
export type Known<T> = Stated<T> & { readonly origin: Origin; readonly because?: Words }

/** What kind of part a value belongs to. */
export type PartKind =
  | 'layer'
  | 'wall'
  | 'frame'
  | 'joint'
  | 'seal'
  | 'opening'
  | 'fixing'
  | 'sill'
  | 'threshold'
  | 'site'
  | 'box'
  | 'block'
  | 'mullion'
  | 'zone'
  | 'offset'

/** The half of a field that only reads: what a rule needs of a value. */
export type Readable<T> = {
  readonly id: string
  readonly name: Words
  readonly of: PartKind
  readonly read: (project: Project, part: Id) => Stated<T> | undefined
  readonly fallback: (project: Project, part: Id) => Known<T> | undefined
}

/**
 * A named value. One entry serves form field, grip, dimension, command line, the list of what is missing, and remedies.
 * `read` gives what is stated, `fallback` what is used where nothing is, `allowed` the range for which geometry exists.
 */
export type Field<T = unknown> = Readable<T> & {
  /** whether a part of its kind has the value at all; absent: each has */
  readonly has?: (project: Project, part: Id) => boolean
  readonly unit: Unit
  readonly schema: z.ZodType<T>
  /** a fact of the site: no remedy may write it */
  readonly surveyed: boolean
  readonly allowed: (project: Project, part: Id) => { readonly bounds: Bounds; readonly because: Words }
  readonly write: (project: Project, part: Id, to: Stated<T> | undefined) => Project
}

/** One value of one part. */
export type FieldAt = { readonly field: string; readonly part: Id }
