import { z } from 'zod'
import type { Id } from '../../geometry'
import type { Stated, Unit } from '../../units'
import type { Words } from '../../words'
import type { Allowed } from '../allowed/position'
import type { Field, Known, PartKind } from '../field'
import type { Project } from '../model'

/** What a field of one number says of itself. */
export type NumberField = {
  readonly id: string
  readonly name: Words
  readonly of: PartKind
  readonly unit: Unit
  readonly surveyed?: true
  readonly has?: (project: Project, part: Id) => boolean
  readonly read: (project: Project, part: Id) => Stated<number> | undefined
  readonly fallback?: (project: Project, part: Id) => Known<number> | undefined
  readonly allowed: (project: Project, part: Id) => Allowed
  readonly write: (project: Project, part: Id, to: Stated<number> | undefined) => Project
}

export const numberField = (it: NumberField): Field<number> => ({
  ...it,
  schema: z.number(),
  surveyed: it.surveyed ?? false,
  fallback: it.fallback ?? (() => undefined),
})
