import { frameMovement as trade } from '../../practice'
import { assumed } from '../../units'
import { words } from '../../words'
import { numberField } from './number-field'
import { withFrame } from './tables'
import { entryAt } from '../find'

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
