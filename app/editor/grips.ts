import {
  type FieldAt,
  type Project,
  type ThresholdPiece,
  fieldOf,
  known,
  thresholdPieceId,
} from '../../core/detail'
import type { Id, Point } from '../../core/geometry'
import { type Layout, laidSeals, layoutOf } from '../../core/section'
import { kindOf } from '../../core/seals'
import { placeOf } from './place'
import type { View } from './session'

/**
 * A face that can be taken by hand in the section of a view. Moving it by a millimetre along `along` adds a millimetre
 * to its field, so the value lies between `place` and the point that much before it.
 */
export type Grip = {
  readonly at: FieldAt
  /** what is selected with it: the part that it is a face of */
  readonly part: Id
  readonly place: Point
  /** unit vector in the axes of the section */
  readonly along: Point
  readonly value_mm: number
  /** what was measured changes in the survey only */
  readonly isLocked: boolean
}

/** All grips of a cut at its planned width, the wall outside to inside first. */
export const gripsOf = (project: Project, view: View): readonly Grip[] => {
  const at = plannedLayout(project, view)
  return [
    ...layerFaces(at),
    ...revealFaces(at),
    ...frameFaces(at),
    ...thresholdFaces(at),
    ...sealFaces(at),
    ...screwEnds(at),
  ].flatMap(it => withValue(project, it) ?? [])
}

/** The lengths of a cut at its planned width. */
export const plannedLayout = (project: Project, view: View): Layout => {
  const place = placeOf(project, view)
  const width_mm = known(project, { field: 'joint.planned', part: place.zone.joint })?.value ?? 0
  return layoutOf(project, place, width_mm)
}

type Face = Omit<Grip, 'value_mm' | 'isLocked'>

const withValue = (project: Project, face: Face): Grip | undefined => {
  const value = known(project, face.at)
  if (value === undefined) return undefined
  const isLocked = fieldOf(face.at.field)?.surveyed === true || value.basis === 'measured'
  return { ...face, value_mm: value.value, isLocked }
}

/** Layers before the bearing one grow outwards, the bearing one and those behind it inwards: its outer face stays. */
const layerFaces = ({ depths, width_mm }: Layout): readonly Face[] => {
  const field = (layer: Id): FieldAt => ({ field: 'layer.thickness', part: layer })
  const x = -Math.max(40, 3 * width_mm)
  return [
    ...depths.before.map(({ layer, from_mm }): Face => ({ at: field(layer.id), part: layer.id, place: [x, from_mm], along: [0, -1] })),
    ...[depths.bearing, ...depths.behind].map(
      ({ layer, to_mm }): Face => ({ at: field(layer.id), part: layer.id, place: [x, to_mm], along: [0, 1] }),
    ),
  ] // prettier-ignore
}

/** The edge of what covers the frame outside, and the face of the lining inside. The sill has neither. */
const revealFaces = ({
  side,
  depths,
  wall,
  width_mm,
  cover_mm,
  lining_mm,
  ...at
}: Layout): readonly Face[] => {
  if (side === 'sill') return []
  const [cover, lining] = [depths.before.at(-1), depths.behind.at(-1)]
  const back_mm = at.position_mm + at.depth_mm
  return [
    ...(cover
      ? [face('reveal.cover', wall, cover.layer.id, [width_mm + cover_mm, (cover.from_mm + Math.max(cover.to_mm, at.position_mm)) / 2], [1, 0])]
      : []),
    ...(lining && back_mm < depths.inner_mm
      ? [face('reveal.lining', wall, lining.layer.id, [lining_mm, (back_mm + depths.inner_mm) / 2], [1, 0])]
      : []),
  ] // prettier-ignore
}

const frameFaces = ({
  frame,
  opening,
  joint,
  width_mm,
  position_mm,
  depth_mm,
  profile,
  threshold,
}: Layout): readonly Face[] => [
  face(
    'opening.position',
    opening,
    frame,
    [width_mm + (threshold?.part.height_mm.value ?? profile.face_mm) / 2, position_mm],
    [0, 1],
  ),
  face('joint.planned', joint, joint, [width_mm, position_mm + depth_mm / 2], [1, 0]),
]

/**
 * The levels of a threshold, the underside of its base and the top of its profile. The profile stays where it is: a
 * threshold that stands higher over the floor has a lower floor.
 */
const thresholdFaces = ({
  threshold,
  opening,
  frame,
  position_mm,
  depth_mm,
  depths,
}: Layout): readonly Face[] => {
  if (threshold === undefined) return []
  const { part, levels, channel } = threshold
  const middle = position_mm + depth_mm / 2
  const before = Math.min(depths.outer_mm, channel?.from_mm ?? position_mm) - aside_mm
  const fall = threshold.fall * ((channel?.from_mm ?? position_mm) - before)
  const behind = Math.max(depths.inner_mm, position_mm + depth_mm) + aside_mm
  const piece = (name: ThresholdPiece) => thresholdPieceId(part.id, name)
  return [
    face('opening.threshold-top', opening, piece('floor'), [levels.floor_mm, behind], [-1, 0]),
    face('opening.threshold-outside', opening, piece('surface'), [levels.surface_mm - fall, before], [1, 0]),
    face('opening.threshold-edge', opening, piece('sheet'), [levels.edge_mm, position_mm], [1, 0]),
    face('threshold.height', part.id, frame, [levels.top_mm, middle], [1, 0]),
    face('threshold.base', part.id, part.id, [-part.base.thickness_mm.value, middle], [-1, 0]),
  ]
}

/** How far beside the wall a level is taken: ours, in sight of it. */
const aside_mm = 40

const sealFaces = (at: Layout): readonly Face[] =>
  laidSeals(at).flatMap(({ seal, bay, place }) =>
    kindOf(seal)
      .grips(seal, bay)
      .map(grip => face(grip.field, seal.id, seal.id, place(grip.at), turned(place, grip.along))),
  )

/** A way as it lies where a bay is turned. */
const turned = (place: (it: Point) => Point, [x, y]: Point): Point => {
  const [zero, end] = [place([0, 0]), place([x, y])]
  return [end[0] - zero[0], end[1] - zero[1]]
}

const screwEnds = ({ fixing, position_mm, width_mm }: Layout): readonly Face[] => {
  if (fixing === undefined) return []
  const axis_mm = position_mm + fixing.axis_mm.value
  return [
    face('fixing.axis', fixing.id, fixing.id, [width_mm / 2, axis_mm], [0, 1]),
    face('fixing.embedment', fixing.id, fixing.id, [-fixing.embedment_mm.value, axis_mm], [-1, 0]),
  ]
}

const face = (field: string, owner: Id, part: Id, place: Point, along: Point): Face => ({
  at: { field, part: owner },
  part,
  place,
  along,
})
