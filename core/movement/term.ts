import type { Basis, Unit } from '../units'
import type { Words } from '../words'

/** One line of a sum, as it would be written by hand: "+ 0.3 mm, 0.5 mm/m × 1.206 m ÷ 2, assumed". */
export type Term = {
  readonly sign: '' | '+' | '−' | '×' | '÷' | '='
  readonly value: number
  readonly unit: Unit
  readonly says: Words
  readonly basis?: Basis
}
