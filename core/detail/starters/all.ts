import type { WallPlan } from './wall-plan'
import {
  aeratedConcrete,
  cavityWall,
  cladConcrete,
  insideInsulated,
  insulatedConcrete,
  insulatedMasonry,
  outerRebatedBrick,
  perforatedBlock,
  rebatedBrick,
  solidBrick,
  timberFrame,
} from './walls'

/** Every wall that one can begin with. A new one is data: an entry in its file and a line here. */
export const starters: readonly WallPlan[] = [
  insulatedMasonry,
  insulatedConcrete,
  solidBrick,
  rebatedBrick,
  outerRebatedBrick,
  perforatedBlock,
  aeratedConcrete,
  cavityWall,
  insideInsulated,
  timberFrame,
  cladConcrete,
]
