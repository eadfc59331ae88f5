import { fieldOf } from '../../../core/detail'
import type { Id } from '../../../core/geometry'
import { inWords, writeQuantity } from '../../../core/units'
import { filled, same } from '../../../core/words'
import { type Grip, nudge, nudgeSteps_mm, snapName } from '../../editor'
import type { Desk } from '../state/desk'
import { say as words } from '../window-words'
import { type Camera, type Px, zoomedAt } from './camera'
import type { Hand } from './hold.svelte'
import { listedPart } from './listed'

/** What pointing needs of the board: where it is, what lies under a place, and the hand that holds. */
export type PointedAt = {
  readonly box: () => HTMLElement | undefined
  readonly camera: () => Camera
  readonly partAt: (at: Px) => Id | undefined
  readonly hand: Hand
  readonly frame: () => Id
}

/** Pointer, wheel and keys on the board: selecting, taking, panning, zooming, nudging. */
export type Pointing = {
  readonly hovered: Id | undefined
  readonly isPanning: boolean
  readonly isSpaceHeld: boolean
  readonly takeGrip: (event: PointerEvent, grip: Grip) => void
  readonly down: (event: PointerEvent) => void
  readonly move: (event: PointerEvent) => void
  readonly up: () => void
  readonly leave: () => void
  readonly wheel: (event: WheelEvent) => void
  readonly keyDown: (event: KeyboardEvent) => void
  readonly keyUp: (event: KeyboardEvent) => void
  /** before anybody else hears of it: digits, Enter and Esc while something is held */
  readonly heldKey: (event: KeyboardEvent) => void
  readonly letGoOfSpace: () => void
  /** the middle button pans; where a desktop pastes with it, nothing is pasted */
  readonly noPaste: (event: MouseEvent) => void
}

type Press = {
  readonly at: Px
  readonly isPan: boolean
  readonly from: readonly [number, number]
  readonly part: Id | undefined
}

/** A press becomes a drag after this many pixels: a hand is never quite still. *Ours*. */
const still_px = 3
/** How far a notch of the wheel zooms, for wheels that count in lines and those that count in pixels. *Ours*. */
const zoomPerLine = 0.05
const zoomPerPixel = 0.0015

const arrows: Readonly<Record<string, Px>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
}

