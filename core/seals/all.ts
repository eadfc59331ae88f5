import { foam } from './foam'
import { impregnatedTape } from './impregnated-tape'
import { membrane } from './membrane'
import { sealant } from './sealant'
import type { SealKind } from './seal-kind'

/** Every kind of seal. A new kind is one file and one line here. */
export const sealKinds: readonly SealKind[] = [sealant, impregnatedTape, membrane, foam]
