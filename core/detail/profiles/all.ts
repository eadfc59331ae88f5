import { aluminium75 } from './aluminium-75'
import type { Profile } from './profile'
import { pvc76, pvc76Double } from './pvc-76'
import { pvc70, pvc74, timber68, timberAluminium110 } from './resized'
import { timber78, timber78Double } from './timber-78'
import { timberAluminium90 } from './timber-aluminium-90'

/** Every frame outline that the program knows. */
export const profiles: readonly Profile[] = [
  timber78,
  timber78Double,
  timberAluminium90,
  pvc76,
  pvc76Double,
  aluminium75,
  timber68,
  timberAluminium110,
  pvc74,
  pvc70,
]
