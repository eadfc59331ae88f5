import { words } from '../../../core/words'
import { type Command, chord } from './command'

/** What changes only what is seen, and where the keys go. */
export const viewCommands = [
  { id: 'show-joint', name: words('Show the joint', 'Fuge zeigen'), chords: [chord('1', { main: true })] },
  { id: 'show-sheet', name: words('Show the sheet', 'Blatt zeigen'), chords: [chord('2', { main: true })] },
  {
    id: 'show-work',
    name: words('Show the work', 'Ausführung zeigen'),
    chords: [chord('3', { main: true })],
  },
  {
    id: 'show-teach',
    name: words('Show the teaching', 'Schulung zeigen'),
    chords: [chord('4', { main: true })],
  },
  {
    id: 'find-command',
    name: words('Find a command', 'Befehl suchen'),
    chords: [chord('k', { main: true })],
  },
  { id: 'next-area', name: words('Next area', 'Nächster Bereich'), chords: [chord('F6')] },
  {
    id: 'previous-area',
    name: words('Previous area', 'Voriger Bereich'),
    chords: [chord('F6', { shift: true })],
  },
  {
    id: 'next-cut',
    name: words('Next cut round the opening', 'Nächster Schnitt um die Öffnung'),
    chords: [chord('PageDown', { main: true })],
  },
  {
    id: 'previous-cut',
    name: words('Previous cut round the opening', 'Voriger Schnitt um die Öffnung'),
    chords: [chord('PageUp', { main: true })],
  },
  {
    id: 'next-opening',
    name: words('Next opening', 'Nächste Öffnung'),
    chords: [chord('PageDown', { main: true, alt: true })],
  },
  {
    id: 'previous-opening',
    name: words('Previous opening', 'Vorige Öffnung'),
    chords: [chord('PageUp', { main: true, alt: true })],
  },
  {
    id: 'next-zone',
    name: words('Next zone of this side', 'Nächster Abschnitt dieser Seite'),
    chords: [chord('PageDown', { alt: true })],
  },
  {
    id: 'previous-zone',
    name: words('Previous zone of this side', 'Voriger Abschnitt dieser Seite'),
    chords: [chord('PageUp', { alt: true })],
  },
  {
    id: 'next-broken',
    name: words('Next verdict that is not met', 'Nächster nicht erfüllter Befund'),
    chords: [chord('F8')],
  },
  {
    id: 'previous-broken',
    name: words('Previous verdict that is not met', 'Voriger nicht erfüllter Befund'),
    chords: [chord('F8', { shift: true })],
  },
  {
    id: 'zoom-in',
    name: words('Zoom in', 'Größer'),
    chords: [
      chord('+', { main: true }),
      chord('=', { main: true }),
      { key: '+', code: 'NumpadAdd', main: true },
    ],
  },
  {
    id: 'zoom-out',
    name: words('Zoom out', 'Kleiner'),
    chords: [chord('-', { main: true }), { key: '-', code: 'NumpadSubtract', main: true }],
  },
  {
    id: 'fit',
    name: words('Show the whole cut', 'Ganzen Schnitt zeigen'),
    chords: [chord('0', { main: true })],
  },
  {
    id: 'true-size',
    name: words('Show at true size', 'In wahrer Größe zeigen'),
    chords: [chord('0', { main: true, alt: true })],
  },
  {
    id: 'colder',
    name: words('Joint colder: it opens', 'Fuge kälter: sie öffnet sich'),
    chords: [chord(',')],
    notWhileTyping: true,
  },
  {
    id: 'hotter',
    name: words('Joint hotter: it closes', 'Fuge wärmer: sie schließt sich'),
    chords: [chord('.')],
    notWhileTyping: true,
  },
  {
    id: 'edit-practice',
    name: words('Edit the practice of this project', 'Regelwerk dieses Projekts bearbeiten'),
    chords: [],
  },
  { id: 'settings', name: words('Settings', 'Einstellungen'), chords: [chord(',', { main: true })] },
  {
    id: 'about',
    name: words('About Jambwright and its keys', 'Über Jambwright und seine Tasten'),
    chords: [],
  },
  { id: 'switch-theme', name: words('Light or dark', 'Hell oder dunkel'), chords: [] },
  { id: 'switch-language', name: words('English or German', 'Englisch oder Deutsch'), chords: [] },
  {
    id: 'why',
    name: words('Why: the rule of this verdict', 'Warum: die Regel zu diesem Befund'),
    chords: [chord('F1')],
  },
] as const satisfies readonly Command[]
