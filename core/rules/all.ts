import { jointForMovement } from './movement/joint-for-movement'
import { leastJoint } from './movement/least-joint'
import { perimeterGap } from './movement/perimeter-gap'
import { foamAsAirSeal } from './planes/foam-as-air-seal'
import { planesFilled } from './planes/planes-filled'
import { vapourOrder } from './planes/vapour-order'
import type { AnyRule } from './rule'
import { backingRod } from './sealant/backing-rod'
import { beadFaces } from './sealant/bonded-faces'
import { sealantDepth } from './sealant/sealant-depth'
import { tapeRange } from './tape/tape-range'

/** Every rule. A new one is one file and one line here. */
export const rules: readonly AnyRule[] = [
  planesFilled,
  foamAsAirSeal,
  vapourOrder,
  sealantDepth,
  backingRod,
  beadFaces,
  leastJoint,
  jointForMovement,
  perimeterGap,
  tapeRange,
]
