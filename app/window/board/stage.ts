import { Konva } from 'konva/lib/_CoreInternals.js'
import { type InkGroup, type Layer, paintOrder } from '../../../core/drawing'
import type { Id, Point } from '../../../core/geometry'
import { type Box, contains, grown, shifted, touches, within } from './box'
import type { Colours } from './colours'
import { type Painted, painted } from './paint'
import type { ViewInk } from './reuse'
import { newStanding, type Piece } from './standing'

/** Where a drawing in paper millimetres lies on the stage. */
export type Lying = { readonly x_px: number; readonly y_px: number; readonly paper_px_mm: number }

/** What is shown: the ink, in which colours, where. */
export type Shown = { readonly ink: ViewInk; readonly colours: Colours; readonly lying: Lying }

/**
 * The painted section: one Konva layer, which does not clear itself. Only what has changed is painted again: a drag paints
 * the box that looks different. The canvas may be larger than the board on every side: a pan then moves the whole canvas,
 * and only where it has come to an edge of it what is there is slid and the strips that come in are painted.
 */
export type Stage = {
  readonly resize: (width_px: number, height_px: number) => void
  readonly show: (shown: Shown) => void
  /** the part under a place of the board */
  readonly partAt: (x_px: number, y_px: number) => Id | undefined
  /** takes up the pixel ratio of the screen that the window is on now */
  readonly followScreen: () => void
  readonly paintNow: () => void
  readonly end: () => void
}

/** What has to be painted: strips that came in bare, and the box in which something moved. */
type Boxes = { readonly bare: readonly Box[]; readonly moved?: Box }

/** More pixels than three to one cost time and are not seen. */
const highestRatio = 3
/** How near a line must be to be taken, in paper mm each side. */
const lineReach_mm = 1.2

