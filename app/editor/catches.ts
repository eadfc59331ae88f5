import type { Project } from '../../core/detail'
import type { Layout } from '../../core/section'
import { type Grip, plannedLayout } from './grips'
import type { View } from './session'
import type { SnapValues } from './snap'

/** The grid that lengths of a design keep to: whole millimetres, as they are drawn on a sheet. */
const grid_mm = 1

/** What a dragged value can be caught by, in values of its field: places where faces come to lie in one line. */
export const catchesOf = (project: Project, view: View, grip: Grip): SnapValues => {
  const catches = byField[grip.at.field]?.(plannedLayout(project, view), grip)
  return { corner: [], face: [], middle: [], ...catches, grid_mm }
}

type Catches = Partial<Omit<SnapValues, 'grid_mm'>>

const byField: Readonly<Record<string, (at: Layout, grip: Grip) => Catches>> = {
  /** Outer face, axis and inner face of the frame, each against the wall: the edges of the reveal are its corners. */
  'opening.position': ({ depths, depth_mm }) => {
    const layers = [...depths.before, depths.bearing, ...depths.behind]
    const flush = (depth: number) => [depth, depth - depth_mm]
    const { from_mm, to_mm } = depths.bearing
    return {
      corner: [from_mm, to_mm].flatMap(flush),
      face: layers.flatMap(it => [it.from_mm, it.to_mm]).flatMap(flush),
      middle: layers.map(it => (it.from_mm + it.to_mm) / 2 - depth_mm / 2),
    }
  },
  /** A layer ends where the frame does, or is as thick as a neighbour. */
  'layer.thickness': ({ depths, position_mm, depth_mm }, { at }) => {
    const layers = [...depths.before, depths.bearing, ...depths.behind]
    const own = layers.find(it => it.layer.id === at.part)
    if (own === undefined) return {}
    const isBefore = depths.before.includes(own)
    const ends = [position_mm, position_mm + depth_mm]
    const thicknesses = ends.map(it => (isBefore ? own.to_mm - it : it - own.from_mm))
    return { face: thicknesses.filter(it => 0 < it) }
  },
  'reveal.cover': ({ profile }) => ({ face: [0, profile.face_mm], middle: [profile.face_mm / 2] }),
  'reveal.lining': ({ width_mm }) => ({ face: [0, width_mm] }),
  'joint.planned': ({ lining_mm }) => ({ face: [lining_mm] }),
  'fixing.axis': ({ depth_mm }) => ({ middle: [depth_mm / 2] }),
}
