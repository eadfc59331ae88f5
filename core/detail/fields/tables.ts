import type { Id } from '../../geometry'
import { type AnySeal, kindOf } from '../../seals'
import type { Stated } from '../../units'
import { isSome } from '../../words'
import type { Box } from '../box'
import type { Fixing } from '../fixing'
import type { Frame, Joint, Layer, Opening, Project, Wall } from '../model'
import { entryAt } from '../find'
import { listedPart, type PartLists, singlePart } from '../opening-parts'
import type { Sill } from '../sill'
import type { Threshold } from '../threshold'

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

/** The project with one part of a list of its opening changed; the same project where nothing has that name. */
export const withListed = <K extends keyof PartLists>(
  project: Project,
  list: K,
  id: Id,
  change: Change<PartLists[K]>,
): Project => {
  const found = listedPart(project, list, id)
  if (found === undefined) return project
  return withOpening(project, found.opening.id, it => ({
    ...it,
    // The list of K holds parts of K: TypeScript does not follow the index through the generic.
    [list]: (it[list] as readonly PartLists[K][]).map(one => (one.id === id ? change(one) : one)),
  }))
}

export const withFixing = (project: Project, id: Id, change: Change<Fixing>): Project =>
  withListed(project, 'fixings', id, change)

export const withBox = (project: Project, id: Id, change: Change<Box>): Project => {
  const found = singlePart(project, 'box', id)
  return found ? withOpening(project, found.opening.id, it => ({ ...it, box: change(found.part) })) : project
}

export const withSill = (project: Project, id: Id, change: Change<Sill>): Project => {
  const found = singlePart(project, 'sill', id)
  return found ? withOpening(project, found.opening.id, it => ({ ...it, sill: change(found.part) })) : project
}

export const withThreshold = (project: Project, id: Id, change: Change<Threshold>): Project => {
  const found = singlePart(project, 'threshold', id)
  return found
    ? withOpening(project, found.opening.id, it => ({ ...it, threshold: change(found.part) }))
    : project
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
