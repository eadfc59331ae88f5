import type { Section } from '../../section'
import type { Problem } from '../../units'
import { words } from '../../words'

/**
 * Why there is no vapour at a threshold: floor and ground lie before both ends of its joint, and they are wet for other
 * reasons than diffusion. A path that ended in them would say something that is not so.
 */
export const onGround = ({ levels, zone }: Section): Problem | undefined =>
  levels && { at: zone, say: noVapourOnGround }

export const noVapourOnGround = words(
  'vapour is not computed at a threshold: floor and ground lie before its joint',
  'an einer Schwelle wird keine Feuchte gerechnet: Fußboden und Erdreich liegen vor ihrer Fuge',
)
