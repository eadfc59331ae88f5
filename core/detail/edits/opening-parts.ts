import { z } from 'zod'
import { sides } from '../../kinds'
import { ok, refused, specified } from '../../units'
import { isSome, words } from '../../words'
import { type EditKind, addedParts } from '../edit'
import { withFixing, withOpening } from '../fields/tables'
import { entryAt, fixingOf, frameOf, openingOf, profileOf } from '../find'
import { fixingKinds } from '../fixing'
import type { Opening, Project } from '../model'
import { listedPart, memberOf, type PartLists, singlePart } from '../opening-parts'
import { emptyBays, neededIn, sideLength_mm } from '../positions'
import { freshPart } from './fresh-part'
import { withMaterials } from './materials'
import { numbered } from './numbered'
import { overfull } from './overfull'
import { footTaken } from '../threshold'
import { withoutPhoto } from './photos'
import { named } from './rename'
import { standing } from './standing'

/** Puts a fresh part into an opening: a fixing, a block, a mullion, a transom, a sill, a threshold or a box. */
export const add: EditKind<'add'> = {
  kind: 'add',
  schema: z.strictObject({
    kind: z.literal('add'),
    into: z.string(),
    part: z.enum(addedParts),
    side: z.enum(sides).exactOptional(),
    at_mm: z.number().exactOptional(),
    fixing: z.enum(fixingKinds).exactOptional(),
  }),
  apply: (project, edit) => {
    const opening = entryAt(project.openings, edit.into)
    if (opening === undefined)
      return refused({
        at: edit.into,
        say: words('there is no such opening', 'diese Öffnung gibt es nicht'),
      })
    if ((edit.part === 'sill' || edit.part === 'threshold' || edit.part === 'box') && opening[edit.part])
      return refused({
        at: edit.into,
        say: words('the opening has one already', 'die Öffnung hat schon eins'),
      })
    const other = edit.part === 'sill' ? 'threshold' : edit.part === 'threshold' ? 'sill' : undefined
    if (other && opening[other]) return refused({ at: edit.into, say: footTaken })
    const side = edit.part === 'block' ? (edit.side ?? 'sill') : edit.part === 'transom' ? 'left' : 'head'
    const most_mm = sideLength_mm(opening, side)
    const at_mm = edit.at_mm ?? most_mm / 2
    if (!(0 < at_mm && at_mm < most_mm))
      return refused({
        at: edit.into,
        say: words('a place along the frame', 'eine Stelle am Rahmen'),
        allowed: { unit: 'mm', min: 0, max: most_mm },
      })
    const counted = numbered(
      project,
      edit.part === 'mullion' || edit.part === 'transom' ? 'member' : edit.part,
    )
    const fresh = freshPart(counted.project, opening, edit.part, {
      id: counted.id,
      side,
      at_mm,
      fixing: edit.fixing ?? 'frame-screw',
    })
    const next = withOpening(counted.project, opening.id, it => ({ ...it, ...fresh(it) }))
    const problem = overfull(openingOf(next, opening.id))
    return problem ? refused(problem) : standing(withMaterials(next))
  },
}

/** The project without a part of an opening; nothing where no opening has it. */
export const withoutPart = (project: Project, id: string): Project | undefined => {
  const bare = named(project, id, '')
  for (const key of ['sill', 'threshold', 'box'] as const) {
    const found = singlePart(project, key, id)
    if (found)
      return withOpening(bare, found.opening.id, ({ [key]: _, ...it }) => ({
        // Only what may be left out is left out.
        ...(it as Opening),
        stays: it.stays.filter(one => one !== id),
      }))
  }
  const withoutIt = withoutPhoto(bare, id)
  if (withoutIt) return withoutIt
  const list = listWith(project, id)
  if (list === undefined) return undefined
  return withOpening(bare, list.opening, it => ({
    ...it,
    [list.key]: (it[list.key] ?? []).filter(one => one.id !== id),
    stays: it.stays.filter(one => one !== id),
  }))
}

const listWith = (
  project: Project,
  id: string,
): { readonly opening: string; readonly key: keyof PartLists } | undefined => {
  const member = memberOf(project, id)
  if (member) return { opening: member.opening.id, key: member.list }
  for (const key of ['fixings', 'blocks'] as const) {
    const found = listedPart(project, key, id)
    if (found) return { opening: found.opening.id, key }
  }
  return undefined
}

const noFixing = (at: string) =>
  refused({ at, say: words('there is no such fixing', 'diese Befestigung gibt es nicht') })

/** No side has more fixings that are placed one by one: ours, as a file holds them. */
const mostPlaced = 40

/** States the axes of the fixings of a side, or goes back to their count. */
export const placeFixings: EditKind<'place-fixings'> = {
  kind: 'place-fixings',
  schema: z.strictObject({
    kind: z.literal('place-fixings'),
    fixing: z.string(),
    side: z.enum(sides),
    positions_mm: z.array(z.number()).max(mostPlaced).exactOptional(),
  }),
  apply: (project, { fixing, side, positions_mm }) => {
    const found = fixingOf(project, fixing)
    if (found === undefined) return noFixing(fixing)
    const max = sideLength_mm(found.opening, side)
    const outside = (positions_mm ?? []).filter(it => !(0 <= it && it <= max))
    if (isSome(outside) || (positions_mm?.length ?? 0) > mostPlaced)
      return refused({
        at: `${fixing} ${side}`,
        say: words('axes along this side, at most 40', 'Achsen an dieser Seite, höchstens 40'),
        allowed: { unit: 'mm', min: 0, max },
      })
    const sorted = positions_mm && [...new Set(positions_mm)].toSorted((a, b) => a - b)
    return ok(
      withFixing(project, fixing, it => {
        const { [side]: _, ...others } = it.positions_mm ?? {}
        return { ...it, positions_mm: sorted ? { ...others, [side]: sorted } : others }
      }),
    )
  },
}

/** Counts the fixings of a side so that no two stand further apart than asked, from the stated distance at the corners. */
export const spaceFixings: EditKind<'space-fixings'> = {
  kind: 'space-fixings',
  schema: z.strictObject({
    kind: z.literal('space-fixings'),
    fixing: z.string(),
    side: z.enum(sides),
    spacing_mm: z.number(),
  }),
  apply: (project, { fixing, side, spacing_mm }) => {
    const found = fixingOf(project, fixing)
    if (found === undefined) return noFixing(fixing)
    const { opening } = found
    const corner_mm = found.fixing.corner_mm?.value
    if (corner_mm === undefined)
      return refused({
        at: `${fixing} fixing.corner`,
        say: words('the corner distance is not stated', 'der Eckabstand ist nicht genannt'),
      })
    if (!(50 <= spacing_mm && spacing_mm <= 5000))
      return refused({
        at: `${fixing} ${side}`,
        say: words('distance between two fixings', 'Abstand zweier Befestigungen'),
        allowed: { unit: 'mm', min: 50, max: 5000 },
      })
    const { face_mm } = profileOf(frameOf(project, opening.id))
    const bays = emptyBays(opening, side, face_mm, corner_mm)
    const count = bays.reduce((sum, bay) => sum + neededIn(bay, spacing_mm, 2), 0)
    return ok(
      withFixing(project, fixing, it => {
        const { [side]: _, ...placed } = it.positions_mm ?? {}
        const { positions_mm: _all, ...rest } = it
        const counts = { ...it.counts, [side]: specified(count) }
        return Object.keys(placed).length > 0
          ? { ...rest, positions_mm: placed, counts }
          : { ...rest, counts }
      }),
    )
  },
}
