import type { Id } from '../../geometry'
import { type AnySeal, kindOf } from '../../seals'
import type { Stated } from '../../units'
import { isSome } from '../../words'
import type { Fixing } from '../fixing'
import type { Frame, Joint, Layer, Opening, Project, Wall } from '../model'
import { entryAt } from '../find'

type Change<T> = (it: T) => T
type Table = 'walls' | 'frames' | 'joints' | 'openings'
type EntryOf<K extends Table> = Project[K][Id]

/** The project with one entry of a table changed; the same project where there is no such entry. */
const withEntry = <K extends Table>(
  project: Project,
  table: K,
  id: Id,
  change: Change<EntryOf<K>>,
): Project => {
  // The table of K holds entries of K: TypeScript does not follow the index through the generic.
  const entries = project[table] as Readonly<Record<Id, EntryOf<K>>>
  const found = entryAt(entries, id)
  return found === undefined ? project : { ...project, [table]: { ...entries, [id]: change(found) } }
}

export const withWall = (project: Project, id: Id, change: Change<Wall>) =>
  withEntry(project, 'walls', id, change)
export const withFrame = (project: Project, id: Id, change: Change<Frame>) =>
  withEntry(project, 'frames', id, change)
export const withJoint = (project: Project, id: Id, change: Change<Joint>) =>
  withEntry(project, 'joints', id, change)
export const withOpening = (project: Project, id: Id, change: Change<Opening>) =>
  withEntry(project, 'openings', id, change)

export const withLayer = (project: Project, id: Id, change: Change<Layer>): Project => {
  const wall = Object.values(project.walls).find(it => it.layers.some(layer => layer.id === id))
  if (wall === undefined) return project
  const layers = wall.layers.map(it => (it.id === id ? change(it) : it))
  return isSome(layers) ? withWall(project, wall.id, it => ({ ...it, layers })) : project
}

export const withSeal = (project: Project, id: Id, change: Change<AnySeal>): Project => {
  const joint = Object.values(project.joints).find(it => it.seals.some(seal => seal.id === id))
  if (joint === undefined) return project
  return withJoint(project, joint.id, it => ({
    ...it,
    seals: it.seals.map(seal => (seal.id === id ? change(seal) : seal)),
  }))
}

export const withFixing = (project: Project, id: Id, change: Change<Fixing>): Project => {
  const opening = Object.values(project.openings).find(it => it.fixings.some(fixing => fixing.id === id))
  if (opening === undefined) return project
  return withOpening(project, opening.id, it => ({
    ...it,
    fixings: it.fixings.map(fixing => (fixing.id === id ? change(fixing) : fixing)),
  }))
}

/** A seal with one of its statements made or taken back; one that its kind cannot do without stays. */
export const withSealKey = (
  seal: AnySeal,
  key: string,
  to: Stated<number> | Stated<string> | undefined,
): AnySeal => {
  if (to !== undefined) return { ...seal, [key]: to }
  const { [key]: _, ...rest } = seal
  // Leaving a statement out keeps kind, id and plane.
  const without = rest as AnySeal
  return kindOf(seal).schema.safeParse(without).success ? without : seal
}
