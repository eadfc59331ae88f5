import type { Camera } from '../board/camera'
import type { BoardDrawing } from '../board/draw-board'
import type { Point } from '../../../core/geometry'
import type { Desk } from '../state/desk'
import type { Heat } from './heat.svelte'

/** Numbers keep this far off the edges of the board, in pixels. Ours. */
const edge_px = 6

/** Asks for the heat of what the board draws, whenever that changes and heat is shown. Called once, by the board. */
export const askHeat = (
  heat: Heat,
  { settings }: Pick<Desk, 'settings'>,
  board: { readonly drawing: () => BoardDrawing | undefined; readonly camera: () => Camera },
): void => {
  $effect(() => {
    const [drawing, camera] = [board.drawing(), board.camera()]
    if (!heat.isOn || !drawing || camera.width_px < 2) return
    const { window, scale, turn_deg, mirrored, at } = drawing.view
    heat.ask({
      view: { window, scale, turn_deg, mirrored, at },
      seen: seenBy(camera),
      language: settings.language,
      named: heat.isNamed,
      strip: heat.strip,
    })
  })
}

const seenBy = ({ toModel, width_px, height_px }: Camera): readonly [Point, Point] => {
  const [a, b] = [toModel([edge_px, edge_px]), toModel([width_px - edge_px, height_px - edge_px])]
  return [
    [Math.min(a[0], b[0]), Math.min(a[1], b[1])],
    [Math.max(a[0], b[0]), Math.max(a[1], b[1])],
  ]
}
