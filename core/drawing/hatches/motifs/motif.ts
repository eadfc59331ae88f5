/** What a hatch repeats when it is not only straight lines. Lengths in paper mm. */
export type Motif =
  | {
      readonly kind: 'dots'
      readonly angle_deg: number
      readonly row_mm: number
      readonly step_mm: number
      readonly offset_mm: number
      readonly stagger_mm: number
      readonly diameter_mm: number
    }
  | {
      readonly kind: 'circles'
      readonly row_mm: number
      readonly step_mm: number
      readonly stagger_mm: number
      readonly diameters_mm: readonly [number, number]
    }
  | {
      readonly kind: 'waves'
      readonly row_mm: number
      readonly period_mm: number
      readonly rise_mm: number
    }
  | { readonly kind: 'rings'; readonly step_mm: number; readonly centre: readonly [number, number] }
  | {
      readonly kind: 'grain'
      readonly row_mm: number
      readonly period_mm: number
      readonly rise_mm: number
    }
  | {
      readonly kind: 'ticks'
      readonly angle_deg: number
      readonly length_mm: number
      readonly apart_mm: number
      readonly every_mm: number
    }
