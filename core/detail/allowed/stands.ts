import { exactly, isInside, type Problem } from '../../units'
import { filled, words } from '../../words'
import type { Project } from '../model'
import { allowedPosition } from './position'
import { allowedThickness } from './thickness'

/**
 * What keeps a project from being cut at all: a frame that stands outside its wall, a wall too thick to lay out.
 * Everything else that is unusual is drawn, and is a finding.
 */
export const standingProblems = (project: Project): readonly Problem[] => {
  const outside = Object.values(project.openings).flatMap((opening): readonly Problem[] => {
    const { bounds, because } = allowedPosition(project, opening.id)
    if (isInside(exactly(opening.position_mm.value), bounds)) return []
    const say = filled(words('the frame would stand outside the wall: {0}', 'der Rahmen stünde außerhalb der Wand: {0}'), because) // prettier-ignore
    return [{ at: `${opening.id} opening.position`, say, allowed: bounds }]
  })
  // a frame outside its wall makes every layer look too thin
  if (outside.length > 0) return outside
  return Object.values(project.walls).flatMap(wall =>
    wall.layers.flatMap((layer): readonly Problem[] => {
      const { bounds, because } = allowedThickness(project, layer.id)
      if (isInside(exactly(layer.thickness_mm.value), bounds)) return []
      return [{ at: `${layer.id} layer.thickness`, say: because, allowed: bounds }]
    }),
  )
}
