export { sealKinds } from './all'
export { arrange } from './arrange'
export type { Placed } from './arrange'
export { plainBay } from './bay'
export { kindOf, serves } from './kind-of'
export { inSeries, planeRatio, planeResistance, sideBySide } from './plane-resistance'
export { rodSizes_mm } from './sealant'
export { mostDepth_mm } from './seal-kind'
export type { AnySeal, Bay, Bond, Choice, End, Fallback, Grip, Laid, Need, SealChoice, SealKind, SealValue, Takes } from './seal-kind' // prettier-ignore
