import type { Profile } from './profile'
import { pvc76 } from './pvc-76'
import { timber78 } from './timber-78'

/** Every frame outline that the program knows. */
export const profiles: readonly Profile[] = [timber78, pvc76]
