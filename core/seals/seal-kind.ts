import type { z } from 'zod'
import type { Id, Line, Outline, Point, Region, Seasonal } from '../geometry'
import type { Plane } from '../kinds'
import type { Band, Bounds, Stated, Unit } from '../units'
import type { Some, Words } from '../words'

/** No joint is deeper than the deepest frame that is built: ours. */
export const mostDepth_mm = 300

/**
 * The room that a seal is laid into, at one state of the joint. Axes as in a section.
 * The seal lies between `wallFace` and `frameFace`, from `from_mm` to `to_mm` in depth (y).
 */
export type Bay = {
  /** the width that the joint can have, for choosing sizes */
  readonly width_mm: Band
  readonly from_mm: number
  readonly to_mm: number
  readonly wallFace: readonly [Point, Point]
  readonly frameFace: readonly [Point, Point]
  /** what lies beyond either end of the joint */
  readonly ends: Readonly<Record<'outer' | 'inner', End>>
}

/** What lies beyond one end of a joint, outside or inside. Paths begin at that end and lead away from it. */
export type End = {
  /** what a membrane runs along from this end before it comes to a flank that holds it; empty where the flank begins here */
  readonly lead: readonly Point[]
  /**
   * The bare flank of the bearing layer, then round its edge: what a membrane may be bonded to. Empty where this end of
   * the joint stands beyond the bearing layer.
   */
  readonly flank: readonly Point[]
  /** the finished face of the reveal, from the frame on; empty where none is seen there */
  readonly face: readonly Point[]
  /** the strip between a finish and the face of the frame, which a stop bead fills; absent where none meets it */
  readonly stop?: Outline
  /** up to where the face of the frame is free, in x */
  readonly free_mm: number
}

/** What a seal is made of in a section. Later regions cover earlier ones. */
export type Laid = { readonly regions: readonly Region[]; readonly lines: readonly Line[] }

/** One amount for the take-off. */
export type Need = {
  readonly what: Words
  readonly amount: number
  readonly unit: 'mm' | 'ml' | 'l' | 'piece'
}

/** What movement a seal takes: a printed range of the joint, a share of its width, or the slack of a loop. */
export type Takes =
  | { readonly by: 'range'; readonly joint_mm: Band }
  | { readonly by: 'share'; readonly share_pct: number }
  | { readonly by: 'slack'; readonly loop_mm: number }
  | { readonly by: 'nothing' }

/** A face that a seal is bonded to. */
export type Bond = { readonly to: 'wall' | 'frame' | 'seal'; readonly width_mm: number }

/** A place where a seal can be taken by hand: dragging it along `along` states the field. */
export type Grip = { readonly field: string; readonly at: Point; readonly along: Point }

/** A value of a seal that can be stated: the model makes a field of it. `key` is its name in the seal. */
export type SealValue = {
  readonly id: string
  readonly key: string
  readonly name: Words
  readonly unit: Unit
  readonly bounds: Bounds
  /** it can be no longer than the joint is deep */
  readonly within?: 'depth'
  readonly because: Words
  /** what is used where it is not stated; absent: nothing is, and the value is missing */
  readonly fallback?: (seal: AnySeal) => Fallback
}

/** A value to use where none is stated, the range that products lie in, and why. */
export type Fallback = { readonly value: number; readonly band?: Band; readonly why: Words }

/** One word of a closed list, and how people say it. */
export type Choice = { readonly value: string; readonly name: Words }

/** A word of a seal that can be stated, out of a closed list: the model makes a field of it too. */
export type SealChoice = {
  readonly id: string
  readonly key: string
  readonly name: Words
  readonly choices: Some<Choice>
  readonly because: Words
}

/** A seal as the model keeps it: its kind, its name in the project, the plane it stands in, and its stated values. */
export type AnySeal = {
  readonly kind: string
  readonly id: Id
  readonly plane: Plane
  /** which gap it closes: absent, the joint between flank and frame; else the one between the nib of a rebate and the frame */
  readonly gap?: 'rebate'
  readonly [value: string]: string | Stated<number> | Stated<string> | undefined
}

/** A kind of seal, in one file. Nobody else asks what kind a seal is. */
export type SealKind<S extends AnySeal = AnySeal> = {
  readonly kind: S['kind']
  readonly name: Words
  readonly schema: z.ZodType<S>
  /** the material that shows how it is hatched; absent where it is drawn as a line */
  readonly shows?: Id
  /** planes that it may stand in */
  readonly planes: Some<Plane>
  /** whether it may also lie between the nib of a rebate and the frame */
  readonly inRebate?: true
  /**
   * Planes that it closes: mostly the one that it stands in; several for a body over the whole depth; none for what only
   * ends a finish beside the joint.
   */
  readonly serves: (it: S) => readonly Plane[]
  /** where it belongs, if not everywhere: people choose it there, no remedy proposes it */
  readonly only?: Words
  readonly values: readonly SealValue[]
  readonly choices: readonly SealChoice[]
  /** printed joint ranges that it is sold in; absent where it does not work in a range */
  readonly ranges_mm?: readonly Band[]
  readonly fresh: (id: Id, plane: Plane, bay: Bay) => S
  /** the depth that it takes up in the joint, or `rest`: what the others leave */
  readonly takesDepth: (it: S, width_mm: number) => number | 'rest'
  readonly lay: (it: S, bay: Bay) => Laid
  readonly grips: (it: S, bay: Bay) => readonly Grip[]
  /** what it is to vapour in a plane that it serves; absent: not known, and never guessed */
  readonly sd_m: (it: S, plane: Plane) => Seasonal | undefined
  readonly takes: (it: S) => Takes
  readonly bonds: (it: S, bay: Bay, behind: AnySeal | undefined) => readonly Bond[]
  /** amounts for a length of joint, laid into its bay */
  readonly needs: (it: S, bay: Bay, length_mm: number) => readonly Need[]
  /** what it is called in a list: "tape 20/8–15" */
  readonly called: (it: S) => Words
}
