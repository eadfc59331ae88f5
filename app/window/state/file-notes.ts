import { words } from '../../../core/words'

// What the window says of files as they are opened and saved.
export const notSaved = words(
  'Not saved: {0}. Your work is kept here.',
  'Nicht gesichert: {0}. Die Arbeit bleibt hier.',
)
export const saveElsewhere = words('Save elsewhere', 'Anderswo sichern')
export const savedAndRead = words('Saved and read back', 'Gesichert und zurückgelesen')
export const downloaded = words('Handed to the browser as a download', 'Dem Browser als Download übergeben')
export const exported = words('Written: {0}', 'Geschrieben: {0}')
export const andMore = words(' (and {0} more)', ' (und {0} weitere)')
export const notOpened = words('{0} was not opened. {1}: {2}{3}', '{0} wurde nicht geöffnet. {1}: {2}{3}')
export const cannotOpen = words('Not opened: {0}.', 'Nicht geöffnet: {0}.')
export const changedElsewhere = words(
  '{0} was changed elsewhere meanwhile.',
  '{0} wurde inzwischen anderswo geändert.',
)
export const readItAgain = words('Read it again', 'Neu einlesen')
