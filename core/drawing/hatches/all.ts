import { cast } from './entries/cast'
import { glass } from './entries/glass'
import { ground } from './entries/ground'
import { insulation } from './entries/insulation'
import { masonry } from './entries/masonry'
import { metal } from './entries/metal'
import { sealing } from './entries/sealing'
import { timber } from './entries/timber'
import type { Hatch } from './hatch'

/** Every hatch, in the order of a legend. */
export const hatches: readonly Hatch[] = [
  ...masonry,
  ...cast,
  ...insulation,
  ...timber,
  ...metal,
  ...sealing,
  ...glass,
  ...ground,
]

const byKey: ReadonlyMap<string, Hatch> = new Map(hatches.map(it => [it.key, it]))

/** The hatch of a key; a key that nobody knows is a fault of ours. */
export const hatchOf = (key: string): Hatch => {
  const hatch = byKey.get(key)
  if (hatch === undefined) throw new Error(`no hatch is named "${key}"`)
  return hatch
}
