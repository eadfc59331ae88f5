import type { Id } from '../geometry'
import type { AnchorBase } from '../kinds'
import type { Citation } from '../sources'
import type { Words } from '../words'

/** What an entry of the material library states. */
export type Material = {
  readonly id: Id
  readonly name: Words
  /** key of the hatch that it is drawn with */
  readonly hatch: string
  readonly lambda_W_mK: number
  /** vapour resistance factor, dry and humid; absent: not known (declared by the product) */
  readonly mu?: { readonly dry: number; readonly wet: number }
  /** what it is to a fixing; absent: nothing is fixed into it */
  readonly base?: AnchorBase
  /** it holds a tape without giving way, though nothing is fixed into it: boards, stone, profiles */
  readonly firm?: true
  /** infrared emissivity of its surface, for cavities */
  readonly emissivity: number
  /** who gives the conductivity; vapour factors and emissivities are from memory (EN ISO 10456, EN ISO 10077-2) */
  readonly cite: Citation
}
