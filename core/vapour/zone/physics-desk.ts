import {
  type Project,
  type ZonePlace,
  frameOf,
  jointOf,
  openingOf,
  thresholdLevels,
  wallOf,
} from '../../detail'
import { jointBand } from '../../movement'
import type { Result } from '../../units'
import { type PhysicsOf, type ZonePhysics, zonePhysics } from './zone-physics'

/**
 * Solves zones when they are asked for, once each: zones whose wall, frame, joint, opening and climate are the same values
 * share an answer, as both jambs of a window do. It remembers as long as it is kept.
 */
export const physicsDesk = (): PhysicsOf => {
  const known = new Map<string, Result<ZonePhysics>>()
  return (project, place) => {
    const key = alikeness(project, place)
    const answer = known.get(key) ?? zonePhysics(project, place)
    known.set(key, answer)
    return answer
  }
}

/** All that the cut of a zone, its conditions and its seals come from, as text. */
const alikeness = (project: Project, place: ZonePlace): string => {
  const { room, position_mm, sill, threshold, told, box, fixings } = openingOf(project, place.opening)
  const { planned_mm } = jointBand(project, place.opening, place.side, place.zone.id)
  return JSON.stringify([
    // A jamb is cut like the other one; the foot has its sill, the head its box.
    place.side === 'right' ? 'left' : place.side,
    planned_mm,
    position_mm.value,
    room,
    sill,
    // what is told of levels and drain shapes the cut of a threshold
    threshold && [threshold, thresholdLevels(told), told?.thresholdDrain, told?.thresholdFall],
    box,
    fixings,
    project.site,
    project.materials,
    wallOf(project, place.opening),
    frameOf(project, place.opening),
    jointOf(project, place.zone),
  ])
}
