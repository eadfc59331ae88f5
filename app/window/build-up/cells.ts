import { type Layer, layerDepths, materialOf, type Project, wallOf } from '../../../core/detail'
import type { Words } from '../../../core/words'
import { same } from '../../../core/words'

/** A layer in the strip: between which depths it lies, and between which places of the strip its cell stands. */
export type Cell = {
  readonly layer: Layer
  readonly name: Words
  readonly lambda_W_mK: number | undefined
  readonly from_px: number
  readonly to_px: number
  /** where the layer's faces really are, on the board */
  readonly trueFrom_px: number
  readonly trueTo_px: number
}

/** Cells over their layers. Those too thin for their words get room by stepping outwards, away from the thick ones. */
export const cellsOf = (
  project: Project,
  opening: string,
  on: { readonly toPx: (depth_mm: number) => number; readonly width_px: number; readonly least_px: number },
): readonly Cell[] => {
  const layers = layerDepths(wallOf(project, opening))
  const faces = [layers[0]?.from_mm ?? 0, ...layers.map(it => it.to_mm)].map(on.toPx)
  const placed = spread(faces, on.least_px, on.width_px)
  return layers.map(({ layer }, at) => {
    const material = materialOf(project, layer.material)
    return {
      layer,
      name: material?.name ?? same(layer.material),
      lambda_W_mK: material?.lambda_W_mK,
      from_px: placed[at] ?? 0,
      to_px: placed[at + 1] ?? 0,
      trueFrom_px: faces[at] ?? 0,
      trueTo_px: faces[at + 1] ?? 0,
    }
  })
}

/**
 * Boundaries with at least `least` between neighbours, as near to the true ones as that allows: the widest cell keeps
 * its place, those beside it push outwards; what would leave the strip is pushed back.
 */
const spread = (faces: readonly number[], least: number, width: number): readonly number[] => {
  const gaps = faces.slice(1).map((to, at) => to - (faces[at] ?? to))
  const anchor = gaps.indexOf(Math.max(...gaps))
  const out = [...faces]
  for (let at = anchor; at > 0; at--) out[at - 1] = Math.min(out[at - 1] ?? 0, (out[at] ?? 0) - least)
  for (let at = anchor + 2; at < out.length; at++)
    out[at] = Math.max(out[at] ?? 0, (out[at - 1] ?? 0) + least)
  const margin = 6
  for (let at = 0; at < out.length; at++) out[at] = Math.max(out[at] ?? 0, margin + at * least)
  for (let at = out.length - 1; at >= 0; at--)
    out[at] = Math.min(out[at] ?? 0, width - margin - (out.length - 1 - at) * least)
  return out
}
