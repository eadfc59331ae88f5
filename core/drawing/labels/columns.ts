import type { Id } from '../../geometry'

/** Where numbers may stand: in a column beside the picture, this far apart at least. Paper mm. */
export type Column = {
  readonly side: 'left' | 'right'
  readonly x: number
  readonly low: number
  readonly high: number
  readonly pitch_mm: number
}

/** The slots of a layout: heights from top to bottom and who holds each. */
export type Slots = readonly { readonly id: Id; readonly side: Column['side']; readonly y: number }[]
