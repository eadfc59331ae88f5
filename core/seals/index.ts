export type { AnySeal, Bay, Bond, Grip, Laid, Need, SealKind, SealValue, Takes } from './seal-kind'
