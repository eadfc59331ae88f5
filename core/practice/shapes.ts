import type { RoomUse } from '../air'
import type { AnchorBase, FrameMaterial } from '../kinds'

type Nothing = Record<never, never>
type Least = { readonly least_mm: number }
/** A screw that goes straight into the base, or one in a plug; lugs and brackets have no such table. */
export type Anchor = 'frame-screw' | 'frame-plug' | 'lug' | 'bracket'

/** Limits on joints that are there at all, on membranes and on tapes. */
export interface SealShapes {
  'joint-there': { given: Nothing; then: Least }
  'seal-placed': { given: Nothing; then: 'all' }
  'membrane-on-frame': { given: Nothing; then: Least }
  'membrane-on-wall': { given: Nothing; then: Least }
  /** the loop is at least as long as the joint opens, and no shorter than this */
  'membrane-slack': { given: Nothing; then: Least }
  /** what lies on a plastered reveal: its width, its share of the bare reveal, and how much of it is bonded */
  'membrane-on-reveal': {
    given: { of: 'width' | 'share' | 'bonded' }
    then: { readonly least?: number; readonly most?: number }
  }
  'tape-class': {
    given: { exposure: 'exposed' | 'sheltered' | 'covered' | 'inside' }
    then: { readonly classes: readonly string[] }
  }
  /** how much of its printed range lies below the planned joint at most */
  'tape-lower-half': { given: Nothing; then: { readonly share: number } }
  'tape-flanks': { given: Nothing; then: 'firm' }
}

/** Limits on how a frame is held. */
export interface FixingShapes {
  'fixing-corner': {
    given: { frame: FrameMaterial; burglary: 'yes' | 'no' }
    then: {
      readonly from: 'inner-corner' | 'outer-corner'
      readonly least_mm: number
      readonly most_mm: number
    }
  }
  'fixing-spacing': {
    given: { frame: FrameMaterial; burglary: 'yes' | 'no'; length_mm: number }
    /** the largest distance, and how many a bay has at least */
    then: { readonly most_mm: number; readonly least: number }
  }
  'fixing-at-member': {
    given: Nothing
    then: { readonly from: 'edge' | 'axis'; readonly least_mm: number; readonly most_mm?: number }
  }
  embedment: { given: { fixing: Anchor; base: AnchorBase | 'other' }; then: Least }
  'edge-distance': { given: { fixing: Anchor; base: AnchorBase | 'other' }; then: Least }
  /** by the diameter of the screw, and no less than a length */
  'screw-in-timber': {
    given: { of: 'thread' | 'edge' }
    then: { readonly diameters: number; readonly least_mm: number }
  }
  'steel-core': { given: { frame: FrameMaterial }; then: Least }
  drilling: {
    given: { base: AnchorBase | 'other' }
    then: { readonly allowed: readonly ('rotary' | 'hammer')[] }
  }
  /** how far from a corner a block still stands under it */
  'support-blocks': { given: Nothing; then: { readonly corner_mm: number } }
  'distance-blocks': { given: Nothing; then: { readonly corner_mm: number; readonly isOptional: boolean } }
  /** up to which sill height an element is a guard, by the fall outside */
  guarding: { given: { fall_mm: number }; then: { readonly sill_mm: number } }
  burglary: {
    given: Nothing
    then: { readonly spacing_mm: number; readonly corner_mm: number; readonly embedment_mm: number }
  }
  'frame-forward': { given: Nothing; then: 'brackets' }
}

/** Limits on heat and vapour. */
export interface PhysicsShapes {
  /** for the air of a standard or a stated one: a factor, or the humidity that the air may reach at the surface */
  'surface-criterion': {
    given: { room: RoomUse; air: 'norm' | 'own' }
    then: { readonly fRsi?: number; readonly humidity_pct?: number }
  }
  /** most water of a winter, and whether it has to dry in a summer */
  condensate: { given: Nothing; then: { readonly most_kg_m2: number; readonly dries: 'yes' | 'no' } }
}

/** Limits on where the frame stands, what covers it, and on the sill. */
export interface PlaceShapes {
  cover: { given: { by: 'insulation' | 'closer' | 'rebate' }; then: Least }
  'visible-face': { given: { by: 'insulation' | 'closer' | 'rebate' | 'finish' }; then: Least }
  /** in one leaf: where the middle of the frame lies in it; before insulation: how far from it the frame stands */
  'frame-position': {
    given: { wall: 'one-leaf' | 'insulated' }
    then: { readonly least?: number; readonly most: number }
  }
  'sill-fall': { given: Nothing; then: { readonly least_deg: number } }
  'sill-overhang': { given: Nothing; then: Least }
  'sill-throat': { given: Nothing; then: Least }
  'sill-end-dam': { given: Nothing; then: Least }
  'sill-upstand': { given: Nothing; then: Least }
  /** the gap takes the movement of half the sill, and is no smaller than this */
  'sill-end-gap': {
    given: { sill: 'metal' | 'other' }
    then: { readonly least_mm: number; readonly movement_mm_m: number }
  }
  'sill-length': { given: { sill: 'metal' | 'other' }; then: { readonly most_mm: number } }
  'second-plane': { given: { wall: 'timber' | 'wood-fibre' | 'other' }; then: 'asked' }
}
