import { distanceBlocks } from './blocks/distance-blocks'
import { supportBlocks } from './blocks/support-blocks'
import { burglary } from './duty/burglary'
import { frameForward } from './duty/frame-forward'
import { guarding } from './duty/guarding'
import { drillingRule } from './fixing/drilling'
import { edgeDistanceRule } from './fixing/edge-distance'
import { embedmentDepth } from './fixing/embedment'
import { fixingAtMember } from './fixing/fixing-at-member'
import { fixingCorner } from './fixing/fixing-corner'
import { fixingCount } from './fixing/fixing-count'
import { fixingSpacing } from './fixing/fixing-spacing'
import { screwInTimber } from './fixing/screw-in-timber'
import { steelCore } from './fixing/steel-core'
import { surfaceCriterion } from './heat/surface-criterion'
import { jointForMovement } from './movement/joint-for-movement'
import { leastJoint } from './movement/least-joint'
import { perimeterGap } from './movement/perimeter-gap'
import { foamAsAirSeal } from './planes/foam-as-air-seal'
import { jointDries } from './planes/joint-dries'
import { planesFilled } from './planes/planes-filled'
import { vapourOrder } from './planes/vapour-order'
import { frameCover } from './place/cover'
import { framePlace } from './place/frame-position'
import { visibleFace } from './place/visible-face'
import { planesMeet } from './planes/planes-meet'
import { airLine } from './planes/air-line'
import { plasterEdge } from './planes/plaster-edge'
import { jointSound } from './planes/joint-sound'
import { sealantClassRule } from './sealant/sealant-class'
import { soundSubstrate } from './sealant/substrate'
import { workTemperature } from './sealant/work-temperature'
import { elementLength } from './sealant/element-length'
import { compatibleNeighbours } from './sealant/compatible'
import { filletLeg } from './sealant/fillet-leg'
import { flankAngle } from './tape/flank-angle'
import { flankFace } from './tape/flank-face'
import { tapeCorners } from './tape/tape-corners'
import { tapeOverlength } from './tape/tape-overlength'
import { tapeLevel } from './tape/tape-level'
import { membraneLap } from './seals/membrane-lap'
import { peelTest } from './seals/peel-test'
import { workDry } from './seals/work-dry'
import { sheetDuty } from './seals/sheet-duty'
import { frameTrue } from './fixing/frame-true'
import { fixingMetal } from './fixing/fixing-metal'
import { fixingLoad } from './load/fixing-load'
import { fixingBending } from './load/fixing-bending'
import { blockPressure } from './load/block-pressure'
import { freeSpan } from './load/free-span'
import { headJoint } from './load/head-joint'
import { bracketSlot } from './load/bracket-slot'
import { guardHeight } from './duty/guard-height'
import { guardInfill } from './duty/guard-infill'
import { drainSlots } from './water/drain-slots'
import { rainLaps } from './water/rain-laps'
import { stopBeadLength } from './water/stop-bead-length'
import { boxSealed } from './water/box-sealed'
import { thresholdFall } from './water/threshold-fall'
import { thresholdStep } from './water/threshold-step'
import { thresholdUpstand } from './water/threshold-upstand'
import { rainClass } from './water/rain-class'
import { checkedRebate } from './water/checked-rebate'
import { openWeather } from './water/open-weather'
import { surveyedJoint } from './movement/surveyed-joint'
import { openingSize } from './movement/opening-size'
import { timberMoisture } from './site/timber-moisture'
import { workOrder } from './site/work-order'
import { screening } from './site/screening'
import { fireJoint } from './site/fire-joint'
import { ventilation } from './site/ventilation'
import type { AnyRule } from './rule'
import { backingRod } from './sealant/backing-rod'
import { beadFaces } from './sealant/bonded-faces'
import { sealantDepth } from './sealant/sealant-depth'
import { jointThere } from './seals/joint-there'
import { sealPlaced } from './seals/seal-placed'
import { membraneOnFrame, membraneOnWall } from './seals/membrane-bonds'
import { membraneOnReveal } from './seals/membrane-on-reveal'
import { membraneSlack } from './seals/membrane-slack'
import { secondPlaneRule } from './sill/second-plane'
import { sillEndDam } from './sill/sill-end-dam'
import { sillUpstand } from './sill/sill-upstand'
import { sillEndGap } from './sill/sill-end-gap'
import { sillFall } from './sill/sill-fall'
import { sillLengthRule } from './sill/sill-length'
import { sillOverhang } from './sill/sill-overhang'
import { sillThroat } from './sill/sill-throat'
import { tapeClassRule } from './tape/tape-class'
import { tapeFlanks } from './tape/tape-flanks'
import { tapeLowerHalf } from './tape/tape-lower-half'
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
  tapeLowerHalf,
  tapeClassRule,
  tapeFlanks,
  jointThere,
  sealPlaced,
  membraneOnFrame,
  membraneOnWall,
  membraneSlack,
  membraneOnReveal,
  fixingCorner,
  fixingSpacing,
  fixingCount,
  fixingAtMember,
  embedmentDepth,
  edgeDistanceRule,
  screwInTimber,
  steelCore,
  drillingRule,
  supportBlocks,
  distanceBlocks,
  frameCover,
  visibleFace,
  framePlace,
  sillFall,
  sillOverhang,
  sillThroat,
  sillEndDam,
  sillUpstand,
  sillEndGap,
  sillLengthRule,
  secondPlaneRule,
  guarding,
  burglary,
  frameForward,
  surfaceCriterion,
  jointDries,
  planesMeet,
  airLine,
  plasterEdge,
  jointSound,
  sealantClassRule,
  soundSubstrate,
  workTemperature,
  elementLength,
  compatibleNeighbours,
  filletLeg,
  flankAngle,
  flankFace,
  tapeCorners,
  tapeOverlength,
  tapeLevel,
  membraneLap,
  peelTest,
  workDry,
  sheetDuty,
  frameTrue,
  fixingMetal,
  fixingLoad,
  fixingBending,
  blockPressure,
  freeSpan,
  headJoint,
  bracketSlot,
  guardHeight,
  guardInfill,
  drainSlots,
  rainLaps,
  thresholdUpstand,
  thresholdStep,
  thresholdFall,
  stopBeadLength,
  boxSealed,
  rainClass,
  checkedRebate,
  openWeather,
  surveyedJoint,
  openingSize,
  timberMoisture,
  workOrder,
  screening,
  fireJoint,
  ventilation,
]
