import type { AnchorBase, FrameMaterial, Plane, RevealForm } from '../kinds'

type Nothing = Record<never, never>
/** Words of a closed list that will do. */
export type Accepted = { readonly accepted: readonly string[] }
/** What an amount is at least, and at most. */
export type Bounded = { readonly least?: number; readonly most?: number }

/** Limits on what is told of the work: words that will do, amounts that are kept. */
export interface WorkShapes {
  'planes-meet': { given: Nothing; then: Accepted }
  'air-line': { given: Nothing; then: Accepted }
  'plaster-edge': { given: Nothing; then: Accepted }
  'joint-sound': { given: Nothing; then: 'asked' }
  'sealant-class': { given: { plane: Plane }; then: Accepted }
  'work-temperature': { given: { of: 'sealant' | 'bonded' }; then: Bounded }
  'work-dry': { given: Nothing; then: Accepted }
  substrate: { given: Nothing; then: Accepted }
  'element-length': { given: { frame: FrameMaterial; lights: 'one' | 'several' }; then: Bounded }
  compatible: { given: Nothing; then: Accepted }
  'fillet-leg': { given: Nothing; then: Bounded }
  'flank-angle': { given: Nothing; then: Bounded }
  'flank-face': { given: Nothing; then: Accepted }
  'tape-corners': { given: Nothing; then: Accepted }
  'tape-overlength': { given: Nothing; then: Bounded }
  'tape-level': { given: Nothing; then: 'drained-or-tight' }
  'membrane-lap': { given: Nothing; then: Bounded }
  'peel-test': { given: { substrate: 'sound' | 'doubtful' | 'unsound' | 'not-told' }; then: Accepted }
  'sheet-duty': { given: Nothing; then: Accepted }
  'frame-true': { given: { of: 'plumb' | 'edge' | 'bow' }; then: Bounded }
  'fixing-metal': { given: { air: 'plain' | 'coast' | 'pool' }; then: Accepted }
  'drain-slots': { given: Nothing; then: Accepted }
  'stop-bead-length': { given: { reveal: RevealForm }; then: Bounded }
  'box-sealed': { given: Nothing; then: 'sealed' }
  'rain-laps': { given: Nothing; then: Accepted }
  'rain-class': { given: Nothing; then: 'asked' }
  /** how far the threshold stands over the finished surface outside, by what takes the water at the door */
  'threshold-upstand': { given: { drain: 'none' | 'channel' | 'special' }; then: Bounded }
  'threshold-step': { given: Nothing; then: Bounded }
  'threshold-fall': { given: Nothing; then: Accepted }
  /** in the most exposed places: a rebate, and how far the frame stands behind the outer face */
  'checked-rebate': { given: Nothing; then: { readonly behind_mm: number } }
  'open-weather': { given: { tape: 'weatherproof' | 'other' }; then: Bounded }
  'surveyed-joint': { given: { end: 'narrowest' | 'widest'; length_mm: number }; then: Bounded }
  'opening-size': { given: { length_mm: number }; then: { readonly within_mm: number } }
  'timber-moisture': { given: { of: 'frame' | 'wall' }; then: Bounded }
  'work-order': { given: Nothing; then: Accepted }
  screening: { given: Nothing; then: Accepted }
  'fire-joint': { given: Nothing; then: 'proof' }
  ventilation: { given: Nothing; then: Accepted }
}

/** Limits on forces and on what bears them. */
export interface LoadShapes {
  /** factors on wind and guard, and whether both count in full at once */
  'fixing-load': {
    given: Nothing
    then: { readonly wind: number; readonly guard: number; readonly isInFull: boolean }
  }
  /** how far a screw counts as held at both ends: 1 free to turn, 2 held; and how long it may be free */
  'fixing-bending': {
    given: { of: 'bending' | 'length' }
    then: { readonly restraint?: number; readonly most_mm?: number }
  }
  'block-pressure': { given: { base: AnchorBase | 'other' }; then: { readonly most_N_mm2: number } }
  /** which part of the span a member may bend by */
  'free-span': { given: { deflection: 'A' | 'B' | 'C' | 'not-told' }; then: { readonly part: number } }
  'head-joint': { given: Nothing; then: 'takes-sag' }
  'bracket-slot': { given: Nothing; then: 'takes-sag' }
  'guard-height': { given: { fall_mm: number }; then: Bounded }
  'guard-infill': { given: Nothing; then: Accepted }
}
