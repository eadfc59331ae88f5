import type { Field } from '../field'
import { askedFields } from './asked'
import { fixingFields, screwAxis, screwDiameter, screwEmbedment } from './fixing'
import { frameMovement, frameSteel } from './frame'
import { jointPlanned, jointTolerance } from './joint'
import { layerThickness } from './layer'
import { frameHeight, framePosition, frameWidth } from './opening'
import { revealCover, revealLining } from './reveal'
import { sealFields } from './seal'
import { sillFields } from './sill'
import { surveyFields } from './survey'

/** Every named value of the model. */
export const fields: readonly Field<number>[] = [
  layerThickness,
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
  ...sillFields,
  ...sealFields,
]
