import type { Part } from '../../../core/detail'
import type { Id, Point } from '../../../core/geometry'
import type { Camera } from './camera'

/** The bodies of a listed part: beads go with their sash. */
export const bodiesOf = (part: Id): readonly Id[] =>
  part.endsWith('/sash') ? [part, part.replace('/sash', '/bead')] : [part]

/** The listed part that a body belongs to. */
export const listedPart = (parts: readonly Part[], body: Id): Id => {
  if (parts.some(it => it.id === body)) return body
  return body.endsWith('/bead') ? body.replace('/bead', '/sash') : (body.split('/')[0] ?? body)
}

/** Lines of the model as one path on the board. */
export const boardPath = (camera: Camera, lines: readonly (readonly Point[])[]): string => {
  const place = (at: Point): string =>
    camera
      .toPx(at)
      .map(it => it.toFixed(1))
      .join(' ')
  return lines.map(line => `M${line.map(place).join('L')}`).join('')
}
