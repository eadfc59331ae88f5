import { z } from 'zod'
import { sides } from '../../kinds'
import { ok, refused } from '../../units'
import { words } from '../../words'
import type { EditKind } from '../edit'
import { withOpening } from '../fields/tables'
import { digestOfPhoto, photoProblem, photosTogetherProblem } from '../file/photos'
import { entryAt } from '../find'
import type { PinnedPhoto } from '../photo'
import { sideEnd_mm } from '../opening-parts'
import { numbered } from './numbered'

/** Pins a photo of the site to an opening: what it shows goes into the file, once for each digest. */
export const pinPhoto: EditKind<'pin-photo'> = {
  kind: 'pin-photo',
  schema: z.strictObject({
    kind: z.literal('pin-photo'),
    opening: z.string(),
    jpeg: z.string(),
    side: z.enum(sides).exactOptional(),
    at_mm: z.number().exactOptional(),
    date: z.iso.date().exactOptional(),
    note: z.string().max(2000),
  }),
  apply: (project, { kind: _, opening, jpeg, ...told }) => {
    const found = entryAt(project.openings, opening)
    if (found === undefined)
      return refused({ at: opening, say: words('there is no such opening', 'diese Öffnung gibt es nicht') })
    const max = told.side ? sideEnd_mm(found, told.side) : 0
    if (told.at_mm !== undefined && !(told.side && 0 <= told.at_mm && told.at_mm <= max))
      return refused({
        at: 'at_mm',
        say: words('a place along the side that is named', 'eine Stelle an der genannten Seite'),
        allowed: { unit: 'mm', min: 0, max },
      })
    if (told.date !== undefined && !z.iso.date().safeParse(told.date).success)
      return refused({ at: 'date', say: words('a day like 2026-03-14', 'ein Tag wie 2026-03-14') })
    const digest = digestOfPhoto(jpeg)
    const photos = { ...project.photos, [digest]: jpeg }
    const wrong = photoProblem(jpeg) ?? photosTogetherProblem(photos)
    if (wrong) return refused({ at: 'photo', say: wrong })
    const counted = numbered(project, 'photo')
    const pinned: PinnedPhoto = { id: counted.id, photo: digest, ...told }
    const next = withOpening(counted.project, opening, it => ({
      ...it,
      photos: [...(it.photos ?? []), pinned],
    }))
    return ok({ ...next, photos })
  },
}
