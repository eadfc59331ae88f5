import { Konva } from 'konva/lib/_CoreInternals.js'
import type { Id } from '../../../core/geometry'
import type { InkGroup } from '../../../core/drawing'
import type { Colours } from './colours'
import { type Painted, painted } from './paint'

/** Where a drawing in paper millimetres lies on the stage. */
export type Lying = { readonly x_px: number; readonly y_px: number; readonly px_paper: number }

/** The painted section: one shape for each part on each layer, changed in place. The stage is as large as the board. */
export type Stage = {
  readonly resize: (width_px: number, height_px: number) => void
  readonly show: (groups: readonly InkGroup[], colours: Colours) => void
  readonly lie: (at: Lying) => void
  /** the part under a place of the board */
  readonly partAt: (x_px: number, y_px: number) => Id | undefined
  readonly setPixelRatio: (ratio: number) => void
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
    { shape: InstanceType<typeof Konva.Shape>; group: InkGroup; colours: Colours; ink: Painted }
  >()

  const make = (name: string, group: InkGroup, colours: Colours) => {
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

  return {
    resize: (width_px, height_px) => {
      stage.size({ width: width_px, height: height_px })
    },
    show: (groups, colours) => {
      const names = groups.map(it => `${it.layer} ${it.part ?? ''}`)
      const gone = [...shapes.keys()].filter(it => !names.includes(it))
      for (const name of gone) {
        shapes.get(name)?.shape.destroy()
        shapes.delete(name)
      }
      groups.forEach((group, at) => {
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
        if (shape && shape.zIndex() !== at) shape.zIndex(at)
      })
      layer.batchDraw()
    },
    lie: ({ x_px, y_px, px_paper }) => {
      paper.setAttrs({ x: x_px, y: y_px, scaleX: px_paper, scaleY: -px_paper })
      layer.batchDraw()
    },
    partAt: (x, y) => {
      const part: unknown = stage.getIntersection({ x, y })?.getAttr('part')
      return typeof part === 'string' ? part : undefined
    },
    setPixelRatio: ratio => {
      layer.getCanvas().setPixelRatio(Math.min(highestRatio, ratio))
      layer.batchDraw()
    },
    paintNow: () => layer.draw(),
    end: () => stage.destroy(),
  }
}
