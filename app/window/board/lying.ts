import { placeView, type View } from '../../../core/drawing'
import { type Camera, paper_px_mm } from './camera'
import type { Lying } from './stage'

/** Where a view drawn at another moment lies under the present camera, stretched where the scale has changed since. */
export const lyingOf = (
  view: Pick<View, 'window' | 'scale' | 'turn_deg' | 'mirrored' | 'at'>,
  camera: Camera,
): Lying => {
  const stretch = camera.px_mm / (view.scale * paper_px_mm)
  const scale = paper_px_mm * stretch
  const [x, y] = placeView(view).toPaper(camera.at)
  return {
    x_px: camera.width_px / 2 - x * scale,
    y_px: camera.height_px / 2 + y * scale,
    paper_px_mm: scale,
  }
}
