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
export { lookUp } from './look-up'
