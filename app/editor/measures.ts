import type { Project } from '../../core/detail'
import type { Point } from '../../core/geometry'
import type { Layout } from '../../core/section'
import { type Words, words } from '../../core/words'
import { type Grip, plannedLayout } from './grips'
import type { View } from './session'

/** A length that is shown while something moves: the size that is dragged, or the gap on either side of it. */
export type Measure = {
  readonly kind: 'size' | 'gap'
  readonly from: Point
  readonly to: Point
  readonly value_mm: number
  readonly says: Words
}

/** The size that a grip states and both neighbouring gaps, in the axes of the section of a view. */
export const measuresOf = (project: Project, view: View, grip: Grip): readonly Measure[] => {
  const gaps = byField[grip.at.field]?.(plannedLayout(project, view), grip) ?? []
  return [sizeOf(grip), ...gaps.filter(it => 0 < it.value_mm)]
}

/** The stretch that the value measures: it ends at the grip. */
const sizeOf = ({ place, along, value_mm }: Grip): Measure => ({
  kind: 'size',
  from: [place[0] - along[0] * value_mm, place[1] - along[1] * value_mm],
  to: place,
  value_mm,
  says: words('size', 'Maß'),
})

type Gaps = (at: Layout, grip: Grip) => readonly Measure[]

const byField: Readonly<Record<string, Gaps>> = {
  'opening.position': ({ depths, position_mm, depth_mm }, { place: [x] }) => [
    inDepth(x, [depths.outer_mm, position_mm], words('from outer face', 'ab Außenfläche')),
    inDepth(x, [position_mm + depth_mm, depths.inner_mm], words('to inner face', 'bis Innenfläche')),
  ],
  'layer.thickness': ({ depths }, { at, place: [x] }) => {
    const layers = [...depths.before, depths.bearing, ...depths.behind]
    const own = layers.findIndex(it => it.layer.id === at.part)
    return [layers[own - 1], layers[own + 1]].flatMap(it =>
      it ? [inDepth(x, [it.from_mm, it.to_mm], words('next layer', 'nächste Schicht'))] : [],
    )
  },
  'joint.planned': ({ side, width_mm, cover_mm, profile, depths, position_mm }) => {
    const y = position_mm
    const isCovered = side !== 'sill' && 0 < depths.before.length
    const edge = isCovered ? width_mm + cover_mm : width_mm
    return [
      ...(isCovered ? [across(y, [width_mm, edge], words('cover', 'Überdeckung'))] : []),
      across(y, [edge, width_mm + profile.face_mm], words('face of the frame', 'Ansicht des Rahmens')),
    ]
  },
  'reveal.cover': ({ width_mm, cover_mm, profile }, { place: [, y] }) => [
    across(y, [0, width_mm], words('joint', 'Fuge')),
    across(
      y,
      [width_mm + cover_mm, width_mm + profile.face_mm],
      words('face of the frame', 'Ansicht des Rahmens'),
    ),
  ],
  'reveal.lining': ({ width_mm, lining_mm, profile }, { place: [, y] }) => [
    across(y, [lining_mm, width_mm + profile.innerFace_mm], words('to the sash', 'bis zum Flügel')),
  ],
  'fixing.axis': ({ position_mm, depth_mm }, { place: [x, y] }) => [
    inDepth(x, [y, position_mm + depth_mm], words('to the back of the frame', 'bis Rahmenrückseite')),
  ],
  'fixing.embedment': ({ width_mm }, { place: [, y] }) => [across(y, [0, width_mm], words('joint', 'Fuge'))],
}

const inDepth = (x: number, [from, to]: readonly [number, number], says: Words): Measure => ({
  kind: 'gap',
  from: [x, from],
  to: [x, to],
  value_mm: to - from,
  says,
})

const across = (y: number, [from, to]: readonly [number, number], says: Words): Measure => ({
  kind: 'gap',
  from: [from, y],
  to: [to, y],
  value_mm: to - from,
  says,
})
