import type { AnySeal } from '../../seals'

/** Whether a bead lies on a tape that it does not stick to, in place of a rod. */
export const hasBreaker = (seal: AnySeal): boolean => {
  const breaker = seal['breaker']
  return seal['rod_mm'] === undefined && typeof breaker === 'object' && breaker.value === 'yes'
}
