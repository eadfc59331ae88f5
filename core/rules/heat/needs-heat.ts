import { jointDries } from '../planes/joint-dries'
import { surfaceCriterion } from './surface-criterion'

/** Rules that somebody has to solve heat for. A check without it lists them as not asked. */
export const needsHeat: readonly string[] = [surfaceCriterion.id, jointDries.id]
