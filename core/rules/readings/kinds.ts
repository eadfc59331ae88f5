import type { FrameMaterial, RevealForm } from '../../kinds'
import { specified } from '../../units'
import { words } from '../../words'
import { formAtFrame } from '../form-at-frame'
import type { Reading } from '../reading'

/** What the frame is made of. */
export const frameMaterial: Reading<FrameMaterial> = {
  id: 'frame.material',
  name: words('Frame material', 'Rahmenwerkstoff'),
  of: 'frame',
  read: (project, frame) => {
    const found = project.frames[frame]
    return found && specified(found.material)
  },
  fallback: () => undefined,
}

/** How the reveal receives the frame. */
export const revealForm: Reading<RevealForm> = {
  id: 'reveal.form',
  name: words('Form of the reveal', 'Form der Leibung'),
  of: 'wall',
  read: (project, wall) => {
    const found = project.walls[wall]
    return found && specified(formAtFrame(found.reveal.form))
  },
  fallback: () => undefined,
}
