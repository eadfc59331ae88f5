import type { Field } from '../field'
import { askedFields } from './asked'
import { fixingFields, screwAxis, screwDiameter, screwEmbedment } from './fixing'
import { frameMovement, frameSteel } from './frame'
import { jointPlanned, jointTolerance } from './joint'
import { layerLambda, layerMuDry, layerMuWet, layerThickness } from './layer'
import { frameHeight, framePosition, frameWidth } from './opening'
import { revealCover, revealLining } from './reveal'
import { sealFields } from './seal'
import { roomFields } from './room'
import { sillFields } from './sill'
import { siteFields } from './site'
import { surveyFields } from './survey'

/** Every named value of the model. */
export const fields: readonly Field<number>[] = [
  layerThickness,
  layerLambda,
  layerMuDry,
  layerMuWet,
  revealCover,
  revealLining,
  frameMovement,
  frameSteel,
  frameWidth,
  frameHeight,
  framePosition,
  ...surveyFields,
  jointPlanned,
  jointTolerance,
  screwDiameter,
  screwEmbedment,
  screwAxis,
  ...fixingFields,
  ...askedFields,
  ...roomFields,
  ...siteFields,
  ...sillFields,
  ...sealFields,
]
