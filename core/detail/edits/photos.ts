import { z } from 'zod'
import type { Id } from '../../geometry'
import { sides } from '../../kinds'
import { ok, type Problem, refused } from '../../units'
import { words } from '../../words'
import type { EditKind } from '../edit'
import { withListed, withOpening } from '../fields/tables'
import { digestOfPhoto, photoProblem, photosTogetherProblem } from '../file/photos'
import { entryAt, openingOf } from '../find'
import type { Opening, Project } from '../model'
import type { PhotoTold, PinnedPhoto } from '../photo'
import { listedPart, sideEnd_mm } from '../opening-parts'
import { numbered } from './numbered'
import { overfull } from './overfull'

/** A note is no longer than a few lines of it: ours. */
export const longestPhotoNote = 2000

const told = {
  side: z.enum(sides).exactOptional(),
  at_mm: z.number().exactOptional(),
  date: z.iso.date().exactOptional(),
  note: z.string().max(longestPhotoNote),
}

/** Pins a photo of the site to an opening: what it shows goes into the file, once for each digest. */
export const pinPhoto: EditKind<'pin-photo'> = {
  kind: 'pin-photo',
  schema: z.strictObject({ kind: z.literal('pin-photo'), opening: z.string(), jpeg: z.string(), ...told }),
  apply: (project, { kind: _, opening, jpeg, ...said }) => {
    const found = entryAt(project.openings, opening)
    if (found === undefined)
      return refused({ at: opening, say: words('there is no such opening', 'diese Öffnung gibt es nicht') })
    const problem = wrongIn(found, said)
    if (problem) return refused(problem)
    const digest = digestOfPhoto(jpeg)
    const photos = { ...project.photos, [digest]: jpeg }
    const wrong = photoProblem(jpeg) ?? photosTogetherProblem(photos)
    if (wrong) return refused({ at: 'photo', say: wrong })
    const counted = numbered(project, 'photo')
    const pinned: PinnedPhoto = { id: counted.id, photo: digest, ...said }
    const next = withOpening(counted.project, opening, it => ({
      ...it,
      photos: [...(it.photos ?? []), pinned],
    }))
    const full = overfull(openingOf(next, opening))
    return full ? refused(full) : ok({ ...next, photos })
  },
}

/** Says anew what a pinned photo shows, where and when it was taken; the photo itself stays. */
export const tellPhoto: EditKind<'tell-photo'> = {
  kind: 'tell-photo',
  schema: z.strictObject({ kind: z.literal('tell-photo'), photo: z.string(), ...told }),
  apply: (project, { kind: _, photo, ...said }) => {
    const found = listedPart(project, 'photos', photo)
    if (found === undefined)
      return refused({ at: photo, say: words('there is no such photo', 'dieses Foto gibt es nicht') })
    const problem = wrongIn(found.opening, said)
    if (problem) return refused(problem)
    return ok(withListed(project, 'photos', photo, it => ({ id: it.id, photo: it.photo, ...said })))
  },
}

/** What is wrong with what is told of a photo of an opening: its place, its day or its note. */
const wrongIn = (opening: Opening, { side, at_mm, date, note }: PhotoTold): Problem | undefined => {
  const max = side ? sideEnd_mm(opening, side) : 0
  if (at_mm !== undefined && !(side && 0 <= at_mm && at_mm <= max))
    return { at: 'at_mm', say: placeNeeded, allowed: { unit: 'mm', min: 0, max } }
  if (date !== undefined && !z.iso.date().safeParse(date).success) return { at: 'date', say: dayNeeded }
  return note.length > longestPhotoNote ? { at: 'note', say: noteTooLong } : undefined
}

/** The project without a pinned photo; what it shows goes with the last pin. Nothing where no opening has it. */
export const withoutPhoto = (project: Project, id: Id): Project | undefined => {
  const found = listedPart(project, 'photos', id)
  if (found === undefined) return undefined
  const next = withOpening(project, found.opening.id, ({ photos = [], ...it }) => {
    const others = photos.filter(one => one.id !== id)
    return others.length > 0 ? { ...it, photos: others } : it
  })
  return withoutLoose(next, [found.part])
}

/** The project without what these photos show, as far as no other pin shows it. */
export const withoutLoose = (project: Project, unpinned: readonly PinnedPhoto[]): Project => {
  const { photos, ...rest } = project
  if (photos === undefined || unpinned.length === 0) return project
  const pinned = new Set(
    Object.values(project.openings).flatMap(it => (it.photos ?? []).map(one => one.photo)),
  )
  const loose = new Set(unpinned.map(it => it.photo).filter(it => !pinned.has(it)))
  const kept = Object.entries(photos).filter(([digest]) => !loose.has(digest))
  return kept.length > 0 ? { ...project, photos: Object.fromEntries(kept) } : rest
}

const placeNeeded = words('a place along the side that is named', 'eine Stelle an der genannten Seite')
const dayNeeded = words('a day like 2026-03-14', 'ein Tag wie 2026-03-14')
const noteTooLong = words(
  'a note is at most 2000 characters long',
  'eine Notiz ist höchstens 2000 Zeichen lang',
)
