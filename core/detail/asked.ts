import type { Stated } from '../units'

export const exposures = ['exposed', 'sheltered', 'covered'] as const
export type Exposure = (typeof exposures)[number]

/** What the job asks of an opening beside closing it. Absent: not stated. */
export type Asked = {
  /** how rain reaches the outer seal */
  readonly exposure?: Stated<Exposure>
  /** whether the element keeps people from falling out */
  readonly guarding?: Stated<'yes' | 'no'>
  /** whether its fixing has a structural proof of its own; no: it follows a spacing table only */
  readonly guardProof?: Stated<'yes' | 'no'>
  /** whether it must resist burglary */
  readonly burglary?: Stated<'yes' | 'no'>
  /** mass of the whole element */
  readonly mass_kg?: Stated<number>
  /** from the inside floor to the top of the sill, and from the outside ground */
  readonly sillHeight_mm?: Stated<number>
  readonly fall_mm?: Stated<number>
  /** strength of a bearing layer of masonry is known, or has to be tested on site */
  readonly baseKnown?: Stated<'yes' | 'no'>
}
