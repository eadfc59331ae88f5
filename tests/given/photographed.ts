import { applyEdits, type Edit, type Project } from '../../core/detail'

/** The smallest text that counts as a photo: a JPEG with some bytes of its own, as base64. */
export const aPhoto = (bytes: readonly number[] | Uint8Array): string =>
  Buffer.concat([
    Buffer.from([0xff, 0xd8, 0xff, 0xe0]),
    Buffer.from(bytes),
    Buffer.from([0xff, 0xd9]),
  ]).toString('base64')

/** A project with two photos pinned to its first opening, one of them twice. */
export const photographed = (project: Project): Project => {
  const [opening = ''] = Object.keys(project.openings)
  const pin = (jpeg: string, note: string): Edit => ({ kind: 'pin-photo', opening, jpeg, side: 'left', at_mm: 300, date: '2026-03-14', note })
  const [wall, sill] = [aPhoto([1, 2, 3]), aPhoto([4, 5, 6, 7])]
  const found = applyEdits(project, [pin(wall, 'old putty'), pin(sill, 'loose sill'), pin(wall, 'the same')])
  if (!found.ok) throw new Error(found.problems[0].say.en)
  return found.value
} // prettier-ignore
