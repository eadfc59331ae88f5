import { z } from 'zod'
import type { Id } from '../../geometry'
import type { Material } from '../../materials'
import { serves } from '../../seals'
import { ok, type Problem, refused } from '../../units'
import { isSome, words } from '../../words'
import type { EditKind } from '../edit'
import { consistencyProblems } from '../file/consistent'
import { pieceSchema } from '../file/schema'
import { withJoint, withOpening } from '../fields/tables'
import { entryAt, openingOf, wallOf, zoneOf, type ZonePlace } from '../find'
import type { Layer, Project, Wall } from '../model'
import type { Piece } from '../piece'
import type { Threshold } from '../threshold'
import { withCopiedJoint } from './copied-joint'
import { placed } from './layers'
import { withMaterials } from './materials'
import { numbered } from './numbered'
import { overfull } from './overfull'
import { inOrder } from './seals'
import { withZones, zonesBeside } from '../fields/zone'

/**
 * Puts a copied piece where it belongs at a zone: a layer into its wall, a seal into its plane (in the place of what
 * closes that plane), a joint along the zone, fixings beside those that are there; sill, threshold, frame and wall take the place of the
 * opening's own. Everything gets an id of its own here. A material that means something else here comes along under another name.
 */
export const paste: EditKind<'paste'> = {
  kind: 'paste',
  schema: z.strictObject({
    kind: z.literal('paste'),
    piece: pieceSchema,
    into: z.string(),
    before: z.string().exactOptional(),
  }),
  apply: (project, { piece, into, before }) => {
    const place = zoneOf(project, into)
    if (place === undefined)
      return refused({ at: into, say: words('there is no such zone', 'diesen Abschnitt gibt es nicht') })
    const next = pasted({ project, place, before }, piece)
    const full = overfull(openingOf(next, place.opening))
    const problems: readonly Problem[] = [...(full ? [full] : []), ...consistencyProblems(next)]
    return isSome(problems) ? refused(...problems) : ok(next)
  },
}

type Target = { readonly project: Project; readonly place: ZonePlace; readonly before: Id | undefined }

const pasted = (target: Target, piece: Piece): Project => {
  const { project, place } = target
  switch (piece.kind) {
    case 'layer':
      return withLayerPasted(target, piece)
    case 'seal': {
      const counted = numbered(project, 'seal')
      const fresh = { ...piece.seal, id: counted.id }
      return withJoint(counted.project, place.zone.joint, it => ({
        ...it,
        seals: inOrder([...it.seals.filter(one => !serves(one, fresh.plane)), fresh]),
      }))
    }
    case 'joint': {
      const copied = withCopiedJoint(project, piece.joint)
      const zones = zonesBeside(project, place).map(it =>
        it.id === place.zone.id ? { ...it, joint: copied.joint } : it,
      )
      return withZones(copied.project, place, zones)
    }
    case 'fixing': {
      const counted = numbered(project, 'fixing')
      const fresh = { ...piece.fixing, id: counted.id }
      return withOpening(counted.project, place.opening, it => ({ ...it, fixings: [...it.fixings, fresh] }))
    }
    case 'sill': {
      const counted = numbered(project, 'sill')
      return withOpening(counted.project, place.opening, it => ({
        ...it,
        sill: { ...piece.sill, id: counted.id },
      }))
    }
    case 'threshold':
      return withThresholdPasted(target, piece)
    case 'frame': {
      const counted = numbered(project, 'frame')
      const frame = { ...piece.frame, id: counted.id }
      const next = { ...counted.project, frames: { ...counted.project.frames, [frame.id]: frame } }
      return withOpening(next, place.opening, it => ({ ...it, frame: frame.id }))
    }
    case 'wall':
      return withWallPasted(target, piece)
  }
}

const withLayerPasted = (
  { project, place, before }: Target,
  piece: Extract<Piece, { kind: 'layer' }>,
): Project => {
  const brought = withBrought(project, piece.materials)
  const counted = numbered(brought.project, 'layer')
  const wall = wallOf(project, place.opening)
  // A wall has one bearing layer: that which is pasted beside it bears nothing.
  const duties = piece.layer.duties.filter(it => it !== 'bearing')
  const layers = placed(
    wall.layers,
    { ...renamed(piece.layer, brought.called), id: counted.id, duties },
    before,
  )
  return withMaterials(
    withWallAt(counted.project, { ...wall, layers: isSome(layers) ? layers : wall.layers }),
  )
}

const withThresholdPasted = (
  { project, place }: Target,
  { threshold, materials }: Extract<Piece, { kind: 'threshold' }>,
): Project => {
  const brought = withBrought(project, materials)
  const counted = numbered(brought.project, 'threshold')
  const made = <T extends { readonly material: Id }>(it: T): T => ({
    ...it,
    material: brought.called(it.material),
  })
  const { base, finish, insulation, paving } = threshold
  const own: Threshold = {
    ...made(threshold),
    id: counted.id,
    base: made(base),
    finish: made(finish),
    insulation: made(insulation),
    paving: made(paving),
  }
  return withMaterials(withOpening(counted.project, place.opening, it => ({ ...it, threshold: own })))
}

const withWallPasted = ({ project, place }: Target, piece: Extract<Piece, { kind: 'wall' }>): Project => {
  const brought = withBrought(project, piece.materials)
  const counted = numbered(brought.project, 'wall')
  let next = counted.project
  const layers = piece.wall.layers.map((layer): Layer => {
    const own = numbered(next, 'layer')
    next = own.project
    return { ...renamed(layer, brought.called), id: own.id }
  })
  const { board } = piece.wall.reveal
  const reveal = {
    ...piece.wall.reveal,
    ...(board ? { board: { ...board, material: brought.called(board.material) } } : {}),
  }
  const wall = { ...piece.wall, id: counted.id, reveal, layers: isSome(layers) ? layers : piece.wall.layers }
  return withOpening(withMaterials(withWallAt(next, wall)), place.opening, it => ({ ...it, wall: wall.id }))
}

type Called = (id: Id) => Id

const renamed = (layer: Layer, called: Called): Layer => ({
  ...layer,
  material: called(layer.material),
  ...(layer.edge ? { edge: { ...layer.edge, material: called(layer.edge.material) } } : {}),
})

/** The project with materials that come along. One that is here under the same id but is not the same gets another id. */
const withBrought = (
  project: Project,
  materials: Readonly<Record<Id, Material>>,
): { readonly project: Project; readonly called: Called } => {
  let next = project
  const names = new Map<Id, Id>()
  for (const it of Object.values(materials)) {
    const here = entryAt(next.materials, it.id)
    if (here !== undefined && JSON.stringify(here) === JSON.stringify(it)) continue
    const counted = here === undefined ? { id: it.id, project: next } : numbered(next, 'material')
    names.set(it.id, counted.id)
    next = {
      ...counted.project,
      materials: { ...counted.project.materials, [counted.id]: { ...it, id: counted.id } },
    }
  }
  return { project: next, called: id => names.get(id) ?? id }
}

const withWallAt = (project: Project, wall: Wall): Project => ({
  ...project,
  walls: { ...project.walls, [wall.id]: wall },
})
