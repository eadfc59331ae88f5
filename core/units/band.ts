import type { Unit } from './unit'

/** Where a quantity lies: closed, finite, `min <= max`. A single value has both ends alike. */
export type Band = { readonly min: number; readonly max: number }

/** What is allowed or required; an end that is left out is open. */
export type Bounds = { readonly unit: Unit; readonly min?: number; readonly max?: number }

/** The band that holds one value only. */
export const exactly = (value: number): Band => ({ min: value, max: value })

/** The band of a value and its tolerance each way. */
export const around = (value: number, tolerance: number): Band => ({
  min: value - tolerance,
  max: value + tolerance,
})

/** The smallest band that holds all values. */
export const bandOf = (first: number, ...more: readonly number[]): Band => ({
  min: Math.min(first, ...more),
  max: Math.max(first, ...more),
})

/** How far a band stays inside bounds: the smaller distance to an end, negative when an end is passed. */
export const marginOf = (actual: Band, required: Bounds): number =>
  Math.min(
    required.max === undefined ? Infinity : required.max - actual.max,
    required.min === undefined ? Infinity : actual.min - required.min,
  )

/** Lengths that differ by less than this are the same length: a thousandth of the smallest that anybody states. */
export const sameLength_mm = 1e-6

/** Whether a band lies inside bounds, ends included. */
export const isInside = (actual: Band, required: Bounds): boolean =>
  marginOf(actual, required) >= -sameLength_mm
