import type { Id } from '../geometry'
import { kindOf } from '../seals'
import { filled, same, type Words, words } from '../words'
import { layerDepths, wallDepths } from './depths'
import { materialOf } from './edits/materials'
import { frameOf, jointOf, openingOf, profileOf, wallOf, type ZonePlace } from './find'
import type { PartKind } from './field'
import { fixingKindName } from './fixing'
import type { Layer, Project } from './model'
import { addedPartName, baseName, profileName, thresholdPieceName } from './part-names'
import { hasChannel, thresholdLevels, type ThresholdPiece, thresholdPieceId } from './threshold'
import type { Member } from './profiles/profile'

/** A part of the detail as people name it: one row of a parts list, one number on a sheet. */
export type Part = {
  readonly id: Id
  readonly kind: PartKind | 'member'
  readonly name: Words
  /** what somebody calls it here, in place of what it is */
  readonly ownName?: string
  /** what it measures or is, in short: "140", "tape 20/10–18" */
  readonly value: Words
  /** a material that shows how it is hatched; absent for parts that are drawn as a line or behind the plane */
  readonly material?: Id
}

/**
 * The parts at one zone in the order of the model, outside to inside: layers before the bearing layer, that layer, the
 * seals of the joint, the fixing, the element, the layers behind. Their numbers follow this order, never the layout.
 */
export const partsOf = (project: Project, place: ZonePlace): readonly Part[] => {
  const wall = wallOf(project, place.opening)
  const depths = wallDepths(wall)
  const layers = layerDepths(wall).map(it => layerPart(project, it.layer))
  const upTo = depths.before.length + 1
  const seals = jointOf(project, place.zone).seals.map((seal): Part => {
    const kind = kindOf(seal)
    return { id: seal.id, kind: 'seal', name: kind.name, value: kind.called(seal), ...shown(kind.shows) }
  })
  const all = [
    ...layers.slice(0, upTo),
    ...seals,
    ...fixingParts(project, place),
    ...elementPartsOf(project, place),
    ...layers.slice(upTo),
    ...sillPartsOf(project, place),
    ...thresholdPartsOf(project, place),
    ...boxPartsOf(project, place),
  ]
  return project.names === undefined ? all : all.map(it => withOwnName(it, project.names?.[it.id]))
}

const withOwnName = (part: Part, ownName: string | undefined): Part =>
  ownName === undefined ? part : { ...part, name: same(ownName), ownName }

const shown = (material: Id | undefined) => (material === undefined ? {} : { material })

const layerPart = (project: Project, layer: Layer): Part => ({
  id: layer.id,
  kind: 'layer',
  name: materialOf(project, layer.material)?.name ?? same(layer.material),
  value: filled(same('{0}'), layer.thickness_mm.value),
  material: layer.material,
})

/** The outside sill with its board, at the foot of an opening only. */
const sillPartsOf = (project: Project, place: ZonePlace): readonly Part[] => {
  const { sill } = openingOf(project, place.opening)
  if (sill === undefined || place.side !== 'sill') return []
  const value = filled(words('{0}° fall, {1} overhang', '{0}° Gefälle, {1} Überstand'), sill.slope_deg.value, sill.overhang_mm.value) // prettier-ignore
  return [
    {
      id: sill.id,
      kind: 'sill',
      name: addedPartName.sill,
      value,
      material: sill.material,
    },
  ]
}

/** What lies round a threshold, at the foot of an opening only: from its base inwards, then outwards, the ground last. */
const thresholdPartsOf = (project: Project, place: ZonePlace): readonly Part[] => {
  const { threshold, told } = openingOf(project, place.opening)
  if (threshold === undefined || place.side !== 'sill') return []
  const piece = (name: ThresholdPiece, value: Words, material?: Id): Part => ({
    id: thresholdPieceId(threshold.id, name),
    kind: 'member',
    name: thresholdPieceName[name],
    value,
    ...shown(material),
  })
  const { base, finish, screed_mm, insulation, slab_mm, paving, bed_mm } = threshold
  const { edge_mm } = thresholdLevels(told)
  return [
    {
      id: threshold.id,
      kind: 'threshold',
      name: baseName,
      value: filled(same('{0}'), base.thickness_mm.value),
      material: base.material,
    },
    piece('sheet', filled(words('up to {0} mm over FFL', 'bis {0} mm ü. OKFF'), edge_mm.value)),
    piece('floor', filled(same('{0} + {1} + {2} + {3}'), finish.thickness_mm.value, screed_mm.value, insulation.thickness_mm.value, slab_mm.value), finish.material),
    piece('surface', filled(same('{0} + {1}'), paving.thickness_mm.value, bed_mm.value), paving.material),
    ...(hasChannel(told)
      ? [piece('channel', filled(same('{0} × {1}'), threshold.channelWidth_mm.value, threshold.channelDepth_mm.value), 'stainless-steel')]
      : []),
    piece('ground', same(''), 'soil'),
  ]
} // prettier-ignore

/** The shutter box, at the head of an opening only. */
const boxPartsOf = (project: Project, place: ZonePlace): readonly Part[] => {
  const { box } = openingOf(project, place.opening)
  if (box === undefined || place.side !== 'head') return []
  return [
    {
      id: box.id,
      kind: 'box',
      name: addedPartName.box,
      value: filled(same('{0} × {1}'), box.depth_mm.value, box.height_mm.value),
      material: box.material,
    },
  ]
}

const fixingParts = (project: Project, place: ZonePlace): readonly Part[] =>
  openingOf(project, place.opening).fixings.map((fixing): Part => ({
    id: fixing.id,
    kind: 'fixing',
    name: fixingKindName[fixing.kind],
    value: filled(same('Ø {0}'), fixing.diameter_mm.value),
  }))

const memberName: Readonly<Record<Member, Words>> = {
  frame: words('Frame', 'Rahmen'),
  core: words('Steel core', 'Stahlkern'),
  sash: words('Sash', 'Flügel'),
  glazing: words('Glazing', 'Verglasung'),
  bead: words('Glazing bead', 'Glasleiste'),
  gasket: words('Gaskets', 'Dichtprofile'),
}

/** The frame and the members that have a number of their own; beads and gaskets go with what holds them. */
const elementPartsOf = (project: Project, place: ZonePlace): readonly Part[] => {
  const frame = frameOf(project, place.opening)
  const profile = profileOf(frame)
  const threshold = place.side === 'sill' ? openingOf(project, place.opening).threshold : undefined
  const members = (['frame', 'core', 'sash', 'glazing'] as const).filter(
    it => profile.bodies.some(body => body.member === it) && !(threshold && it === 'core'),
  )
  return members.map((member): Part => {
    const body = profile.bodies.find(it => it.member === member && it.fill.kind === 'material')
    const material = body?.fill.kind === 'material' ? body.fill.material : undefined
    const isFrame = member === 'frame'
    // One walks over a flat profile in the place of the frame's own.
    if (isFrame && threshold)
      return {
        id: frame.id,
        kind: 'frame',
        name: profileName,
        value: filled(same('{0} × {1}'), profile.depth_mm, threshold.height_mm.value),
        material: threshold.material,
      }
    return {
      id: isFrame ? frame.id : `${frame.id}/${member}`,
      kind: isFrame ? 'frame' : 'member',
      name: memberName[member],
      value: isFrame ? filled(same('{0} × {1}'), profile.depth_mm, profile.face_mm) : same(''),
      ...shown(material),
    }
  })
}
