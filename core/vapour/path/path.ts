import type { Id } from '../../geometry'
import type { Band } from '../../units'

/** A layer along a path, with its resistance to heat and, as a range, to vapour. A membrane has no thickness. */
export type PathLayer = {
  readonly part: Id
  readonly thickness_mm: number
  readonly resistance_m2K_W: number
  readonly sd_m: Band
}

/** Layers from outside to inside, and the air films at both ends. */
export type Path = {
  readonly layers: readonly PathLayer[]
  readonly outside_m2K_W: number
  readonly inside_m2K_W: number
}

/** Vapour resistances that are reckoned with, layer by layer. */
export type Taken_m = readonly number[]

/** Every layer at one end of its range. */
export const allAt = ({ layers }: Path, end: keyof Band): Taken_m => layers.map(it => it.sd_m[end])

/**
 * The less favourable choice for water at one interface: what lies inside of it as open, what lies outside of it as tight
 * as it can be (DIN 4108-3, from memory). Interface i lies on the inner side of layer i − 1.
 */
export const againstInterface = ({ layers }: Path, at: number): Taken_m =>
  layers.map((it, i) => (i < at ? it.sd_m.max : it.sd_m.min))

/** All choices that can be the least favourable one: one an interface. A path of one layer has a single choice. */
export const unfavourable = (path: Path): readonly Taken_m[] =>
  path.layers.length < 2
    ? [allAt(path, 'min')]
    : path.layers.slice(1).map((_, i) => againstInterface(path, i + 1))
