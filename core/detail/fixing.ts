import type { Id } from '../geometry'
import type { Side } from '../kinds'
import type { Stated } from '../units'
import { type Words, words } from '../words'

export const fixingKinds = ['frame-screw', 'frame-plug', 'lug', 'bracket'] as const
export type FixingKind = (typeof fixingKinds)[number]
export const fixingKindName: Readonly<Record<FixingKind, Words>> = {
  'frame-screw': words('Frame screw', 'Rahmenschraube'),
  'frame-plug': words('Frame plug', 'Rahmendübel'),
  lug: words('Lug', 'Lasche'),
  bracket: words('Bracket', 'Konsole'),
}

/** How a frame is held in the wall, and where round the opening. */
export type Fixing = {
  readonly id: Id
  readonly kind: FixingKind
  readonly diameter_mm: Stated<number>
  readonly embedment_mm: Stated<number>
  /** distance of the axis from the outer face of the frame */
  readonly axis_mm: Stated<number>
  /** from the inner corner of the frame to the first axis, along the member */
  readonly corner_mm?: Stated<number>
  /** how many a side has; absent: nobody has said */
  readonly counts?: { readonly [K in Side]?: Stated<number> }
  /** axes of a side as they are drawn, from its left or lower end of the frame; they stand in the place of its count */
  readonly positions_mm?: { readonly [K in Side]?: readonly number[] }
  readonly drilling?: Stated<'rotary' | 'hammer'>
  /** core of the screw at the joint, and the tensile strength of its steel: what bends across the joint */
  readonly core_mm?: Stated<number>
  readonly steel_N_mm2?: Stated<number>
  /** assessed resistance of one fixing; it never falls back */
  readonly resistance_N?: Stated<number>
  /** thickness of the metal of a bracket or a lug */
  readonly plate_mm?: Stated<number>
  /** of a bracket: from its tension screw to where it presses on the wall */
  readonly lever_mm?: Stated<number>
}

/** A block that carries the frame, or one that holds it off the reveal. */
export type Block = {
  readonly id: Id
  readonly kind: 'support' | 'distance'
  /** which side, and how far from the left or lower end of the frame its middle lies */
  readonly side: Side
  readonly at_mm: Stated<number>
  readonly length_mm: Stated<number>
  /** across the frame; absent: as wide as the frame is deep */
  readonly width_mm?: Stated<number>
}

/** An upright that divides the frame: it rests on a block and needs fixings beside it. */
export type Mullion = { readonly id: Id; readonly at_mm: Stated<number>; readonly face_mm: Stated<number> }

/** Thickness of the metal of a lug or a bracket where nobody states it: common practice, no source. */
export const plateOf_mm = (it: Fixing): number => it.plate_mm?.value ?? (it.kind === 'lug' ? 2 : 5)
