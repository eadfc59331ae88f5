import { words } from '../../words'
import { allowedPosition } from '../allowed/position'
import { numberField } from './number-field'
import { withOpening } from './tables'
import { entryAt } from '../find'

/** A frame is at least as wide as its two sides, and no wider than what is made in one piece: ours. */
const size = { unit: 'mm', min: 200, max: 12000 } as const
const sizeBecause = words('outer size of the frame', 'Außenmaß des Rahmens')

export const frameWidth = numberField({
  id: 'opening.width',
  name: words('Frame width', 'Rahmenbreite'),
  of: 'opening',
  unit: 'mm',
  read: (project, opening) => entryAt(project.openings, opening)?.width_mm,
  allowed: () => ({ bounds: size, because: sizeBecause }),
  write: (project, opening, to) =>
    withOpening(project, opening, it => ({ ...it, width_mm: to ?? it.width_mm })),
})

export const frameHeight = numberField({
  id: 'opening.height',
  name: words('Frame height', 'Rahmenhöhe'),
  of: 'opening',
  unit: 'mm',
  read: (project, opening) => entryAt(project.openings, opening)?.height_mm,
  allowed: () => ({ bounds: size, because: sizeBecause }),
  write: (project, opening, to) =>
    withOpening(project, opening, it => ({ ...it, height_mm: to ?? it.height_mm })),
})

export const framePosition = numberField({
  id: 'opening.position',
  name: words('From bearing layer', 'Ab tragender Schicht'),
  of: 'opening',
  unit: 'mm',
  read: (project, opening) => entryAt(project.openings, opening)?.position_mm,
  allowed: allowedPosition,
  write: (project, opening, to) =>
    withOpening(project, opening, it => ({ ...it, position_mm: to ?? it.position_mm })),
})
