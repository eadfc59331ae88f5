import {
  type Fixing,
  type Frame,
  type Joint,
  type Opening,
  type Project,
  thresholdPieceId,
  type Wall,
  type Zone,
} from '../detail'
import type { Id } from '../geometry'
import { type Side, sides } from '../kinds'
import { type JointBand, jointBand } from '../movement'
import type { Practice } from '../practice'
import type { AnySeal } from '../seals'
import type { PhysicsOf } from '../vapour'
import type { Where } from './finding'
import type { UsesOf } from './uses'

/** One zone of a side of an opening, with all that meets there; `seal` where one part of it is meant. */
export type Place = {
  readonly project: Project
  /** the same, for reading a part of which every member already counts as looked at */
  readonly tables?: Project
  readonly practice: Practice
  /** where else in the project a joint is used */
  readonly uses: UsesOf
  readonly opening: Opening
  readonly wall: Wall
  readonly frame: Frame
  readonly side: Side
  readonly zone: Zone
  readonly joint: Joint
  /** the joints of each side of the opening, one for each of its zones */
  readonly round: Readonly<Record<Side, readonly Joint[]>>
  readonly band: JointBand
  /** heat and vapour of zones; absent where nobody solves them */
  readonly physics?: PhysicsOf
  readonly seal?: AnySeal
  readonly fixing?: Fixing
}

/**
 * What a rule is asked about: each seal, each zone, each side, the opening as a whole, each kind of its fixings, its sill,
 * the waterproofing at its threshold, the surface before it.
 */
export type About = 'part' | 'zone' | 'side' | 'opening' | 'fixing' | 'sill' | 'threshold' | 'surface'

/** Where a place is, as narrow as what a rule is about. */
export const whereOf = (about: About, { opening, side, zone, seal, fixing }: Place): Where => {
  const of = opening.id
  if (about === 'opening') return { opening: of }
  if (about === 'fixing') return fixing ? { opening: of, part: fixing.id } : { opening: of }
  if (about === 'side') return { opening: of, side }
  if (about === 'threshold' || about === 'surface') {
    const { threshold } = opening
    const piece = about === 'threshold' ? 'sheet' : 'surface'
    return threshold
      ? { opening: of, side: 'sill', part: thresholdPieceId(threshold.id, piece) }
      : { opening: of }
  }
  const { sill } = opening
  if (about === 'sill') return sill ? { opening: of, side, part: sill.id } : { opening: of, side }
  return seal ? { opening: of, side, zone: zone.id, part: seal.id } : { opening: of, side, zone: zone.id }
}

/** Every zone of an opening: head, left, right, sill. */
export const placesOf = (
  { project, practice, uses, physics }: Pick<Place, 'project' | 'practice' | 'uses' | 'physics'>,
  id: Id,
): readonly Place[] => {
  const opening = entry(project.openings, id)
  const wall = entry(project.walls, opening.wall)
  const frame = entry(project.frames, opening.frame)
  const jointOf = (zone: Zone) => entry(project.joints, zone.joint)
  const { head, left, right, sill } = opening.sides
  const round = {
    head: head.map(jointOf),
    left: left.map(jointOf),
    right: right.map(jointOf),
    sill: sill.map(jointOf),
  }
  return sides.flatMap(side =>
    opening.sides[side].map(zone => ({
      project,
      practice,
      uses,
      ...(physics ? { physics } : {}),
      opening,
      wall,
      frame,
      side,
      zone,
      joint: jointOf(zone),
      round,
      band: jointBand(project, id, side, zone.id),
    })),
  )
}

/** A project with one of its openings only: what belongs to it alone is tried there, however many others there are. */
export const alone = (project: Project, opening: Opening): Project => ({
  ...project,
  openings: { [opening.id]: opening },
})

/** What a table holds under an id. A project with a dangling reference is refused when it is opened. */
const entry = <T>(table: Readonly<Record<Id, T>>, id: Id): T => {
  const found = table[id]
  if (found === undefined) throw new Error(`Nothing has the id ${id}`)
  return found
}
