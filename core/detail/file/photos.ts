import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex } from '@noble/hashes/utils.js'
import { filled, same, type Words, words } from '../../words'
import type { Project } from '../model'
import { sizeOf_bytes, fromBase64 } from './base64'

/** One photo is no larger, and all together are no larger: ours, so that a file can be sent by mail. */
export const mostPhoto_bytes = 1024 * 1024
export const mostPhotos_bytes = 20 * 1024 * 1024

/** The digest that a photo is kept under: of its bytes, or of its text where that is no base64 at all. */
export const digestOfPhoto = (base64: string): string =>
  `sha256:${bytesToHex(sha256(fromBase64(base64) ?? new Uint8Array()))}`

/** What is wrong with a photo by itself: it is no whole JPEG, or too large. */
export const photoProblem = (base64: string): Words | undefined => {
  if (sizeOf_bytes(base64) > mostPhoto_bytes) return tooLarge
  const bytes = fromBase64(base64)
  const isJpeg =
    bytes !== undefined &&
    bytes.length > 4 &&
    // start of image, then a marker; end of image (ITU-T T.81, table B.1)
    bytes[0] === 0xff && bytes[1] === 0xd8 && bytes[2] === 0xff &&
    bytes.at(-2) === 0xff && bytes.at(-1) === 0xd9 // prettier-ignore
  return isJpeg ? undefined : noJpeg
}

/** What is wrong with all photos of a project together. */
export const photosTogetherProblem = (photos: NonNullable<Project['photos']>): Words | undefined =>
  Object.values(photos).reduce((sum, it) => sum + sizeOf_bytes(it), 0) > mostPhotos_bytes
    ? tooMuch
    : undefined

/** The project with those of its photos that are whole and shown somewhere, and what is to be said of the others. */
export const withSoundPhotos = (
  project: Project,
): { readonly project: Project; readonly notes: readonly Words[] } => {
  const { photos, ...rest } = project
  const pins = Object.values(project.openings).flatMap(it => it.photos ?? [])
  if (photos === undefined && pins.length === 0) return { project, notes: [] }
  const all = photos ?? {}
  const spoiled = Object.keys(all).filter(digest => photoProblem(all[digest] ?? '') ?? digest !== digestOfPhoto(all[digest] ?? '')) // prettier-ignore
  const sound = Object.fromEntries(Object.entries(all).filter(([digest]) => !spoiled.includes(digest)))
  const lost = pins.filter(it => !Object.hasOwn(sound, it.photo))
  return {
    project:
      spoiled.length === 0 ? project : Object.keys(sound).length > 0 ? { ...rest, photos: sound } : rest,
    notes: [
      ...lost.map(it => filled(spoiled.includes(it.photo) ? damagedPhoto : missingPhoto, same(it.note || it.id))), // prettier-ignore
      ...spoiled.filter(digest => !pins.some(it => it.photo === digest)).map(() => looseDamaged),
    ],
  }
}

const tooLarge = words('a photo is at most 1 MB', 'ein Foto ist höchstens 1 MB groß')
const noJpeg = words('this is no whole JPEG photo', 'das ist kein ganzes JPEG-Foto')
const tooMuch = words(
  'all photos together are at most 20 MB',
  'alle Fotos zusammen sind höchstens 20 MB groß',
)
const missingPhoto = words(
  'The photo “{0}” is not in this file.',
  'Das Foto „{0}“ liegt nicht in dieser Datei.',
)
const damagedPhoto = words(
  'The photo “{0}” is damaged and was left out.',
  'Das Foto „{0}“ ist beschädigt und wurde weggelassen.',
)
const looseDamaged = words('A photo is damaged and was left out.', 'Ein Foto ist beschädigt und wurde weggelassen.') // prettier-ignore
