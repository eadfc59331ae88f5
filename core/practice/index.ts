export { practice, practices } from './all'
export { frameMovement } from './frame-movement'
export type { FrameMovement } from './frame-movement'
export type {
  BeadDepth,
  IfBroken,
  LimitKey,
  LimitShapes,
  MovementBasis,
  OwnRow,
  Practice,
  Row,
  Tier,
  When,
} from './limit'
export type { Accepted, Bounded } from './work-shapes'
export { lookUp } from './look-up'
export { practiceOf } from './practice-of'
export { limitKeys, ownRow } from './own-row'
