import type { Pen } from '../mark'

/** What is set along the line of a membrane, so that its plane is read without colour. Ours. */
export type AlongLine =
  | { readonly kind: 'dots'; readonly diameter_mm: number; readonly every_mm: number }
  | { readonly kind: 'ticks'; readonly length_mm: number; readonly every_mm: number }

/** Dots on the inner layer, ticks to the weather side of the outer one: always to the left of its path. */
export const alongLine: { readonly [P in Pen]?: AlongLine } = {
  'membrane-inner': { kind: 'dots', diameter_mm: 1.5, every_mm: 9 },
  'membrane-outer': { kind: 'ticks', length_mm: 1.8, every_mm: 10.4 },
}
