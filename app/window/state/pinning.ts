import { type Edit, mostPhoto_bytes, photoProblem } from '../../../core/detail'
import { inWords, writeNumber } from '../../../core/units'
import { filled, isSome } from '../../../core/words'
import { say as words } from '../window-words'
import type { Desk } from './desk'
import type { Notes } from './notes.svelte'

/** Longest side in pixels and quality of a photo that is made smaller, from good to small: ours. */
const tries = [
  { side_px: 2000, quality: 0.85 },
  { side_px: 1600, quality: 0.8 },
  { side_px: 1200, quality: 0.7 },
  { side_px: 800, quality: 0.6 },
] as const

/**
 * Pins photos to the opening and the side that is looked at, all in one step of undo. A JPEG that the file takes goes in
 * as it is; what is larger or no JPEG is painted anew, smaller. What cannot be read is said and left out.
 */
export const pinPhotos = async (
  { board, readings, notes }: Pick<Desk, 'board' | 'readings' | 'notes'>,
  files: readonly File[],
): Promise<void> => {
  const { opening, side } = readings.place
  const made: Edit[] = []
  for (const file of files) {
    const jpeg = (await asItIs(file)) ?? (await smaller(file, notes))
    if (jpeg === undefined) notes.tell({ kind: 'not-met', say: filled(words.noPhoto, file.name) })
    else made.push({ kind: 'pin-photo', opening, side, jpeg, note: '' })
  }
  const edits: readonly Edit[] = made
  if (!isSome(edits)) return
  const [problem] = board.act({ kind: 'edit', edits, says: words.pinned })
  if (problem) notes.tell({ kind: 'not-met', say: filled(words.notPinned, problem.say) })
}

/** The very bytes of a photo, where a file of ours takes them. */
const asItIs = async (file: File): Promise<string | undefined> => {
  if (file.type !== 'image/jpeg' || file.size > mostPhoto_bytes) return undefined
  const jpeg = await base64Of(file)
  return photoProblem(jpeg) === undefined ? jpeg : undefined
}

const megabytes = (bytes: number) => inWords(language => writeNumber(bytes / 1024 / 1024, language, 1))

/** The photo as a JPEG that fits into a file, upright as it was taken; nothing where it cannot be read. */
const smaller = async (file: File, notes: Notes): Promise<string | undefined> => {
  const read = await createImageBitmap(file, { imageOrientation: 'from-image' }).catch(() => undefined)
  if (read === undefined) return undefined
  for (const { side_px, quality } of tries) {
    const scale = Math.min(1, side_px / Math.max(read.width, read.height))
    const paper = new OffscreenCanvas(
      Math.max(1, Math.round(read.width * scale)),
      Math.max(1, Math.round(read.height * scale)),
    )
    const ink = paper.getContext('2d')
    if (ink === null) return undefined
    // What lets light through is laid on white: a JPEG knows no transparency.
    ink.fillStyle = '#fff'
    ink.fillRect(0, 0, paper.width, paper.height)
    ink.drawImage(read, 0, 0, paper.width, paper.height)
    const made = await paper.convertToBlob({ type: 'image/jpeg', quality })
    if (made.size > mostPhoto_bytes) continue
    const say = filled(words.photoSmaller, file.name, megabytes(file.size), megabytes(made.size))
    if (made.size < file.size) notes.tell({ kind: 'met', say })
    return base64Of(made)
  }
  return undefined
}

/** The bytes of a photo as base64. */
const base64Of = (photo: Blob): Promise<string> =>
  new Promise((done, failed) => {
    const reader = new FileReader()
    // What is read as an address of data has its bytes behind the comma.
    reader.onload = () => done(String(reader.result).replace(/^[^,]*,/, ''))
    reader.onerror = () => failed(reader.error ?? new Error('a photo could not be read'))
    reader.readAsDataURL(photo)
  })
