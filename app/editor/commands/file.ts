import { words } from '../../../core/words'
import { type Command, chord } from './command'

/** What is done with the whole file. */
export const fileCommands = [
  { id: 'new', name: words('New joint', 'Neue Fuge'), chords: [chord('n', { main: true })] },
  { id: 'open', name: words('Open a file', 'Datei öffnen'), chords: [chord('o', { main: true })] },
  { id: 'save', name: words('Save', 'Speichern'), chords: [chord('s', { main: true })] },
  {
    id: 'save-as',
    name: words('Save as a copy', 'Als Kopie speichern'),
    chords: [chord('s', { main: true, shift: true })],
  },
  {
    id: 'export-drawing',
    name: words('Export the drawing', 'Zeichnung ausgeben'),
    chords: [chord('e', { main: true })],
  },
  { id: 'print', name: words('Print the sheet', 'Blatt drucken'), chords: [chord('p', { main: true })] },
] as const satisfies readonly Command[]
