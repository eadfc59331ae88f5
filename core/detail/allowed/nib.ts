import type { Id } from '../../geometry'
import { words } from '../../words'
import { wallDepths } from '../depths'
import { entryAt, frameOf, jointOf, openingsWith, profileOf } from '../find'
import type { Project } from '../model'
import { standsAt } from '../stands-at'
import type { Allowed } from './position'

/** No nib is thinner or laps less: ours, less would break off. */
const least_mm = 5

/** How thick a nib can be: up to the frame that stands before or behind it. */
export const allowedNibDepth = (project: Project, id: Id): Allowed => {
  const wall = entryAt(project.walls, id)
  const bearing_mm = wall ? wallDepths(wall).bearing_mm : 1000
  const isInside = wall?.reveal.form === 'outer-rebate'
  const free = openingsWith(project, id).flatMap(opening =>
    (['head', 'left'] as const).map(side => {
      const { from_mm, to_mm } = standsAt(project, opening, side)
      return isInside ? bearing_mm - to_mm : from_mm
    }),
  )
  return {
    bounds: { unit: 'mm', min: least_mm, max: Math.max(least_mm, Math.min(bearing_mm - least_mm, ...free)) },
    because: words('up to the frame that it holds', 'bis an den Rahmen, den er hält'),
  }
}

/** How far a nib can stand out: over the face of the frame, and never over the sash that stands out behind it. */
export const allowedNibLap = (project: Project, id: Id): Allowed => {
  const isInside = entryAt(project.walls, id)?.reveal.form === 'outer-rebate'
  const free = openingsWith(project, id).flatMap(opening => {
    const { face_mm, innerFace_mm } = profileOf(frameOf(project, opening.id))
    return (['head', 'left', 'right'] as const).flatMap(side =>
      opening.sides[side].map(
        zone => jointOf(project, zone).planned_mm.value + (isInside ? innerFace_mm : face_mm),
      ),
    )
  })
  return {
    bounds: { unit: 'mm', min: least_mm, max: Math.max(least_mm, Math.min(200, ...free)) },
    because: isInside
      ? words(
          'the sash must stay free: joint and free inner face',
          'der Flügel muss frei bleiben: Fuge und freie Innenfläche',
        )
      : words('at most joint and face of the frame', 'höchstens Fuge und Ansichtsbreite des Rahmens'),
  }
}
