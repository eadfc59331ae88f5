import { jointOf, layerOf, sealOf, takenOutOf, wallOf } from '../../../core/detail'
import type { Id } from '../../../core/geometry'
import { filled, words as pair } from '../../../core/words'
import { type Action, copied, freshParts, pasting } from '../../editor'
import type { Desk } from '../state/desk'
import { say as words } from '../window-words'
import { rowId } from './row-id'

/** What can be done with a part, the same from its menu, its keys and the list of commands. */
export type PartActs = {
  /** does it; parts that come with it are selected, and what was refused is said */
  readonly act: (action: Action) => boolean
  readonly remove: (part: Id) => void
  readonly duplicate: (part: Id) => void
  /** takes a seal out, or puts it back */
  readonly takeOut: (part: Id) => void
  /** moves a layer past its neighbour, outwards or inwards */
  readonly move: (part: Id, by: 1 | -1) => void
  readonly isOut: (part: Id) => boolean
  /** the selected part as text; nothing where it cannot be copied */
  readonly copy: () => string | undefined
  readonly paste: (text: string) => void
}

export const partActs = (desk: Desk): PartActs => {
  const { board, readings, notes, editing } = desk
  const act = (action: Action): boolean => {
    const before = board.now.project
    const focused = document.activeElement?.closest('.parts, .bu')
    const problems = board.act(action)
    for (const problem of problems) notes.tell({ kind: 'advice', say: problem.say })
    const [fresh] = freshParts(before, board.now.project).filter(it => isListed(it))
    if (fresh !== undefined) board.act({ kind: 'select', parts: [fresh] })
    if (focused) requestAnimationFrame(() => keepFocus(focused))
    return problems.length === 0
  }
  /** Rows and cells that change their places lose the keyboard: it stays with the part. */
  const keepFocus = (area: Element): void => {
    const part = board.now.selection[0]
    if (part === undefined || area.contains(document.activeElement)) return
    document.getElementById(area.matches('.bu') ? `thickness-${part}` : rowId(part))?.focus()
  }
  const isListed = (part: Id): boolean => readings.rows.some(it => it.part.id === part)
  const isOut = (part: Id): boolean => takenOutOf(readings.project, part) !== undefined

  /** The part that is selected when another goes: the next in the list, else the one before. */
  const neighbour = (part: Id): Id | undefined => {
    const ids = readings.rows.map(it => it.part.id)
    const at = ids.indexOf(part)
    return at < 0 ? undefined : (ids[at + 1] ?? ids[at - 1])
  }
  const copy = (): string | undefined => {
    const text = copied(board.now)
    if (text === undefined) notes.announce(nothingToCopy)
    else {
      editing.copied = text
      const name = readings.rows.find(it => it.part.id === board.now.selection[0])?.part.name
      notes.announce(filled(isCopied, name ?? words.jointThisSide))
    }
    return text
  }

  return {
    act,
    isOut,
    copy,
    remove: part => {
      const next = neighbour(part)
      if (isOut(part)) {
        notes.tell({ kind: 'advice', say: putBackFirst })
        return
      }
      if (!act({ kind: 'edit', edits: [{ kind: 'remove', part }], says: words.takeOut })) return
      if (next !== undefined) board.act({ kind: 'select', parts: [next] })
    },
    duplicate: part => {
      act({ kind: 'edit', edits: [{ kind: 'duplicate', part }], says: words.duplicate })
    },
    takeOut: part => {
      if (isOut(part)) act({ kind: 'edit', edits: [{ kind: 'put-back', part }], says: words.putBack })
      else if (sealOf(readings.project, part))
        act({ kind: 'edit', edits: [{ kind: 'take-out', part }], says: words.takeSealOut })
      else notes.announce(onlySeals)
    },
    move: (part, by) => {
      if (layerOf(readings.project, part) === undefined) return
      const layers = wallOf(readings.project, readings.place.opening).layers
      const index = layers.findIndex(it => it.id === part)
      if (index + by < 0 || layers.length <= index + by) return
      const before = layers[by < 0 ? index - 1 : index + 2]
      act({
        kind: 'edit',
        edits: [{ kind: 'move', part, ...(before === undefined ? {} : { before: before.id }) }],
        says: by < 0 ? words.moveOut : words.moveIn,
      })
    },
    paste: text => {
      const action = pasting(board.now, text)
      if (action.ok) act(action.value)
      else
        for (const { at, say } of action.problems.slice(0, 1))
          notes.tell({ kind: 'advice', say: filled(notPasted, at, say) })
    },
  }
}

/** The joint that a zone has, for what is done with the zone. */
export const jointHere = ({ readings }: Desk) => jointOf(readings.project, readings.place.zone)

const isCopied = pair('{0} copied', '{0} kopiert')
const nothingToCopy = pair(
  'Nothing is selected that can be copied',
  'Nichts ist gewählt, das kopiert werden kann',
)
const notPasted = pair('Not pasted. {0}: {1}', 'Nicht eingefügt. {0}: {1}')
const onlySeals = pair(
  'Only a seal is taken out and put back',
  'Nur Dichtungen werden herausgenommen und zurückgesetzt',
)
const putBackFirst = pair(
  'This seal is taken out. Put it back (T), then remove it.',
  'Diese Dichtung ist herausgenommen. Erst zurücksetzen (T), dann entfernen.',
)
