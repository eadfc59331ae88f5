import { bearingIndex, type Layer, layerDepths, materialOf, type Project, wallOf } from '../../../core/detail'
import type { Words } from '../../../core/words'
import { same } from '../../../core/words'

/** A layer in the strip: between which depths it lies, and between which places of the strip its cell stands. */
export type Cell = {
  readonly layer: Layer
  readonly name: Words
  readonly lambda_W_mK: number | undefined
  /** 0: the upper row; where there are too many for one row, every second cell stands in a lower one */
  readonly row: 0 | 1
  readonly from_px: number
  readonly to_px: number
  /** where the layer's faces really are, on the board */
  readonly trueFrom_px: number
  readonly trueTo_px: number
}

/** A line from a boundary of the strip to the true face below it, and the layer that it takes where it can be dragged. */
export type FanLine = {
  readonly x: number
  readonly row: number
  readonly path: string
  readonly takes: string | undefined
}

/** Cells over their layers. Those too thin for their words get room by stepping outwards, away from the thick ones. */
export const cellsOf = (
  project: Project,
  opening: string,
  on: { readonly toPx: (depth_mm: number) => number; readonly width_px: number; readonly least_px: number },
): readonly Cell[] => {
  const layers = layerDepths(wallOf(project, opening))
  const faces = [layers[0]?.from_mm ?? 0, ...layers.map(it => it.to_mm)].map(on.toPx)
  const isDouble = layers.length * on.least_px > on.width_px - 2 * margin_px
  const most_px = (on.width_px - 2 * margin_px) / Math.max(1, layers.length)
  const placed = spread(faces, Math.min(most_px, isDouble ? on.least_px / 2 : on.least_px), on.width_px)
  return layers.map(({ layer }, at) => {
    const material = materialOf(project, layer.material, layer.id)
    return {
      row: isDouble && at % 2 === 1 ? 1 : 0,
      layer,
      name: material?.name ?? same(layer.material),
      lambda_W_mK: material?.lambda_W_mK,
      from_px: placed[at] ?? 0,
      to_px: (isDouble ? placed[at + 2] : undefined) ?? placed.at(isDouble ? -1 : at + 1) ?? 0,
      trueFrom_px: faces[at] ?? 0,
      trueTo_px: faces[at + 1] ?? 0,
    }
  })
}

/** Nothing stands nearer to an end of the strip. */
const margin_px = 6

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
  for (let at = 0; at < out.length; at++) out[at] = Math.max(out[at] ?? 0, margin_px + at * least)
  for (let at = out.length - 1; at >= 0; at--)
    out[at] = Math.min(out[at] ?? 0, width - margin_px - (out.length - 1 - at) * least)
  return out
}

/**
 * Where a layer can be taken by its fan line: the layers before the bearing one at their outer face, that one and those
 * behind it at their inner face. Nothing at the outer face of the bearing layer: all depths are measured from it.
 */
export const takenAt = (project: Project, opening: string): readonly (string | undefined)[] => {
  const layers = wallOf(project, opening).layers
  const bearing = bearingIndex(wallOf(project, opening))
  return [...layers, undefined].map((_, boundary) =>
    boundary < bearing ? layers[boundary]?.id : boundary > bearing ? layers[boundary - 1]?.id : undefined,
  )
}
