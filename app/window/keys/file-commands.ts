import type { CommandId } from '../../editor'
import { printSheet } from '../sheet/print-sheet'
import type { Desk, Look } from '../state/desk'
import { say as words } from '../window-words'

/** What is done with files and views. */
export const fileRunners = ({ file, look, notes, host }: Desk) => {
  const show = (view: Look['view']) => (): void => {
    look.view = view
  }
  return {
    new: () => {
      look.view = 'start'
      requestAnimationFrame(() => document.querySelector<HTMLElement>('.walls [tabindex="0"]')?.focus())
    },
    open: () => void file.open(),
    save: () => void file.save(),
    'save-as': () => void file.saveAs(),
    'export-drawing': () => {
      look.view = 'sheet'
      requestAnimationFrame(() => document.querySelector<HTMLElement>('.act .btn')?.focus())
    },
    // What is printed is the sheet that is seen, so it is shown first.
    print: () => {
      look.view = 'sheet'
      requestAnimationFrame(() => {
        if (!printSheet(document, host)) notes.tell({ kind: 'advice', say: words.nothingToPrint })
      })
    },
    'show-joint': show('joint'),
    'show-sheet': show('sheet'),
    'show-work': show('work'),
    'show-teach': show('teach'),
  } satisfies Partial<Record<CommandId, () => void>>
}

/** What can be asked for while no project is open, or none is in sight. */
const atStart: ReadonlySet<CommandId> = new Set([
  'new', 'open', 'find-command', 'settings', 'about', 'why', 'switch-theme', 'switch-language', 'next-area', 'previous-area',
]) // prettier-ignore
const awayFromStart: ReadonlySet<CommandId> = new Set([
  'save', 'save-as', 'print', 'export-drawing', 'show-joint', 'show-sheet', 'show-work', 'show-teach',
]) // prettier-ignore

/** Whether a command has something to act on. At the start nothing is drawn that could be changed. */
export const isPossible = (id: CommandId, { file, look }: Pick<Desk, 'file' | 'look'>): boolean =>
  atStart.has(id) || (file.opened > 0 && (look.view !== 'start' || awayFromStart.has(id)))
