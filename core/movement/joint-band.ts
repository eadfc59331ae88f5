import type { FieldAt } from '../detail'
import type { Id } from '../geometry'
import type { Basis, Band, Unit } from '../units'
import type { Words } from '../words'

/** One line of a sum, as it would be written by hand: "+ 0.3 mm, 0.5 mm/m × 1.206 m ÷ 2, assumed". */
export type Term = {
  readonly sign: '' | '+' | '−' | '×' | '÷' | '='
  readonly value: number
  readonly unit: Unit
  readonly says: Words
  readonly basis?: Basis
}

/**
 * Where the joint of one zone can be. Derived, never stored.
 * `still` is planned width and tolerance (or the survey); `moving` adds the movement of the frame both ways.
 */
export type JointBand = {
  readonly zone: Id
  readonly planned_mm: number
  readonly still_mm: Band
  readonly moving_mm: Band
  /** how far the joint opens and closes from its installed width */
  readonly opens_mm: number
  readonly closes_mm: number
  /** how the narrowest and the widest moving width come about */
  readonly narrowestSum: readonly Term[]
  readonly widestSum: readonly Term[]
  /** the assumed values that it rests on */
  readonly restsOn: readonly FieldAt[]
}
