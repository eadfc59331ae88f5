import type { Id, Line } from '../geometry'
import { words } from '../words'
import type { Bay, Fallback, SealChoice } from './seal-kind'
import { yesNo } from './yes-no'

/** What sealants are to vapour: hybrid 1000 to 3000, silicone 5000 (EN ISO 10456 table 3), polysulphide 10000, from memory. */
export const sealantMu: Fallback = {
  value: 5000,
  band: { min: 1000, max: 10000 },
  why: words('sealants lie between 1000 and 10000; silicone 5000', 'Dichtstoffe liegen zwischen 1000 und 10000; Silikon 5000'), // prettier-ignore
}

/** A thin tape that a bead does not stick to, where there is no room for a rod. */
export const bondBreaker: SealChoice = {
  id: 'sealant.breaker',
  key: 'breaker',
  name: words('Bond breaker', 'Trennstreifen'),
  choices: yesNo,
  because: words(
    'a tape that the bead does not stick to',
    'ein Streifen, an dem der Dichtstoff nicht haftet',
  ),
}
export const breakerTape = words('bond breaker tape', 'Trennstreifen')

/** The tape as a line across a joint at a depth: polyethylene film, ours, of no weight for heat. */
export const breakerLine = (part: Id, bay: Bay, y_mm: number): Line => ({
  id: `${part}.breaker`,
  part,
  path: [
    [bay.frameFace[0][0], y_mm],
    [bay.wallFace[0][0], y_mm],
  ],
  thickness_mm: 0.1,
  lambda_W_mK: 0.33,
})
