import { openingOf } from '../../../core/detail'
import { words } from '../../../core/words'
import type { CommandId } from '../../editor'
import { partActs } from '../parts/part-acts'
import type { Desk } from '../state/desk'

type EditCommand = Extract<
  CommandId,
  | 'undo'
  | 'redo'
  | 'cut'
  | 'copy'
  | 'paste'
  | 'duplicate'
  | 'insert'
  | 'remove'
  | 'take-out'
  | 'rename'
  | 'move-out'
  | 'move-in'
  | 'duplicate-opening'
  | 'remove-opening'
  | 'next-opening'
  | 'previous-opening'
  | 'split-zone'
  | 'join-zones'
  | 'own-joint'
  | 'next-zone'
  | 'previous-zone'
  | 'colder'
  | 'hotter'
  | 'edit-practice'
>

/** What the commands do that change the design or the cut that is looked at. */
export const editRunners = (desk: Desk): Readonly<Record<EditCommand, () => void>> => {
  const { board, readings, look, editing, notes } = desk
  const acts = partActs(desk)
  const withPart = (it: (part: string) => void) => () => {
    const part = board.now.selection[0]
    if (part !== undefined) it(part)
    else notes.announce(selectFirst)
  }
  const zones = () => openingOf(readings.project, readings.place.opening).sides[readings.place.side]
  const zoneBy = (by: 1 | -1): void => {
    const all = zones()
    const at = all.findIndex(it => it.id === readings.place.zone.id)
    const next = all[(at + by + all.length) % all.length]
    if (next) board.act({ kind: 'look', view: { zone: next.id } })
  }
  const openingBy = (by: 1 | -1): void => {
    const all = Object.keys(readings.project.openings)
    const next = all[(all.indexOf(readings.place.opening) + by + all.length) % all.length]
    if (next !== undefined) board.act({ kind: 'look', view: { opening: next } })
  }
  /** The joint a tenth of the way colder or hotter. Looking at it changes nothing of the design. */
  const warm = (by: 1 | -1): void => {
    readings.warmth = Math.max(-1, Math.min(1, Number((readings.warmth + by / 10).toFixed(1))))
  }
  return {
    undo: () => void board.act({ kind: 'undo' }),
    redo: () => void board.act({ kind: 'redo' }),
    // The browser hands these on as events that may write to the clipboard: see `clipboardEvents`.
    copy: () => void document.execCommand('copy'),
    cut: () => void document.execCommand('cut'),
    paste: () => {
      const own = editing.copied
      // Where the clipboard may not be read, what was copied here last is what is meant.
      void (navigator.clipboard?.readText() ?? Promise.reject(new Error('no clipboard')))
        .catch(() => own)
        .then(text => acts.paste(text))
    },
    duplicate: withPart(acts.duplicate),
    insert: () => {
      look.view = 'joint'
      look.tab = 'parts'
      requestAnimationFrame(() => document.querySelector<HTMLElement>('.add-part')?.click())
    },
    remove: withPart(acts.remove),
    'take-out': withPart(acts.takeOut),
    rename: withPart(part => {
      look.view = 'joint'
      look.tab = 'parts'
      editing.renaming = part
    }),
    'move-out': withPart(part => acts.move(part, -1)),
    'move-in': withPart(part => acts.move(part, 1)),
    'duplicate-opening': () => {
      const before = board.now.project
      acts.act({
        kind: 'edit',
        edits: [{ kind: 'duplicate', part: readings.place.opening }],
        says: words('Duplicate the opening', 'Öffnung verdoppeln'),
      })
      const fresh = Object.keys(board.now.project.openings).find(it => before.openings[it] === undefined)
      if (fresh !== undefined) board.act({ kind: 'look', view: { opening: fresh } })
    },
    'remove-opening': () =>
      void acts.act({
        kind: 'edit',
        edits: [{ kind: 'remove', part: readings.place.opening }],
        says: words('Remove the opening', 'Öffnung entfernen'),
      }),
    'next-opening': () => openingBy(1),
    'previous-opening': () => openingBy(-1),
    'split-zone': () => {
      const { zone } = readings.place
      const all = zones()
      const from_mm = all[all.findIndex(it => it.id === zone.id) - 1]?.to_mm ?? 0
      acts.act({
        kind: 'edit',
        edits: [{ kind: 'split-zone', zone: zone.id, at_mm: Math.round((from_mm + zone.to_mm) / 2) }],
        says: words('Split the side', 'Seite teilen'),
      })
    },
    'join-zones': () =>
      void acts.act({
        kind: 'edit',
        edits: [{ kind: 'join-zones', zone: readings.place.zone.id }],
        says: words('Join two zones', 'Abschnitte vereinen'),
      }),
    'own-joint': () =>
      void acts.act({
        kind: 'edit',
        edits: [{ kind: 'choose-joint', zone: readings.place.zone.id, joint: 'copy' }],
        says: words('A joint of its own', 'Eigene Fuge'),
      }),
    'next-zone': () => zoneBy(1),
    'previous-zone': () => zoneBy(-1),
    colder: () => warm(-1),
    hotter: () => warm(1),
    'edit-practice': () => (editing.practice = { limit: '' }),
  }
}

/** Copying, cutting and pasting of parts, where no text is selected or typed. */
export const clipboardEvents = (
  desk: Desk,
): Readonly<Record<'copy' | 'cut' | 'paste', (event: ClipboardEvent) => void>> => {
  const acts = partActs(desk)
  const isText = ({ target }: ClipboardEvent): boolean =>
    (target instanceof HTMLInputElement && target.type === 'text') ||
    target instanceof HTMLTextAreaElement ||
    getSelection()?.isCollapsed === false
  const copied = (event: ClipboardEvent): boolean => {
    if (isText(event)) return false
    event.preventDefault()
    const text = acts.copy()
    if (text !== undefined) event.clipboardData?.setData('text/plain', text)
    return text !== undefined
  }
  return {
    copy: event => void copied(event),
    cut: event => {
      const part = desk.board.now.selection[0]
      if (copied(event) && part !== undefined) acts.remove(part)
    },
    paste: event => {
      if (isText(event)) return
      event.preventDefault()
      acts.paste(event.clipboardData?.getData('text/plain') ?? '')
    },
  }
}

const selectFirst = words('Select a part first', 'Erst ein Teil wählen')
