export { around, bandOf, exactly, isInside, marginOf, sameLength_mm } from './band'
export type { Band, Bounds } from './band'
export { readQuantity } from './read'
export type { Reading, Wanted } from './read'
export { readBand } from './read-band'
export { longestText } from './read-sum'
export { ok, refused } from './result'
export type { Problem, Result } from './result'
export { assumed, bases, basisName, measured, specified, stated } from './stated'
export type { Basis, Stated } from './stated'
export { unitSign, units } from './unit'
export type { Unit } from './unit'
export {
  inWords,
  minus,
  noBreak,
  writeBand,
  writeBounds,
  writeNumber,
  writeQuantity,
  writeUnit,
} from './write'
export { decimalsThatTell, usualDecimals, writeCompared } from './write-compared'
export type { WrittenComparison } from './write-compared'
