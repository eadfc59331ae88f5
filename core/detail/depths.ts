import type { Layer, Wall } from './model'

/** A layer with its place in the depth of the wall: 0 is the outer face of the bearing layer, inward positive. */
export type Placed = { readonly layer: Layer; readonly from_mm: number; readonly to_mm: number }

/** Number of the bearing layer; the thickest where none has the duty, so that there is always a reference face. */
export const bearingIndex = (wall: Wall): number => {
  const bearing = wall.layers.findIndex(it => it.duties.includes('bearing'))
  if (bearing >= 0) return bearing
  const thickest = Math.max(...wall.layers.map(it => it.thickness_mm.value))
  return wall.layers.findIndex(it => it.thickness_mm.value === thickest)
}

/** All layers outside to inside, each with its depth. */
export const layerDepths = (wall: Wall): readonly Placed[] => {
  const bearing = bearingIndex(wall)
  let from_mm = -sum(wall.layers.slice(0, bearing))
  return wall.layers.map(layer => {
    const to_mm = from_mm + layer.thickness_mm.value
    const placed = { layer, from_mm, to_mm }
    from_mm = to_mm
    return placed
  })
}

/** A leaf thicker than this stands by itself and turns round nothing: ours, above every render, below every brick. */
const skin_mm = 40

/** Depths that the rest is measured by. */
export type WallDepths = {
  readonly outer_mm: number
  readonly inner_mm: number
  /** inner face of the bearing layer; its outer face is 0 */
  readonly bearing_mm: number
  /** layers before the bearing layer */
  readonly before: readonly Placed[]
  readonly bearing: Placed
  readonly behind: readonly Placed[]
  /** the outermost layer where it is a thin skin (rain or finish, not insulating): it turns into the reveal */
  readonly skin: Placed | undefined
}

export const wallDepths = (wall: Wall): WallDepths => {
  const all = layerDepths(wall)
  const at = bearingIndex(wall)
  const bearing = all[at] ?? { layer: wall.layers[0], from_mm: 0, to_mm: wall.layers[0].thickness_mm.value }
  const before = all.slice(0, at)
  const [first] = before
  const isSkin =
    first !== undefined &&
    !first.layer.duties.includes('insulating') &&
    first.layer.thickness_mm.value <= skin_mm
  return {
    outer_mm: first?.from_mm ?? 0,
    inner_mm: all.at(-1)?.to_mm ?? bearing.to_mm,
    bearing_mm: bearing.to_mm,
    before,
    bearing,
    behind: all.slice(at + 1),
    skin: isSkin ? first : undefined,
  }
}

const sum = (layers: readonly Layer[]): number => layers.reduce((all, it) => all + it.thickness_mm.value, 0)
