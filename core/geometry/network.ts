import { grid_mm, type Outline, type Point } from './point'

/**
 * Edges between vertices on the grid, each undirected edge once. Half-edge `2e` runs from `from[e]` to `to[e]`,
 * half-edge `2e + 1` back. Places are whole numbers of grid steps.
 */
export type Network = {
  readonly x: Float64Array
  readonly y: Float64Array
  readonly from: Int32Array
  readonly to: Int32Array
  /** 1 where an edge lies on a path */
  readonly onPath: Uint8Array
  /** the painted outlines that an edge belongs to: number + 1, negative where they run against the edge */
  readonly sources: readonly (readonly number[])[]
  /** the paths, as vertices */
  readonly paths: readonly (readonly number[])[]
}

export const toGrid = ([x, y]: Point): Point => [Math.round(x / grid_mm), Math.round(y / grid_mm)]

/** One over the grid: dividing by it gives the nearest decimal, multiplying by the step does not. */
const steps_mm = Math.round(1 / grid_mm)

export const pointAt = (it: Network, vertex: number): Point => [
  (it.x[vertex] ?? 0) / steps_mm,
  (it.y[vertex] ?? 0) / steps_mm,
]

export const pointsOf = (it: Network, vertices: readonly number[]): Outline =>
  vertices.map(at => pointAt(it, at))
