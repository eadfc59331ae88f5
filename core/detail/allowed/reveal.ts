import type { Id } from '../../geometry'
import { words } from '../../words'
import { frameOf, jointOf, openingsWith, profileOf } from '../find'
import type { Project } from '../model'
import type { Allowed } from './position'

/** How far insulation can cover the frame: up to its edge at the sash. */
export const allowedCover = (project: Project, wall: Id): Allowed => {
  const faces = openingsWith(project, wall).map(it => profileOf(frameOf(project, it.id)).face_mm)
  return {
    bounds: { unit: 'mm', min: 0, max: Math.min(200, ...faces) },
    because: words('at most the face of the frame', 'höchstens die Ansichtsbreite des Rahmens'),
  }
}

/** How thick the lining of the reveal can be: up to the sash, which must open. */
export const allowedLining = (project: Project, wall: Id): Allowed => {
  const rooms = openingsWith(project, wall).flatMap(opening => {
    const free_mm = profileOf(frameOf(project, opening.id)).innerFace_mm
    return (['left', 'right', 'head'] as const).flatMap(side =>
      opening.sides[side].map(zone => jointOf(project, zone).planned_mm.value + free_mm),
    )
  })
  return {
    bounds: { unit: 'mm', min: 0, max: Math.min(200, ...rooms) },
    because: words('the sash must stay free: joint and free inner face', 'der Flügel muss frei bleiben: Fuge und freie Innenfläche'), // prettier-ignore
  }
}

/** A board that is there has a thickness; it has as much room as the lining that lies on it. */
export const allowedBoard = (project: Project, wall: Id): Allowed => {
  const { bounds, because } = allowedLining(project, wall)
  return { bounds: { ...bounds, min: 1, max: Math.max(1, bounds.max ?? 1) }, because }
}