export const newPointing = ({ board, readings, settings, notes }: Desk, at: PointedAt): Pointing => {
  const { hand } = at
  let hovered: Id | undefined = $state()
  let isPanning = $state(false)
  let isSpaceHeld = $state(false)
  let press: Press | undefined
  const inFrame = oneAFrame()

  /** Where the board lies, as long as something is held on it: it does not move then, and asking would lay out the window. */
  let edge: DOMRect | undefined
  const pointOf = (event: PointerEvent | WheelEvent): Px => {
    const { left, top } = edge ?? at.box()?.getBoundingClientRect() ?? { left: 0, top: 0 }
    return [event.clientX - left, event.clientY - top]
  }
  const listedAt = (place: Px): Id | undefined => {
    const body = at.partAt(place)
    return body === undefined ? undefined : listedPart(readings.parts, body)
  }
  const isFree = (event: PointerEvent): boolean => event.ctrlKey || !settings.snap

  const dragBody = (event: PointerEvent, from: Press, to: Px): void => {
    const isFrame = from.part !== undefined && from.part.split('/')[0] === at.frame()
    if (!isFrame || readings.warmth !== 0) return
    if (Math.hypot(to[0] - from.at[0], to[1] - from.at[1]) <= still_px) return
    // The body of the frame moves the frame in the depth of the wall.
    const grip = readings.grips.find(it => it.at.field === 'opening.position')
    if (grip === undefined || grip.isLocked) return
    hand.take(grip, from.at)
    hand.move(to, at.camera(), isFree(event))
  }
  const up = (): void => {
    inFrame(undefined)
    edge = undefined
    if (hand.hold) notes.announce(heldWords(hand.hold))
    hand.let()
    press = undefined
    isPanning = false
  }
  const lookAt = (x: number, y: number): void => {
    board.act({ kind: 'look', view: { at: [x, y], zoom: at.camera().px_mm } })
  }

  return {
    get hovered() {
      return hovered
    },
    get isPanning() {
      return isPanning
    },
    get isSpaceHeld() {
      return isSpaceHeld
    },
    takeGrip: (event, grip) => {
      if (event.button !== 0) return
      event.stopPropagation()
      if (grip.isLocked) return
      at.box()?.setPointerCapture(event.pointerId)
      edge = at.box()?.getBoundingClientRect()
      hand.take(grip, pointOf(event))
    },
    down: event => {
      const isPan = event.button === 1 || (event.button === 0 && isSpaceHeld)
      if (!isPan && event.button !== 0) return
      if (isPan) event.preventDefault()
      at.box()?.setPointerCapture(event.pointerId)
      edge = at.box()?.getBoundingClientRect()
      const place = pointOf(event)
      const [x, y] = at.camera().at
      press = { at: place, isPan, from: [x, y], part: isPan ? undefined : listedAt(place) }
      isPanning = isPan
      if (press.part !== undefined) board.act({ kind: 'select', parts: [press.part] })
    },
    move: event => {
      const to = pointOf(event)
      const from = press
      if (hand.hold) inFrame(() => hand.move(to, at.camera(), isFree(event)))
      else if (from?.isPan === true) {
        const by = at.camera().moved(wholePixels([from.at[0] - to[0], from.at[1] - to[1]]))
        inFrame(() => lookAt(from.from[0] + by[0], from.from[1] + by[1]))
      } else if (from) dragBody(event, from, to)
      else hovered = listedAt(to)
    },
    up,
    leave: () => (hovered = undefined),
    wheel: event => {
      event.preventDefault()
      const camera = at.camera()
      if (event.ctrlKey || settings.wheel === 'zoom') {
        const way =
          -event.deltaY * (event.deltaMode === WheelEvent.DOM_DELTA_LINE ? zoomPerLine : zoomPerPixel)
        board.act({ kind: 'look', view: zoomedAt(camera, pointOf(event), Math.exp(way)) })
      } else {
        const by = camera.moved(
          wholePixels(event.shiftKey ? [event.deltaY, 0] : [event.deltaX, event.deltaY]),
        )
        lookAt(camera.at[0] + by[0], camera.at[1] + by[1])
      }
    },
    keyDown: event => {
      if (event.key === ' ') {
        isSpaceHeld = true
        event.preventDefault()
        return
      }
      const way = arrows[event.key]
      if (way === undefined || event.ctrlKey || event.metaKey) return
      const { plain, shift, alt } = nudgeSteps_mm
      const by_mm = event.shiftKey ? shift : event.altKey ? alt : plain
      const camera = at.camera()
      const towards = camera.moved([way[0] * camera.px_mm, way[1] * camera.px_mm])
      const action = nudge(board.now, { towards, by_mm })
      if (action === undefined) return
      event.preventDefault()
      event.stopPropagation()
      const [problem] = board.act(action)
      if (problem) notes.announce(problem.say)
    },
    keyUp: event => {
      if (event.key === ' ') isSpaceHeld = false
      const { gesture } = board.now
      if (arrows[event.key] === undefined || gesture === undefined) return
      board.act({ kind: 'settle' })
      notes.announce(gesture.before.says)
    },
    heldKey: event => {
      if (hand.hold === undefined) return
      if (event.key === 'Enter') up()
      else if (event.key === 'Escape') {
        hand.abandon()
        edge = undefined
        press = undefined
      } else if (!hand.type(event.key)) return
      event.preventDefault()
      event.stopPropagation()
    },
    letGoOfSpace: () => (isSpaceHeld = false),
    noPaste: event => {
      if (event.button === 1) event.preventDefault()
    },
  }
}

/** A pan goes by whole pixels of the screen: what is painted can then move as it is. */
const wholePixels = ([x, y]: Px): Px => {
  const ratio = window.devicePixelRatio
  return [Math.round(x * ratio) / ratio, Math.round(y * ratio) / ratio]
}

/** At most one move a frame: what came in between is left out. Nothing in its place takes back what waits. */
const oneAFrame = (): ((move: (() => void) | undefined) => void) => {
  let next: (() => void) | undefined
  return move => {
    if (next === undefined && move !== undefined)
      requestAnimationFrame(() => {
        const last = next
        next = undefined
        last?.()
      })
    next = move
  }
}

/** What was let go of, as it is said aloud: its name, its value, what has caught it. */
const heldWords = ({ grip, now_mm, snap }: NonNullable<Hand['hold']>) => {
  const name = fieldOf(grip.at.field)?.name ?? words.sizes
  const value = inWords(language => writeQuantity(now_mm, 'mm', language, 1))
  return snap
    ? filled(same('{0} {1}, {2}'), name, value, snapName[snap])
    : filled(same('{0} {1}'), name, value)
}
