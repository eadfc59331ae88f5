import type { Id } from '../../geometry'
import type { Section } from '../../section'
import { hatchOf } from '../hatches/all'
import type { View } from '../mark'
import { hatchingsOf, piecesOf } from './pieces'

/** The directions of the straight hatch lines of a section as they lie on paper, each once. */
export const hatchAngles_deg = (
  section: Section,
  look: Pick<View, 'turn_deg' | 'mirrored'> & { readonly hatchOf: (material: Id) => string },
): readonly number[] => {
  const angles = [...hatchingsOf(piecesOf(section, look.hatchOf)).values()].flatMap(hatching =>
    (hatchOf(hatching.key).families ?? []).map(({ angle_deg }) => {
      const inPart = (hatching.mirrored ? -angle_deg : angle_deg) + hatching.turn_deg
      return (look.mirrored ? -inPart : inPart) + look.turn_deg
    }),
  )
  return [...new Set(angles.map(it => ((it % 180) + 180) % 180))]
}
