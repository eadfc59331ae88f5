import type { Id } from '../geometry'
import type { Stated } from '../units'

export const secondPlanes = ['none', 'tray', 'membrane'] as const
export type SecondPlane = (typeof secondPlanes)[number]

/** What closes an opening at its foot: the outside sill, the plane that drains below it, the board inside. */
export type Sill = {
  readonly id: Id
  readonly material: Id
  readonly thickness_mm: Stated<number>
  /** fall to the outside */
  readonly slope_deg: Stated<number>
  /** from the finished outer face to the drip edge */
  readonly overhang_mm: Stated<number>
  /** height of the upstand against the frame */
  readonly upstand_mm: Stated<number>
  readonly endDam_mm?: Stated<number>
  readonly endGap_mm?: Stated<number>
  /** in one piece; absent: what the opening leaves between both end gaps */
  readonly length_mm?: Stated<number>
  /** groove below the front edge that water drips from, its distance from the finished face of the wall */
  readonly throat_mm?: Stated<number>
  readonly secondPlane?: Stated<SecondPlane>
  readonly board?: {
    readonly material: Id
    readonly thickness_mm: Stated<number>
    readonly overhang_mm: Stated<number>
  }
}
