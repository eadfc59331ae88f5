import { commandFor, type CommandId, commands } from '../../editor'
import type { Side } from '../../../core/kinds'
import { findingKey } from '../../../core/rules'
import { paper_px_mm, zoomedAt, type Camera } from '../board/camera'
import type { Desk } from '../state/desk'
import { showWhere } from '../verdicts/where'
import { say as words } from '../window-words'
import { editRunners } from './edit-commands'
import { fileRunners } from './file-commands'
import { isMac } from './machine'

/** The sides in the order in which one goes round an opening. */
const round: readonly Side[] = ['head', 'right', 'sill', 'left']

/** What each command does in this window: a command that is forgotten does not compile. */
export const runners = (desk: Desk, camera: () => Camera): Readonly<Record<CommandId, () => void>> => {
  const { board, readings, settings, look, notes } = desk
  const act = (action: Parameters<typeof board.act>[0]): void => {
    for (const problem of board.act(action)) notes.tell({ kind: 'advice', say: problem.say })
  }
  const zoom = (factor: number): void => {
    const now = camera()
    act({ kind: 'look', view: zoomedAt(now, [now.width_px / 2, now.height_px / 2], factor) })
  }
  const cut = (by: 1 | -1): void => {
    const at = round.indexOf(readings.view.side)
    const side = round[(at + by + round.length) % round.length]
    if (side) act({ kind: 'look', view: { side } })
  }
  const broken = (by: 1 | -1): void => {
    look.view = 'joint'
    look.tab = 'verdicts'
    const all = readings.report.findings.filter(
      it => it.verdict === 'not-met' && it.where.opening === readings.view.opening,
    )
    const at = all.findIndex(it => findingKey(it) === look.openVerdict)
    const next = all[at < 0 ? (by > 0 ? 0 : all.length - 1) : (at + by + all.length) % all.length]
    if (next === undefined) {
      notes.announce(words.noneBroken)
      return
    }
    showWhere(desk, next)
    look.openVerdict = findingKey(next)
    requestAnimationFrame(() =>
      document.querySelector<HTMLElement>('.vr.open [data-verdict="not-met"]')?.focus(),
    )
  }
  return {
    ...fileRunners(desk),
    ...editRunners(desk),
    'find-command': () => (look.finding = true),
    'next-area': () => goToArea(1),
    'previous-area': () => goToArea(-1),
    'next-cut': () => cut(1),
    'previous-cut': () => cut(-1),
    'next-broken': () => broken(1),
    'previous-broken': () => broken(-1),
    'zoom-in': () => zoom(1.25),
    'zoom-out': () => zoom(1 / 1.25),
    fit: () => act({ kind: 'fit' }),
    'true-size': () => act({ kind: 'look', view: { at: camera().at, zoom: paper_px_mm } }),
    'switch-theme': () => (settings.theme = settings.isDark ? 'light' : 'dark'),
    'switch-language': () => (settings.language = settings.language === 'en' ? 'de' : 'en'),
    settings: () => (look.settings = true),
    about: () => (look.about = true),
    why: () => {
      const row = document.activeElement?.closest('.vr')?.querySelector<HTMLElement>('.top')
      if (row === undefined || row === null) look.about = true
      else if (row.ariaExpanded === 'false') row.click()
    },
  }
}

/** The stop of Tab in an area. */
const stopIn = (area: Element): HTMLElement | undefined =>
  area instanceof HTMLElement && area.tabIndex === 0
    ? area
    : [...area.querySelectorAll<HTMLElement>(stops)].find(it => it.getClientRects().length > 0)

const stops =
  '[tabindex="0"], button:not([tabindex="-1"]):not(:disabled), input:not([tabindex="-1"]), summary:not([tabindex="-1"])'

const goToArea = (by: 1 | -1): void => {
  const areas = [...document.querySelectorAll('[data-area]')].filter(
    it => it.getClientRects().length > 0 && stopIn(it) !== undefined,
  )
  const at = areas.findIndex(it => it.contains(document.activeElement))
  const next = areas[at < 0 ? (by > 0 ? 0 : areas.length - 1) : (at + by + areas.length) % areas.length]
  if (next) stopIn(next)?.focus()
}

/** Whether a text is being typed that is not taken yet: it keeps its own undo. */
export const isTypingText = (at: Element | null): boolean =>
  at instanceof HTMLInputElement && at.type === 'text' && at.dataset['typing'] === 'yes'

/** The command that a key stands for where it was pressed. Text that is not taken yet keeps its own undo. */
export const commandOf = (event: KeyboardEvent): CommandId | undefined => {
  const target = event.target instanceof HTMLElement ? event.target : undefined
  const isText = target instanceof HTMLInputElement && target.type === 'text'
  const id = commandFor(commands, event, { isMac, isTyping: isText })
  const isTyping = isTypingText(target ?? null)
  // The browser itself turns the keys for pasting into the event that brings the text along.
  if (id === 'paste') return undefined
  return isTyping && (id === 'undo' || id === 'redo') ? undefined : id
}
