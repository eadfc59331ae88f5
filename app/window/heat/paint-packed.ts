import type { Layer } from '../../../core/drawing'
import type { Colours } from '../board/colours'
import { painted } from '../board/paint'
import type { Lying } from '../board/stage'
import { type PackedInk, unpacked } from './packed-ink'

/** Ink from the worker made ready to be painted: its paths are built once, in paper millimetres. */
export type ReadyInk = (context: CanvasRenderingContext2D) => void

export const readyInk = (ink: PackedInk, layer: Layer, colours: Colours): ReadyInk =>
  painted({ layer, inks: unpacked(ink) }, colours).draw

/** More pixels than three to one cost time and are not seen. */
const highestRatio = 3

/** Paints ready ink on a canvas of a size in CSS pixels, where the paper lies. */
export const paintOn = (
  canvas: HTMLCanvasElement,
  { width_px, height_px }: { readonly width_px: number; readonly height_px: number },
  { x_px, y_px, paper_px_mm }: Lying,
  ink: ReadyInk | undefined,
): void => {
  const context = canvas.getContext('2d')
  if (!context) return
  const ratio = Math.min(highestRatio, window.devicePixelRatio)
  const [width, height] = [Math.round(width_px * ratio), Math.round(height_px * ratio)]
  if (canvas.width !== width || canvas.height !== height) {
    canvas.width = width
    canvas.height = height
  }
  context.setTransform(1, 0, 0, 1, 0, 0)
  context.clearRect(0, 0, width, height)
  if (!ink) return
  context.setTransform(paper_px_mm * ratio, 0, 0, -paper_px_mm * ratio, x_px * ratio, y_px * ratio)
  ink(context)
}
