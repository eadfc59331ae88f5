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
