import type { FrameMaterial, Plane, RevealForm } from '../kinds'
import type { Citation } from '../sources'
import type { Band } from '../units'
import type { Words } from '../words'
import type { FixingShapes, PhysicsShapes, PlaceShapes, SealShapes } from './shapes'
import type { LoadShapes, WorkShapes } from './work-shapes'

/** How the depth of a sealant bead follows from its width. An end that is left out is not asked for. */
export type BeadDepth = {
  /** wanted depth as a share of the width, and how far it may be off */
  readonly share?: number
  readonly within_mm?: number
  /** greatest depth as a share of the width */
  readonly mostShare?: number
  readonly least_mm?: number
  readonly most_mm?: number
}

/** What a stated movement share means: of the width for all movement, each way, or of the smallest width. */
export type MovementBasis = 'total' | 'plus-minus' | 'share-of-smallest'

/** Every limit that a practice may set: what it depends on and what it gives. One line a limit. */
export interface LimitShapes
  extends SealShapes, FixingShapes, PlaceShapes, PhysicsShapes, WorkShapes, LoadShapes {
  /** planes that are closed, and whether the inner one has to be proven airtight */
  'planes-filled': {
    given: Record<never, never>
    then: { readonly planes: readonly Plane[]; readonly isProven?: boolean }
  }
  'foam-as-air-seal': {
    given: { rated: 'yes' | 'no'; depth_mm: number; movement_pct: number; light: 'yes' | 'no' | 'not-told' }
    then: 'accepted' | 'not-accepted'
  }
  'vapour-order': { given: Record<never, never>; then: { readonly least: number } }
  'sealant-depth': { given: { width_mm: number }; then: BeadDepth }
  'backing-oversize': { given: { width_mm: number }; then: { readonly share_pct: Band } }
  'bonded-faces': { given: Record<never, never>; then: { readonly faces: number } }
  'least-joint': {
    given: { frame: FrameMaterial; reveal: RevealForm; length_mm: number }
    then: { readonly least_mm: number }
  }
  'perimeter-gap': {
    given: { frame: FrameMaterial; length_mm: number }
    then: { readonly least_mm: number; readonly most_mm: number }
  }
  'joint-for-movement': { given: { table: 'has-cell' | 'no-cell' }; then: { readonly basis: MovementBasis } }
  'tape-range': { given: Record<never, never>; then: 'inside' }
}
export type LimitKey = keyof LimitShapes

/** When a row holds: the given value is one of a list, or a number in a half-open range (above, up to). */
export type When<G> = {
  readonly [K in keyof G]?: G[K] extends number
    ? { readonly above?: number; readonly upTo?: number }
    : readonly G[K][]
}

/** How strong a limit is. Strength and trust are separate. */
export type IfBroken = 'not-met' | 'advice' | 'refer'

/** A limit and what it means to break it. */
export type Tier<K extends LimitKey> = {
  readonly then: LimitShapes[K]['then']
  readonly cite: Citation
  readonly ifBroken: IfBroken
}

/**
 * A row of a practice. The first row whose `when` holds is used; no row means *refer*.
 * `last` is a second, wider limit: past the first the answer is the first's `ifBroken`, past both the last's.
 */
export type Row<K extends LimitKey = LimitKey> = Tier<K> & {
  readonly when: When<LimitShapes[K]['given']>
  readonly last?: Tier<K>
}

/** A row that an office puts before those of the practice, with the reason. */
export type OwnRow = {
  [K in LimitKey]: { readonly limit: K; readonly row: Row<K>; readonly note: string }
}[LimitKey]

/** The rules of a country or an office: limits as data, each with its source. */
export type Practice = {
  readonly id: string
  readonly edition: string
  readonly name: Words
  readonly limits: { readonly [K in LimitKey]?: readonly Row<K>[] }
  /** Limits that do not arise here, with the reason: their rules do not apply. */
  readonly notAsked: { readonly [K in LimitKey]?: Words }
  /** Limits that arise here and for which it has no figure, with the reason: their rules refer. */
  readonly noFigure: { readonly [K in LimitKey]?: Words }
}
