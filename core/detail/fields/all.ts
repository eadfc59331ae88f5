import type { Field } from '../field'
import { askedFields } from './asked'
import { fixingFields, screwAxis, screwDiameter, screwEmbedment } from './fixing'
import { fixingSteelFields } from './fixing-steel'
import { frameMovement, frameSteel } from './frame'
import { jointPlanned, jointTolerance } from './joint'
import { edgeWidth, layerLambda, layerMuDry, layerMuWet, layerThickness } from './layer'
import { frameHeight, framePosition, frameWidth } from './opening'
import { openingPartFields } from './parts-of-opening'
import { revealCover, revealLining, revealShapes } from './reveal'
import { sealFields } from './seal'
import { roomFields } from './room'
import { sillFields } from './sill'
import { siteFields } from './site'
import { surveyFields } from './survey'
import { thresholdFields } from './threshold'
import { toldFields } from './told'
import { surveyOffset, zoneEnd } from './zone'

/** Every named value of the model. */
export const fields: readonly Field<number>[] = [
  layerThickness,
  layerLambda,
  layerMuDry,
  layerMuWet,
  edgeWidth,
  revealCover,
  revealLining,
  ...revealShapes,
  frameMovement,
  frameSteel,
  frameWidth,
  frameHeight,
  framePosition,
  ...surveyFields,
  surveyOffset,
  zoneEnd,
  jointPlanned,
  jointTolerance,
  screwDiameter,
  screwEmbedment,
  screwAxis,
  ...fixingFields,
  ...fixingSteelFields,
  ...askedFields,
  ...toldFields,
  ...roomFields,
  ...siteFields,
  ...sillFields,
  ...thresholdFields,
  ...openingPartFields,
  ...sealFields,
]
