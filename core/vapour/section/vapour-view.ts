import type { Id } from '../../geometry'
import type { SectionCase } from '../../heat'
import type { AnySeal } from '../../seals'
import type { Section } from '../../section'
import type { Words } from '../../words'

/** What vapour needs to know of a material. */
export type Resister = {
  readonly name: Words
  readonly mu?: { readonly dry: number; readonly wet: number }
}

/** A section as vapour sees it: the cut, the heat case that it was turned into, materials and seals. */
export type VapourView = {
  readonly section: Section
  readonly turned: SectionCase
  readonly materialOf: (id: Id, part: Id) => Resister | undefined
  /** seals of the joint, with what is declared of them */
  readonly seals: readonly AnySeal[]
  /** where the middle of the joint lies across it */
  readonly jointMiddle_mm: number
}

/**
 * From this factor on a body leaves the domain: a centimetre of it is worth 200 m of air. That takes out glass, metal, the
 * gas of sealed units, and hard plastics whose chambers nobody knows the air of. Ours.
 */
export const tight = 20_000