/** A stage in its place, whose canvas goes some pixels of the board beyond it on every side. */
export const newStage = (container: HTMLDivElement, beyond_px = 0): Stage => {
  const stage = new Konva.Stage({ container, width: 1, height: 1, listening: false })
  const layer = new Konva.Layer({ listening: false, clearBeforeDraw: false })
  stage.add(layer)
  const surface = layer.getCanvas()
  const canvas = surface._canvas
  const context = surface.getContext()._context
  let size: readonly [width_px: number, height_px: number] = [1, 1]
  let ratio = 1
  /** how far the canvas goes beyond the board, by whole pixels of its own */
  let beyond = 0
  /** where the corner of the canvas lies on the board, in pixels of the board */
  let corner: Point = [0, 0]
  let shown: Shown | undefined
  /** what is on the canvas, and where from its corner; nothing where all of it has to be painted */
  let onCanvas: Shown | undefined
  /** something has moved on the canvas beyond the board, where nobody sees it, and was not painted */
  let isFrayed = false
  /** what the layer paints when it is drawn: what came in, and where something moved */
  let waiting: Boxes = { bare: [] }
  const standing = newStanding<HTMLCanvasElement>()
  let ready = new WeakMap<InkGroup, Painted>()

  const readyOf = (group: InkGroup, colours: Colours): Painted => {
    const found = ready.get(group) ?? painted(group, colours)
    ready.set(group, found)
    return found
  }

  /** Makes the canvas as large as its place; what was on it is gone. */
  const fit = (): void => {
    ratio = Math.min(highestRatio, window.devicePixelRatio)
    surface.setPixelRatio(ratio)
    beyond = Math.round(beyond_px * ratio) / ratio
    stage.size({ width: size[0] + 2 * beyond, height: size[1] + 2 * beyond })
    onCanvas = undefined
    update()
  }

  /** Paints pieces on a canvas whose corner lies at a place of the board, both in pixels of the canvas. */
  const paintPieces = (
    on: CanvasRenderingContext2D,
    pieces: readonly Piece[],
    { colours, lying }: Shown,
    corner?: Point,
  ): void => {
    for (const { group, shift } of pieces) {
      on.setTransform(...onPixels(lying, ratio, shift, corner))
      readyOf(group, colours).draw(on)
    }
  }

  /** Paints what lies in a box of the canvas, in its own pixels, and nothing beside it. */
  const anew = ([[x0, y0], [x1, y1]]: Box, work: () => void): void => {
    context.save()
    context.setTransform(1, 0, 0, 1, 0, 0)
    context.beginPath()
    context.rect(x0, y0, x1 - x0, y1 - y0)
    context.clip()
    context.clearRect(x0, y0, x1 - x0, y1 - y0)
    work()
    context.restore()
  }

  const paintAll = (it: Shown, box: Box): void =>
    anew(box, () => paintPieces(context, inOrder(it.ink, onPaper(it.lying, ratio, box)), it))

  /** The same where something moves: what stands still is laid down as pictures. */
  const paintMoved = (it: Shown, box: Box): void =>
    anew(box, () => {
      const area = standing.areaRound(box, seen())
      const pieces = inOrder(it.ink, onPaper(it.lying, ratio, area))
      for (const run of standing.runsOf(pieces, still => pictureOf(it, still, area)))
        if (run.picture) lay(run.picture, area, box)
        else paintPieces(context, run.pieces, it)
    })

  const pictureOf = (it: Shown, pieces: readonly Piece[], [low, high]: Box): HTMLCanvasElement => {
    const picture = document.createElement('canvas')
    picture.width = high[0] - low[0]
    picture.height = high[1] - low[1]
    const on = picture.getContext('2d')
    if (!on) throw new Error('The browser gives no canvas to paint on')
    paintPieces(on, pieces, it, low)
    return picture
  }

  const lay = (picture: HTMLCanvasElement, [[left, top]]: Box, [[x0, y0], [x1, y1]]: Box): void => {
    const size = [x1 - x0, y1 - y0] as const
    context.setTransform(1, 0, 0, 1, 0, 0)
    context.drawImage(picture, x0 - left, y0 - top, ...size, x0, y0, ...size)
  }

  const whole = (): Box => [
    [0, 0],
    [canvas.width, canvas.height],
  ]

  /** What is seen of the canvas. */
  const seen = (): Box => {
    const [x, y] = [-corner[0] * ratio, -corner[1] * ratio]
    return [
      [x, y],
      [x + size[0] * ratio, y + size[1] * ratio],
    ]
  }

  /** Paints what differs between what is to be shown and what is on the canvas. */
  const update = (): void => {
    if (shown === undefined) return
    if (onCanvas?.colours !== shown.colours) {
      ready = new WeakMap()
      onCanvas = undefined
    }
    const known = onCanvas && differing(onCanvas, shown)
    if (known === undefined) isFrayed = false
    const { bare, moved, lying } = known ?? {
      bare: [whole()],
      lying: fromCorner(shown.lying, placed([-beyond, -beyond])),
    }
    onCanvas = { ...shown, lying }
    waiting = { bare, ...(moved && { moved }) }
    if (bare.length > 0) standing.forget()
    if (bare.length === 0 && moved === undefined) return
    // At once, not with the next frame: ink and what lies over it then move together.
    layer.drawScene()
  }
  const section = new Konva.Shape({
    listening: false,
    perfectDrawEnabled: false,
    sceneFunc: () => {
      if (!onCanvas) return
      for (const box of waiting.bare) paintAll(onCanvas, box)
      if (waiting.moved) paintMoved(onCanvas, waiting.moved)
      waiting = { bare: [] }
    },
  })
  layer.add(section)

  /** Lays the canvas down with its corner at a place of the board. */
  const placed = (at: Point): Point => {
    if (beyond > 0) stage.content.style.translate = `${at[0]}px ${at[1]}px`
    corner = at
    return at
  }

  /** Whether the canvas covers the board with its corner at a place of it. */
  const isCovering = (at: Point): boolean => at.every(it => -2 * beyond <= it && it <= 0)

  /** How far what is on the canvas has to slide on it, in its own pixels: not at all where the canvas can move in its stead. */
  const slideOf = (was: Lying, now: Lying): Point | undefined => {
    const by = wholePixels(was, fromCorner(now, corner), ratio)
    if (by === undefined || (by[0] === 0 && by[1] === 0)) return by
    if (isFrayed) return undefined
    const to: Point = [corner[0] + by[0] / ratio, corner[1] + by[1] / ratio]
    if (isCovering(to)) {
      placed(to)
      return [0, 0]
    }
    return wholePixels(was, fromCorner(now, placed([-beyond, -beyond])), ratio)
  }

  /** The boxes that have to be painted, and where the paper then lies; what only slides is slid. Nothing where all is to be painted. */
  const differing = (was: Shown, now: Shown): (Boxes & { readonly lying: Lying }) | undefined => {
    const slid = slideOf(was.lying, now.lying)
    const isSameInk = was.ink === now.ink
    if (slid === undefined || (!isSameInk && was.ink.parts !== now.ink.since?.parts)) return undefined
    const [dx, dy] = slid
    const [width, height] = whole()[1]
    if (Math.abs(dx) >= width || Math.abs(dy) >= height) return undefined
    const { x_px, y_px, paper_px_mm } = was.lying
    const lying = { x_px: x_px + dx / ratio, y_px: y_px + dy / ratio, paper_px_mm }
    if (dx !== 0 || dy !== 0) {
      context.setTransform(1, 0, 0, 1, 0, 0)
      context.globalCompositeOperation = 'copy'
      context.drawImage(canvas, dx, dy)
      context.globalCompositeOperation = 'source-over'
    }
    const changed = isSameInk ? undefined : now.ink.since?.changed
    const strips: Box[] = [
      [[dx > 0 ? 0 : width + dx, 0], [dx > 0 ? dx : width, height]],
      [[0, dy > 0 ? 0 : height + dy], [width, dy > 0 ? dy : height]],
    ] // prettier-ignore
    const box = changed && onScreen(lying, ratio, changed)
    const moved = box && within(box, seen())
    isFrayed ||= box !== undefined && !contains(seen(), box)
    return { bare: strips.flatMap(box => some(within(box, whole()))), ...(moved && { moved }), lying }
  }

  /** The groups that lie in a box of the paper, from the bottom of the paper to the top. */
  const inOrder = (ink: ViewInk, seen: Box): readonly Piece[] => {
    const byLayer = new Map<Layer, Piece[]>()
    for (const { bounds, shift, inkIn } of ink.parts.values()) {
      const own = shift[0] === 0 && shift[1] === 0 ? seen : shifted(seen, [-shift[0], -shift[1]])
      if (bounds && !touches(bounds, own)) continue
      for (const group of inkIn(own)) {
        const there = byLayer.get(group.layer)
        if (there) there.push({ group, shift })
        else byLayer.set(group.layer, [{ group, shift }])
      }
    }
    return paintOrder.flatMap(layer => byLayer.get(layer) ?? [])
  }

  const isHit = ({ hit }: Painted, x: number, y: number): boolean => {
    if (hit === undefined) return false
    if (!hit.isLine) return context.isPointInPath(hit.path, x, y, 'evenodd')
    context.lineWidth = 2 * lineReach_mm
    context.setLineDash([])
    return context.isPointInStroke(hit.path, x, y)
  }

  const followScreen = (): void => {
    if (ratio !== Math.min(highestRatio, window.devicePixelRatio)) fit()
  }

  return {
    resize: (width_px, height_px) => {
      if (size[0] === width_px && size[1] === height_px) return
      size = [width_px, height_px]
      fit()
    },
    show: next => {
      shown = next
      followScreen()
      update()
    },
    partAt: (x_px, y_px) => {
      followScreen()
      if (shown === undefined) return undefined
      const { ink, colours } = shown
      const lying = fromCorner(shown.lying, corner)
      const [x, y] = [(x_px - corner[0]) * ratio, (y_px - corner[1]) * ratio]
      const around = grown(onPaper(lying, ratio, [[x, y], [x, y]]), lineReach_mm) // prettier-ignore
      const found = inOrder(ink, around).findLast(({ group, shift }) => {
        context.setTransform(...onPixels(lying, ratio, shift))
        return isHit(readyOf(group, colours), x, y)
      })
      return found?.group.part
    },
    followScreen,
    paintNow: () => {
      onCanvas = undefined
      update()
    },
    end: () => stage.destroy(),
  }
}

