export { anchorBaseName, anchorBases, isMasonry, isWeakBase } from './anchor-base'
export type { AnchorBase } from './anchor-base'
export {
  duties,
  dutyName,
  frameMaterialName,
  frameMaterials,
  planeName,
  planes,
  revealFormName,
  revealForms,
  sideName,
  sides,
} from './kinds'
export type { Duty, FrameMaterial, Plane, RevealForm, Side } from './kinds'
export { reversalEvidence, reversalName, reversals } from './reversal'
export type { Reversal } from './reversal'
