import { type AnySeal, kindOf, type SealValue, sealKinds } from '../../seals'
import type { Id } from '../../geometry'
import { assumed, type Bounds, type Stated } from '../../units'
import type { Field } from '../field'
import { frameOf, openingsWith, profileOf, sealOf } from '../find'
import type { Project } from '../model'
import { numberField } from './number-field'
import { withSeal } from './tables'

/** One field for each value that a kind of seal states of itself: a new kind brings its fields along. */
export const sealFields: readonly Field<number>[] = sealKinds.flatMap(kind =>
  kind.values.map(value => {
    const has = (seal: AnySeal | undefined): seal is AnySeal => seal !== undefined && kindOf(seal) === kind
    return numberField({
      ...value,
      of: 'seal',
      read: (project, part) => {
        const seal = sealOf(project, part)?.seal
        return has(seal) ? numberAt(seal, value) : undefined
      },
      fallback: (project, part) =>
        value.fallback && has(sealOf(project, part)?.seal)
          ? { ...assumed(value.fallback.value), origin: 'material', because: value.fallback.why }
          : undefined,
      allowed: (project, part) => ({
        bounds: value.within === 'depth' ? withinDepth(project, part, value.bounds) : value.bounds,
        because: value.because,
      }),
      write: (project, part, to) =>
        withSeal(project, part, seal => (has(seal) ? withValue(seal, value, to) : seal)),
    })
  }),
)

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

/** A value that the kind needs stays; one that may be left out goes when the statement is taken back. */
const withValue = (seal: AnySeal, value: SealValue, to: Stated<number> | undefined): AnySeal => {
  if (to !== undefined) return { ...seal, [value.key]: to }
  const { [value.key]: _, ...rest } = seal
  // Leaving a value out keeps kind, id and plane.
  const without = rest as AnySeal
  return kindOf(seal).schema.safeParse(without).success ? without : seal
}
