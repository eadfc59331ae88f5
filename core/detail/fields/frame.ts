import { frameMovement as trade } from '../../practice'
import { assumed, specified } from '../../units'
import { words } from '../../words'
import { numberField } from './number-field'
import { withFrame } from './tables'
import { entryAt, profileOf } from '../find'

export const frameMovement = numberField({
  id: 'frame.movement',
  name: words('Movement of the frame', 'Bewegung des Rahmens'),
  of: 'frame',
  unit: 'mm_m',
  read: (project, frame) => entryAt(project.frames, frame)?.movement_mm_m,
  fallback: (project, frame) => {
    const found = entryAt(project.frames, frame)
    if (found === undefined) return undefined
    return {
      ...assumed(trade[found.material].movement_mm_m),
      origin: 'material',
      because: trade[found.material].says,
    }
  },
  allowed: () => ({
    bounds: { unit: 'mm_m', min: 0, max: 10 },
    because: words(
      'change of length from the installed length, each way',
      'Längenänderung ab Einbau, je Richtung',
    ),
  }),
  write: (project, frame, to) =>
    withFrame(project, frame, ({ movement_mm_m: _, ...it }) => (to ? { ...it, movement_mm_m: to } : it)),
})

export const frameSteel = numberField({
  id: 'frame.steel',
  name: words('Steel core that a screw meets', 'Stahlkern an der Schraube'),
  of: 'frame',
  unit: 'mm',
  read: (project, frame) => entryAt(project.frames, frame)?.steel_mm,
  fallback: (project, frame) => {
    const found = entryAt(project.frames, frame)
    const steel_mm = found && profileOf(found).steel_mm
    if (steel_mm === undefined) return undefined
    return {
      ...specified(steel_mm),
      origin: 'material',
      because: words('as the profile is drawn', 'wie das Profil gezeichnet ist'),
    }
  },
  allowed: () => ({
    bounds: { unit: 'mm', min: 0, max: 5 },
    because: words('thickness of its wall, 0 without a core', 'Wanddicke, 0 ohne Kern'),
  }),
  write: (project, frame, to) =>
    withFrame(project, frame, ({ steel_mm: _, ...it }) => (to ? { ...it, steel_mm: to } : it)),
})
