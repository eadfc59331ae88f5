import type { Id } from '../../geometry'
import { words } from '../../words'
import { wallDepths } from '../depths'
import { layerOf, openingsWith } from '../find'
import type { Project } from '../model'
import type { Allowed } from './position'
import { roomOf } from './room'

/** No layer is thinner than a film that is drawn as a layer, no wall thicker than a metre: ours. */
const least_mm = 0.5
const wall_mm = 1000

/** How thick a layer can be, so that every frame in this wall still stands in it. */
export const allowedThickness = (project: Project, layer: Id): Allowed => {
  const found = layerOf(project, layer)
  if (found === undefined) return { bounds: { unit: 'mm', min: least_mm, max: wall_mm }, because: ordinary }
  const { wall } = found
  const now_mm = found.layer.thickness_mm.value
  const depths = wallDepths(wall)
  const most_mm = Math.max(least_mm, wall_mm - (depths.inner_mm - depths.outer_mm - now_mm))
  const spare = openingsWith(project, wall.id).map(opening => {
    const room = roomOf(project, opening.id)
    const position_mm = opening.position_mm.value
    if (room.movesMin(found.layer)) return position_mm - room.min_mm
    return room.movesMax(found.layer) ? room.max_mm - position_mm : Infinity
  })
  const needed_mm = now_mm - Math.min(Infinity, ...spare)
  return needed_mm > least_mm
    ? { bounds: { unit: 'mm', min: needed_mm, max: most_mm }, because: holdsFrame }
    : { bounds: { unit: 'mm', min: least_mm, max: most_mm }, because: ordinary }
}

const ordinary = words('the whole wall is at most 1000 mm thick', 'die ganze Wand ist höchstens 1000 mm dick')
const holdsFrame = words('the frame must still stand in the wall', 'der Rahmen muss noch in der Wand stehen')
