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
    id: 'cut',
    name: words('Cut the part', 'Teil ausschneiden'),
    chords: [chord('x', { main: true })],
    notWhileTyping: true,
  },
  {
    id: 'copy',
    name: words('Copy the part', 'Teil kopieren'),
    chords: [chord('c', { main: true })],
    notWhileTyping: true,
  },
  {
    id: 'paste',
    name: words('Paste', 'Einfügen'),
    chords: [chord('v', { main: true })],
    notWhileTyping: true,
  },
  {
    id: 'duplicate',
    name: words('Duplicate the part', 'Teil verdoppeln'),
    chords: [chord('d', { main: true })],
    notWhileTyping: true,
  },
  {
    id: 'insert',
    name: words('Add a part', 'Teil hinzufügen'),
    chords: [chord('Insert')],
    notWhileTyping: true,
  },
  {
    id: 'remove',
    name: words('Remove the part', 'Teil entfernen'),
    chords: [chord('Delete')],
    notWhileTyping: true,
  },
  {
    id: 'take-out',
    name: words('Take the seal out, or put it back', 'Dichtung herausnehmen oder zurücksetzen'),
    chords: [chord('t')],
    notWhileTyping: true,
  },
  {
    id: 'rename',
    name: words('Rename the part', 'Teil umbenennen'),
    chords: [chord('F2')],
    notWhileTyping: true,
  },
  {
    id: 'move-out',
    name: words('Move the layer outwards', 'Schicht nach außen'),
    chords: [chord('ArrowUp', { alt: true }), chord('ArrowLeft', { alt: true })],
    notWhileTyping: true,
  },
  {
    id: 'move-in',
    name: words('Move the layer inwards', 'Schicht nach innen'),
    chords: [chord('ArrowDown', { alt: true }), chord('ArrowRight', { alt: true })],
    notWhileTyping: true,
  },
  {
    id: 'duplicate-opening',
    name: words('Duplicate this opening', 'Diese Öffnung verdoppeln'),
    chords: [chord('d', { main: true, shift: true })],
  },
  { id: 'remove-opening', name: words('Remove this opening', 'Diese Öffnung entfernen'), chords: [] },
  { id: 'split-zone', name: words('Split this side in two zones', 'Diese Seite teilen'), chords: [] },
  {
    id: 'join-zones',
    name: words('Join this zone with the next', 'Mit dem nächsten Abschnitt vereinen'),
    chords: [],
  },
  {
    id: 'own-joint',
    name: words('Give this side a joint of its own', 'Dieser Seite eine eigene Fuge geben'),
    chords: [],
  },
] as const satisfies readonly Command[]
