import type { Id } from '../geometry'
import { type Side, sides } from '../kinds'
import type { Box } from './box'
import { entryAt } from './find'
import type { Block, Fixing, Mullion } from './fixing'
import type { Opening, Project } from './model'
import type { PinnedPhoto } from './photo'
import type { Sill } from './sill'
import type { Threshold } from './threshold'

/** The lists of parts that an opening keeps: several of each. */
export type PartLists = {
  readonly fixings: Fixing
  readonly blocks: Block
  readonly mullions: Mullion
  readonly transoms: Mullion
  readonly photos: PinnedPhoto
}
/** No opening has more of them, and no file holds more: ours, far above what is used. */
export const mostListed: Readonly<Record<keyof PartLists, number>> = {
  fixings: 20,
  blocks: 40,
  mullions: 20,
  transoms: 20,
  photos: 40,
}
/** The parts of which an opening has one or none. */
export type SingleParts = { readonly sill: Sill; readonly threshold: Threshold; readonly box: Box }

type Found<T> = { readonly opening: Opening; readonly part: T }

/** A part out of one list of any opening, and the opening that has it. */
export const listedPart = <K extends keyof PartLists>(
  project: Project,
  list: K,
  id: Id,
): Found<PartLists[K]> | undefined => {
  for (const opening of Object.values(project.openings)) {
    // The list of K holds parts of K: TypeScript does not follow the index through the generic.
    const part = (opening[list] as readonly PartLists[K][] | undefined)?.find(it => it.id === id)
    if (part) return { opening, part }
  }
  return undefined
}

/** A sill, a threshold or a box of any opening, and the opening that has it. */
export const singlePart = <K extends keyof SingleParts>(
  project: Project,
  key: K,
  id: Id,
): Found<SingleParts[K]> | undefined => {
  for (const opening of Object.values(project.openings)) {
    // The member of K holds what K names: TypeScript does not follow the index through the generic.
    const part = opening[key] as SingleParts[K] | undefined
    if (part?.id === id) return { opening, part }
  }
  return undefined
}

/** A mullion or a transom, and the side that it divides first: a mullion the head, a transom the left jamb. */
export const memberOf = (
  project: Project,
  id: Id,
): (Found<Mullion> & { readonly list: 'mullions' | 'transoms' }) | undefined => {
  for (const list of ['mullions', 'transoms'] as const) {
    const found = listedPart(project, list, id)
    if (found) return { ...found, list }
  }
  return undefined
}

/** A place along a side of an opening where its flank is measured; its name says where: `opening-15.left@600`. */
export type OffsetPlace = { readonly opening: Opening; readonly side: Side; readonly at_mm: number }

export const offsetId = (opening: Id, side: Side, at_mm: number): Id => `${opening}.${side}@${at_mm}`

/** The place that a name says, where that opening has it: along a side, from its left or lower end. */
export const offsetPlace = (project: Project, id: Id): OffsetPlace | undefined => {
  const [, name = '', side = '', at = ''] = /^(.+)\.([a-z]+)@(\d+(?:\.\d+)?)$/.exec(id) ?? []
  const opening = entryAt(project.openings, name)
  const along = sides.find(it => it === side)
  const at_mm = Number(at)
  if (opening === undefined || along === undefined || !(at_mm <= sideEnd_mm(opening, along))) return undefined
  return { opening, side: along, at_mm }
}

/** Where a side ends, from its left or lower end. */
export const sideEnd_mm = (opening: Opening, side: Side): number =>
  Math.max(...opening.sides[side].map(it => it.to_mm))
