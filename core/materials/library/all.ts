import type { Id } from '../../geometry'
import type { Material } from '../material'
import { air } from './air'
import { concrete } from './concrete'
import { glass } from './glass'
import { ground } from './ground'
import { insulation } from './insulation'
import { masonry } from './masonry'
import { metal } from './metal'
import { plaster } from './plaster'
import { plastic } from './plastic'
import { sealing } from './sealing'
import { timber } from './timber'

/** Every material that the program knows, family by family. A project keeps copies of those that it uses. */
export const materials: readonly Material[] = [
  ...concrete,
  ...masonry,
  ...ground,
  ...plaster,
  ...insulation,
  ...timber,
  ...metal,
  ...plastic,
  ...glass,
  ...sealing,
  ...air,
]

/** The material of that name, if the library has it. */
export const material = (id: Id): Material | undefined => byId.get(id)

const byId: ReadonlyMap<Id, Material> = new Map(materials.map(it => [it.id, it]))
