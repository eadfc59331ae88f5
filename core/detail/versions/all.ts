import { from1to2 } from './from-1-to-2'
import type { Upgrade } from './upgrade'

/** Every step from an older version to the next, oldest first. */
export const upgrades: readonly Upgrade[] = [from1to2]
