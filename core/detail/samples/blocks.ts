import { sides } from '../../kinds'
import { specified, type Stated } from '../../units'
import type { Block, Fixing } from '../fixing'

type Placed = Omit<Block, 'id'>

/** Support blocks below, at stated places along the sill. */
export const supportsAt = (length_mm: number, ...places_mm: readonly number[]): readonly Placed[] =>
  places_mm.map(at_mm => ({
    kind: 'support',
    side: 'sill',
    at_mm: specified(at_mm),
    length_mm: specified(length_mm),
  }))

/** Distance blocks at both ends of both jambs. */
export const distancesAt = (height_mm: number): readonly Placed[] =>
  (['left', 'right'] as const).flatMap(side =>
    [150, height_mm - 150].map((at_mm): Placed => ({
      kind: 'distance',
      side,
      at_mm: specified(at_mm),
      length_mm: specified(100),
    })),
  )

/** How many fixings each side has: both jambs, head, sill. A side of which nobody says so is left out. */
export const counts = (jamb: number, head?: number, sill?: number): NonNullable<Fixing['counts']> => {
  const all = { left: jamb, right: jamb, head, sill }
  const stated: { [K in (typeof sides)[number]]?: Stated<number> } = {}
  for (const side of sides) {
    const count = all[side]
    if (count !== undefined) stated[side] = specified(count)
  }
  return stated
}
