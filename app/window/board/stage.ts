import { Konva } from 'konva/lib/_CoreInternals.js'
import type { Id } from '../../../core/geometry'
import type { Colours } from './colours'
import { type Painted, painted } from './paint'
import type { Placed } from './reuse'

/** Where a drawing in paper millimetres lies on the stage. */
export type Lying = { readonly x_px: number; readonly y_px: number; readonly paper_px_mm: number }

/** The painted section: one shape for each part on each layer, changed in place. The stage is as large as the board. */
export type Stage = {
  readonly resize: (width_px: number, height_px: number) => void
  readonly show: (groups: readonly Placed[], colours: Colours) => void
  readonly lie: (at: Lying) => void
  /** the part under a place of the board */
  readonly partAt: (x_px: number, y_px: number) => Id | undefined
  /** takes up the pixel ratio of the screen that the window is on now */
  readonly followScreen: () => void
  readonly paintNow: () => void
  readonly end: () => void
}

/** More pixels than three to one cost time and are not seen. */
const highestRatio = 3
/** How near a line must be to be taken, in paper mm each side. */
const lineReach_mm = 1.2

export const newStage = (container: HTMLDivElement): Stage => {
  const stage = new Konva.Stage({ container, width: 1, height: 1 })
  const layer = new Konva.Layer()
  const paper = new Konva.Group()
  layer.add(paper)
  stage.add(layer)
  const shapes = new Map<
    string,
    { shape: InstanceType<typeof Konva.Shape>; group: Placed['group']; colours: Colours; ink: Painted }
  >()

  const make = (name: string, group: Placed['group'], colours: Colours) => {
    const entry = {
      group,
      colours,
      ink: painted(group, colours),
      shape: new Konva.Shape({ name, perfectDrawEnabled: false }),
    }
    entry.shape.sceneFunc(context => entry.ink.draw(context._context))
    entry.shape.hitFunc((context, shape) => {
      const { hit } = entry.ink
      if (hit === undefined) return
      context._context.fillStyle = shape.colorKey
      context._context.strokeStyle = shape.colorKey
      if (hit.isLine) {
        context._context.lineWidth = 2 * lineReach_mm
        context._context.stroke(hit.path)
      } else context._context.fill(hit.path, 'evenodd')
    })
    entry.shape.getSelfRect = () => ({ x: 0, y: 0, width: stage.width(), height: stage.height() })
    entry.shape.setAttr('part', group.part)
    entry.shape.listening(entry.ink.hit !== undefined)
    return entry
  }

  /** What can be hit is drawn when somebody asks: a drag asks for nothing, and saves half of the painting. */
  let isHitDrawn = false
  const repaint = (): void => {
    isHitDrawn = false
    layer.listening(false)
    layer.batchDraw()
  }

  let ratio = 0
  const followScreen = (): void => {
    const now = Math.min(highestRatio, window.devicePixelRatio)
    if (now === ratio) return
    ratio = now
    layer.getCanvas().setPixelRatio(now)
    repaint()
  }

  return {
    resize: (width_px, height_px) => {
      stage.size({ width: width_px, height: height_px })
      repaint()
    },
    show: (groups, colours) => {
      followScreen()
      const names = groups.map(({ group }) => `${group.layer} ${group.part ?? ''}`)
      const gone = [...shapes.keys()].filter(it => !names.includes(it))
      for (const name of gone) {
        shapes.get(name)?.shape.destroy()
        shapes.delete(name)
      }
      groups.forEach(({ group, shift }, at) => {
        const name = names[at] ?? ''
        const found = shapes.get(name)
        if (found === undefined) {
          const made = make(name, group, colours)
          shapes.set(name, made)
          paper.add(made.shape)
        } else if (found.group !== group || found.colours !== colours) {
          found.group = group
          found.colours = colours
          found.ink = painted(group, colours)
          found.shape.listening(found.ink.hit !== undefined)
        }
        const shape = shapes.get(name)?.shape
        shape?.position({ x: shift[0], y: shift[1] })
        if (shape && shape.zIndex() !== at) shape.zIndex(at)
      })
      repaint()
    },
    lie: ({ x_px, y_px, paper_px_mm }) => {
      paper.setAttrs({ x: x_px, y: y_px, scaleX: paper_px_mm, scaleY: -paper_px_mm })
      repaint()
    },
    partAt: (x, y) => {
      followScreen()
      if (!isHitDrawn) {
        layer.listening(true)
        layer.drawHit()
        isHitDrawn = true
      }
      const part: unknown = stage.getIntersection({ x, y })?.getAttr('part')
      return typeof part === 'string' ? part : undefined
    },
    followScreen,
    paintNow: () => layer.draw(),
    end: () => stage.destroy(),
  }
}
