import type { Id } from '../../geometry'
import { words } from '../../words'
import { frameOf, profileOf } from '../find'
import type { Project } from '../model'
import { singlePart } from '../opening-parts'
import type { Allowed } from './position'
import { roomBehind_mm, roomBefore_mm } from './room'

/** The shallowest box that a curtain rolls up in: ours. */
const least_mm = 60

/** How deep a box can be: from its front to the inner face of its wall, or the nib behind it. */
export const allowedBoxDepth = (project: Project, id: Id): Allowed => {
  const found = singlePart(project, 'box', id)
  const room = found
    ? roomBehind_mm(project, found.opening) - found.opening.position_mm.value + found.part.forward_mm.value
    : 600
  return {
    bounds: { unit: 'mm', min: least_mm, max: Math.max(least_mm, Math.min(600, room)) },
    because: words('the box stands within its wall', 'der Kasten steht in der Wand'),
  }
}

/** How far the front of a box can stand before the frame: up to the outer skin, or the nib before it; the frame stays below it. */
export const allowedBoxForward = (project: Project, id: Id): Allowed => {
  const found = singlePart(project, 'box', id)
  if (found === undefined) return { bounds: { unit: 'mm', min: 0, max: 300 }, because: inWall }
  const { opening, part } = found
  const before = opening.position_mm.value - roomBefore_mm(project, opening)
  const behind = roomBehind_mm(project, opening) - opening.position_mm.value
  const over = part.depth_mm.value - profileOf(frameOf(project, opening.id)).depth_mm
  // moved back its inner face must stay in the wall
  const min = Math.max(0, part.depth_mm.value - behind)
  return {
    bounds: { unit: 'mm', min, max: Math.max(min, Math.min(before, Math.max(0, over), 300)) },
    because: inWall,
  }
}

const inWall = words(
  'the box stands within its wall, above the frame',
  'der Kasten steht in der Wand, über dem Rahmen',
)