/** Where paper that lies on the board lies from a corner on it. */
const fromCorner = (lying: Lying, [x, y]: Point): Lying => ({
  ...lying,
  x_px: lying.x_px - x,
  y_px: lying.y_px - y,
})

/** How far paper lies from where it lay, in pixels of the canvas; nothing where it is not by whole ones. */
const wholePixels = (was: Lying, now: Lying, ratio: number): Point | undefined => {
  if (was.paper_px_mm !== now.paper_px_mm) return undefined
  const by = [(now.x_px - was.x_px) * ratio, (now.y_px - was.y_px) * ratio] as const
  const slid: Point = [Math.round(by[0]), Math.round(by[1])]
  return Math.abs(slid[0] - by[0]) < whole_px && Math.abs(slid[1] - by[1]) < whole_px ? slid : undefined
}

/** A pixel is not seen to be off by less. */
const whole_px = 1e-3

/** How paper that was shifted lies on the pixels of a canvas, whose corner may lie at another place of the board. */
const onPixels = (
  { x_px, y_px, paper_px_mm }: Lying,
  ratio: number,
  [dx, dy]: Point,
  [left, top]: Point = [0, 0],
): [number, number, number, number, number, number] => {
  const scale = ratio * paper_px_mm
  return [scale, 0, 0, -scale, x_px * ratio + dx * scale - left, y_px * ratio - dy * scale - top]
}

/** A box of the canvas as a box of the paper. */
const onPaper = ({ x_px, y_px, paper_px_mm }: Lying, ratio: number, [[x0, y0], [x1, y1]]: Box): Box => {
  const place = (x: number, y: number): Point => [
    (x / ratio - x_px) / paper_px_mm,
    (y_px - y / ratio) / paper_px_mm,
  ]
  return [place(x0, y1), place(x1, y0)]
}

/** A box of the paper as a box of the canvas, out to whole pixels. */
const onScreen = ({ x_px, y_px, paper_px_mm }: Lying, ratio: number, [[x0, y0], [x1, y1]]: Box): Box => [
  [Math.floor((x_px + x0 * paper_px_mm) * ratio), Math.floor((y_px - y1 * paper_px_mm) * ratio)],
  [Math.ceil((x_px + x1 * paper_px_mm) * ratio), Math.ceil((y_px - y0 * paper_px_mm) * ratio)],
]

const some = (box: Box | undefined): readonly Box[] => (box ? [box] : [])
