import type { FieldAt, Known, PartKind, Project, Readable } from '../detail'
import type { Id } from '../geometry'
import { assumed, specified, type Stated } from '../units'
import type { Words } from '../words'
import type { Place } from './place'

/**
 * A value that a rule reads: a field, or something computed from the model. A computed one names the stated values
 * beneath it, so that a finding can say which guess it rests on or which value is missing.
 */
export type Reading<T> = Readable<T> & {
  readonly beneath?: (project: Project, part: Id) => readonly FieldAt[]
  /** for what no part has alone: it is read from the place that is asked about */
  readonly placed?: Placed<T>
}
export type Readings = Readonly<Record<string, Reading<unknown>>>
export type ValuesOf<R extends Readings> = {
  readonly [K in keyof R]: R[K] extends Reading<infer T> ? T : never
}

/** A reading in use, or the values that have to be stated first. */
export type Read<T> = { readonly known: Known<T>; readonly assumed: readonly FieldAt[] }

/** What a reading gives of a part: stated, else fallen back on. */
export const readAt = <T>(it: Reading<T>, project: Project, part: Id): Read<T> | undefined => {
  const stated = it.read(project, part)
  const known: Known<T> | undefined = stated ? { ...stated, origin: 'file' } : it.fallback(project, part)
  if (!known) return undefined
  const rests = known.basis === 'assumed' ? (it.beneath?.(project, part) ?? [{ field: it.id, part }]) : []
  return { known, assumed: rests }
}

/** The values that are missing where a reading gives nothing. */
export const missingAt = (it: Reading<unknown>, project: Project, part: Id): readonly FieldAt[] => {
  const beneath = it.beneath?.(project, part) ?? []
  return beneath.length > 0 ? beneath : [{ field: it.id, part }]
}

/** What a computed reading says of itself. `compute` gives nothing where a value beneath it is missing. */
export type Computed<T> = {
  readonly id: string
  readonly name: Words
  readonly of: PartKind
  readonly compute: (project: Project, part: Id) => T | undefined
  readonly beneath?: (project: Project, part: Id) => readonly FieldAt[]
}

/** A reading computed from the model. It counts as assumed where something beneath it is. */
export const computed = <T>(it: Computed<T>): Reading<T> => ({
  id: it.id,
  name: it.name,
  of: it.of,
  ...(it.beneath ? { beneath: it.beneath } : {}),
  read: () => undefined,
  fallback: (project, part) => {
    const value = it.compute(project, part)
    if (value === undefined) return undefined
    const rests = it.beneath?.(project, part) ?? []
    return { ...(rests.length > 0 ? assumed(value) : specified(value)), origin: 'computed' }
  },
})

/** A stated value beneath a reading, and its name; without a value it is missing. */
export type Beneath = FieldAt & { readonly stated: Stated<unknown> | undefined }

/** What a reading of a place says of itself. `compute` gives nothing where something beneath it is missing. */
export type Placed<T> = {
  readonly id: string
  readonly name: Words
  readonly compute: (at: Place) => T | undefined
  readonly beneath?: (at: Place) => readonly Beneath[]
}

/** A reading of what stands together at a place: a screw in its wall, a tape on its flank. */
export const placed = <T>(it: Placed<T>): Reading<T> => ({
  id: it.id,
  name: it.name,
  of: 'opening',
  read: () => undefined,
  fallback: () => undefined,
  placed: it,
})

/** One stated value of the place itself, under its field's name. */
export const statedThere = <T>(
  { id, name }: { readonly id: string; readonly name: Words },
  part: (at: Place) => Id,
  of: (at: Place) => Stated<T> | undefined,
): Reading<T> =>
  placed({
    id,
    name,
    compute: at => of(at)?.value,
    beneath: at => [{ field: id, part: part(at), stated: of(at) }],
  })

/** A placed reading in use. */
export const readThere = <T>(it: Placed<T>, at: Place): Read<T> | undefined => {
  const value = it.compute(at)
  if (value === undefined) return undefined
  const rests = (it.beneath?.(at) ?? []).filter(one => one.stated?.basis === 'assumed').map(named)
  const known = rests.length > 0 ? assumed(value) : specified(value)
  return { known: { ...known, origin: 'computed' }, assumed: rests }
}

/** The values that are missing where a placed reading gives nothing. */
export const missingThere = <T>(it: Placed<T>, at: Place): readonly FieldAt[] => {
  const missing = (it.beneath?.(at) ?? []).filter(one => one.stated === undefined).map(named)
  return missing.length > 0 ? missing : [{ field: it.id, part: at.opening.id }]
}

const named = ({ field, part }: Beneath): FieldAt => ({ field, part })
