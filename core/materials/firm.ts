import { material } from './library/all'
import type { Material } from './material'

/**
 * Whether a material gives a tape or a membrane a firm flank: fixings hold in it, or it is stated to be firm. A copy that
 * a project keeps may be older than this class; what a material is does not change.
 */
export const isFirm = (it: Material | undefined): boolean => {
  const known = it && material(it.id)
  return (it?.firm ?? known?.firm) === true || (it?.base ?? known?.base) !== undefined
}
