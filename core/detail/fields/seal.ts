import { type AnySeal, kindOf, type SealValue, sealKinds } from '../../seals'
import type { Id } from '../../geometry'
import { assumed, type Bounds, type Stated } from '../../units'
import type { Field } from '../field'
import { frameOf, openingsWith, profileOf, sealOf } from '../find'
import type { Project } from '../model'
import { numberField } from './number-field'
import { withSeal, withSealKey } from './tables'

/** One field for each value that kinds of seal state of themselves: a new kind brings its fields along. */
export const sealFields: readonly Field<number>[] = firstOfEach(sealKinds.flatMap(kind => kind.values)).map(
  ({ id, name, unit, bounds, because }) =>
    numberField({
      id,
      name,
      unit,
      of: 'seal',
      read: (project, part) => {
        const found = valueOf(project, part, id)
        return found && numberAt(found.seal, found.value)
      },
      fallback: (project, part) => {
        const found = valueOf(project, part, id)
        const fallback = found?.value.fallback?.(found.seal)
        return fallback && { ...assumed(fallback.value), origin: 'material', because: fallback.why }
      },
      allowed: (project, part) => {
        const value = valueOf(project, part, id)?.value ?? { bounds, because, within: undefined }
        return {
          bounds: value.within === 'depth' ? withinDepth(project, part, value.bounds) : value.bounds,
          because: value.because,
        }
      },
      write: (project, part, to) => {
        const key = valueOf(project, part, id)?.value.key
        return key === undefined ? project : withSeal(project, part, seal => withSealKey(seal, key, to))
      },
    }),
)

/** Several kinds may state the same value, each within bounds of its own: it is one field. */
function firstOfEach(all: readonly SealValue[]): readonly SealValue[] {
  return all.filter((it, i) => all.findIndex(other => other.id === it.id) === i)
}

/** A seal and its kind's own entry for a value, where it has one. */
const valueOf = (
  project: Project,
  part: Id,
  id: string,
): { readonly seal: AnySeal; readonly value: SealValue } | undefined => {
  const seal = sealOf(project, part)?.seal
  const value = seal && kindOf(seal).values.find(it => it.id === id)
  return seal && value && { seal, value }
}

/** Bounds with their upper end at the depth of the shallowest frame that the seal's joint goes along. */
const withinDepth = (project: Project, part: Id, bounds: Bounds): Bounds => {
  const joint = sealOf(project, part)?.joint.id
  const depths = openingsWith(project, joint ?? part).map(it => profileOf(frameOf(project, it.id)).depth_mm)
  return { ...bounds, max: Math.min(bounds.max ?? Infinity, ...depths) }
}

const numberAt = (seal: AnySeal, value: SealValue): Stated<number> | undefined => {
  const found = seal[value.key]
  // The kind's schema makes each listed value a stated number.
  return typeof found === 'object' ? (found as Stated<number>) : undefined
}
