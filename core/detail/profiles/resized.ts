import type { Point } from '../../geometry'
import { words } from '../../words'
import type { Profile } from './profile'
import { pvc76 } from './pvc-76'
import { timber78 } from './timber-78'
import { timberAluminium90 } from './timber-aluminium-90'

/** What is another in a frame of another size. */
type Size = Pick<Profile, 'id' | 'name' | 'depth_mm' | 'face_mm'>

/**
 * A frame of another depth and face, drawn in proportion to one that is drawn: its sash, gaskets and panes are scaled
 * with it within that depth and face, and moved along beyond. Order and contacts of all outlines stay.
 */
const resized = (from: Profile, to: Size): Profile => {
  const across = along(from.face_mm, to.face_mm)
  const deep = along(from.depth_mm, to.depth_mm)
  const moved = ([u, v]: Point): Point => [across(u), deep(v)]
  return {
    ...from,
    ...to,
    innerFace_mm: across(from.innerFace_mm),
    reach_mm: across(from.reach_mm),
    bodies: from.bodies.map(it => ({ ...it, outline: it.outline.map(moved) })),
  }
}

/** A place within a size keeps its share of it, one beyond keeps its distance from it; both to a hundredth. */
const along =
  (from_mm: number, to_mm: number) =>
  (at_mm: number): number =>
    Math.round(100 * (at_mm <= from_mm ? (at_mm * to_mm) / from_mm : at_mm + to_mm - from_mm)) / 100

export const timber68 = resized(timber78, {
  id: 'timber-68',
  name: words('Timber 68, broad face, triple glazing', 'Holz 68, breite Ansicht, Dreifachglas'),
  depth_mm: 68,
  face_mm: 70,
})
export const pvc70 = resized(pvc76, {
  id: 'pvc-70',
  name: words('PVC-U 70, triple glazing', 'PVC-U 70, Dreifachglas'),
  depth_mm: 70,
  face_mm: 70,
})
export const pvc74 = resized(pvc76, {
  id: 'pvc-74',
  name: words('PVC-U 74, triple glazing', 'PVC-U 74, Dreifachglas'),
  depth_mm: 74,
  face_mm: 70,
})
export const timberAluminium110 = resized(timberAluminium90, {
  id: 'timber-aluminium-110',
  name: words('Timber-aluminium 110, triple glazing', 'Holz-Aluminium 110, Dreifachglas'),
  depth_mm: 110,
  face_mm: 90,
})
