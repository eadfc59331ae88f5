import { filletBead } from './fillet-bead'
import { foam } from './foam'
import { groundSheet } from './ground-sheet'
import { impregnatedTape } from './impregnated-tape'
import { liquidMembrane } from './liquid-membrane'
import { membrane } from './membrane'
import { multifunctionTape } from './multifunction-tape'
import { packedWool } from './packed-wool'
import { plasterStopBead } from './plaster-stop-bead'
import { renderStopBead } from './render-stop-bead'
import { sealant } from './sealant'
import type { SealKind } from './seal-kind'
import { variableMembrane } from './variable-membrane'

/** Every kind of seal. A new kind is one file and one line here. */
export const sealKinds: readonly SealKind[] = [
  sealant,
  filletBead,
  impregnatedTape,
  multifunctionTape,
  membrane,
  variableMembrane,
  liquidMembrane,
  groundSheet,
  foam,
  packedWool,
  plasterStopBead,
  renderStopBead,
]
