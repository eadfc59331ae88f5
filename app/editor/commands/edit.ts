import { words } from '../../../core/words'
import { type Command, chord } from './command'

/** What changes the design. */
export const editCommands = [
  { id: 'undo', name: words('Undo', 'Rückgängig'), chords: [chord('z', { main: true })] },
  {
    id: 'redo',
    name: words('Redo', 'Wiederholen'),
    chords: [chord('y', { main: true }), chord('z', { main: true, shift: true })],
  },
  {
    id: 'remove',
    name: words('Take the part out', 'Teil entfernen'),
    chords: [chord('Delete')],
    notWhileTyping: true,
  },
  {
    id: 'move-out',
    name: words('Move the layer outwards', 'Schicht nach außen'),
    chords: [chord('ArrowUp', { alt: true })],
    notWhileTyping: true,
  },
  {
    id: 'move-in',
    name: words('Move the layer inwards', 'Schicht nach innen'),
    chords: [chord('ArrowDown', { alt: true })],
    notWhileTyping: true,
  },
] as const satisfies readonly Command[]
