import type { Id, Line, Outline, Point, Region } from '../geometry'
import type { Side } from '../kinds'
import type { Levels } from './threshold-layout'

/** At which width of the joint a section is cut. The last two include tolerance or survey and movement. */
export type JointState = 'planned' | 'narrowest' | 'widest'

/** A stretch of the outer edge of a section. Each outer edge belongs to exactly one face. */
export type Face = {
  readonly to: 'inside' | 'outside' | 'ground' | 'cut'
  readonly path: readonly Point[]
  readonly of: 'wall' | 'reveal' | 'frame' | 'glass' | 'sill' | 'floor'
}

/** A part behind the plane of the section: drawn, not cut. */
export type Seen = {
  readonly part: Id
  readonly outline: Outline
  readonly hidden: boolean
  /** a screw, whose thread runs along all of its shank */
  readonly threaded?: true
  readonly material?: Id
}

/**
 * A detail cut into flat regions that tile its domain: no gap, no overlap, every vertex on the grid,
 * neighbours share all vertices of their common edge. Lines run along region edges only.
 * Axes: x across the joint (0 = reveal, growing towards the opening), y from outside to inside, in mm.
 */
export type Section = {
  readonly side: Side
  readonly zone: Id
  readonly state: JointState
  readonly regions: readonly Region[]
  readonly lines: readonly Line[]
  readonly faces: readonly Face[]
  readonly seen: readonly Seen[]
  /** where the levels of a threshold lie, in the cut that shows one */
  readonly levels?: Levels
}
