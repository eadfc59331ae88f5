import type { Band } from '../units'
import type { Outline, Point } from './point'

export type Id = string

/** How air in a section is exchanged with the outside: by the width of the slit that opens it. */
export type Vented = 'closed' | 'slightly' | 'open'

export type Fill =
  { readonly kind: 'material'; readonly material: Id } | { readonly kind: 'air'; readonly vented: Vented }

/** A flat body of one filling. `part` names what it belongs to in the model. */
export type Region = {
  readonly id: Id
  readonly part: Id
  readonly outline: Outline
  readonly holes: readonly Outline[]
  readonly fill: Fill
}

/** An equivalent air layer in metres, dry (winter) and humid (summer), each as a range. */
export type Seasonal = { readonly winter: Band; readonly summer: Band }

/**
 * A part too thin for a region of its own (membrane, foil). It runs along region edges only:
 * cutting the section splits what it crosses. Heat ignores it unless it is metal; vapour takes it as an interface.
 */
export type Line = {
  readonly id: Id
  readonly part: Id
  readonly path: readonly Point[]
  readonly thickness_mm: number
  readonly lambda_W_mK: number
  readonly sd_m?: Seasonal
}
