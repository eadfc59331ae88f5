import { known, type Project } from '../../../core/detail'
import { readQuantity } from '../../../core/units'
import type { Words } from '../../../core/words'
import { type Dragged, dragged, type Grip, reach_px, type SnapKind, typedAt, type View } from '../../editor'
import type { Board } from '../state/board.svelte'
import type { Camera, Px } from './camera'

/** What is held in the hand: a grip, where it was taken, and what the drag has come to. */
export type Hold = {
  readonly grip: Grip
  readonly before: Project
  readonly was_mm: number
  readonly pointer: Px
  readonly now_mm: number
  readonly snap?: SnapKind
  readonly stoppedBy?: Words
  readonly isFree: boolean
  /** digits typed in the middle of the drag take over from the pointer */
  readonly typed: string
}

/** Taking a grip, moving it, letting go. A drag is one step of undo; the model follows within the frame. */
export type Hand = {
  readonly hold: Hold | undefined
  readonly take: (grip: Grip, pointer: Px) => void
  readonly move: (pointer: Px, camera: Camera, isFree: boolean) => void
  readonly type: (key: string) => boolean
  readonly let: () => void
  readonly abandon: () => void
}

export const newHand = (board: Board, onRefused: (say: Words) => void): Hand => {
  let hold: Hold | undefined = $state.raw()
  let from: Px = [0, 0]

  const preview = (to: Pick<Dragged, 'edits' | 'says'>): boolean => {
    const problems = board.act({ kind: 'preview', edits: to.edits, says: to.says })
    if (problems[0]) onRefused(problems[0].say)
    return problems.length === 0
  }
  const view = (): View => board.now.view

  return {
    get hold() {
      return hold
    },
    take: (grip, pointer) => {
      from = pointer
      hold = {
        grip,
        before: board.now.project,
        was_mm: grip.value_mm,
        now_mm: grip.value_mm,
        pointer,
        isFree: false,
        typed: '',
      }
    },
    move: (pointer, camera, isFree) => {
      if (hold === undefined) return
      if (hold.typed !== '') {
        hold = { ...hold, pointer }
        return
      }
      const { grip, before } = hold
      const moved = camera.moved([pointer[0] - from[0], pointer[1] - from[1]])
      const to = dragged(before, view(), {
        grip,
        moved,
        reach: { reach_mm: reach_px / camera.px_mm, held: isFree },
      })
      preview(to)
      const { snap: _, stoppedBy: __, ...rest } = hold
      hold = {
        ...rest,
        pointer,
        isFree,
        now_mm: to.value_mm,
        ...(to.snap && { snap: to.snap }),
        ...(to.stoppedBy && { stoppedBy: to.stoppedBy }),
      }
    },
    type: key => {
      if (hold === undefined) return false
      const typed =
        key === 'Backspace'
          ? hold.typed.slice(0, -1)
          : /^[\d.,+\-*/()]$/.test(key)
            ? hold.typed + key
            : undefined
      if (typed === undefined) return false
      const read = typed === '' ? undefined : readQuantity(typed, { unit: 'mm' })
      const value = read?.ok === true ? read.value.value : undefined
      if (value !== undefined) preview(typedAt(hold.grip, value))
      hold = { ...hold, typed, now_mm: known(board.now.project, hold.grip.at)?.value ?? hold.now_mm }
      return true
    },
    let: () => {
      if (hold === undefined) return
      hold = undefined
      board.act({ kind: 'settle' })
    },
    abandon: () => {
      if (hold === undefined) return
      hold = undefined
      board.act({ kind: 'abandon' })
    },
  }
}

/** The grip of the same face among those of the present model: its place has moved with it. */
export const gripNow = (grips: readonly Grip[], held: Grip): Grip | undefined =>
  grips.find(it => it.at.field === held.at.field && it.at.part === held.at.part)
