import { applyEdits, type Project } from '../../detail'
import type { Id } from '../../geometry'
import { lookUp } from '../../practice'
import { type AnySeal, kindOf, type SealValue, serves } from '../../seals'
import { exactly, inWords, isInside, writeQuantity } from '../../units'
import { filled, words } from '../../words'
import type { Place } from '../place'
import { innerResistance, matters, outerResistance } from '../readings/vapour'
import { type Design, stateIt, together } from './fit'

/** Changes of the seals of a joint, followed by what the inner plane then has to declare to be tight enough. */
export const withDeclared = (at: Place, change: Design): Design => {
  const edited = applyEdits(at.project, change.edits)
  return edited.ok ? together([change, declaredInside(edited.value, at)]) : change
}

/**
 * What a product of the inner plane has to declare so that the joint is tighter inside, as far as its kind has such
 * products. Nothing where it is tight enough already.
 */
export const declaredInside = (project: Project, at: Place): Design => {
  const ratio = lookUp(at.practice, 'vapour-order', {})?.then.least
  const most_m = largest(project, at.joint.id)
  if (ratio === undefined || most_m === undefined || ratio * most_m <= smallest(project, at.joint.id))
    return { edits: [], says: [] }
  const sd_m = roundedUp(ratio * most_m)
  const seals = project.joints[at.joint.id]?.seals.filter(it => serves(it, 'inner')) ?? []
  const edits = seals.flatMap(seal =>
    kindOf(seal)
      .values.filter(it => it.unit === 'm' && matters(seal, it, 'inner') && hasProducts(seal, it, sd_m))
      .map(value => stateIt(value.id, seal.id, sd_m)),
  )
  const size = inWords(language => writeQuantity(sd_m, 'm', language))
  return { edits, says: edits.length > 0 ? [filled(productInside, size)] : [] }
}

const productInside = words('product inside with s_d {0}', 'innen ein Produkt mit s_d {0}')

const largest = (project: Project, joint: Id): number | undefined => {
  const outer = outerResistance.fallback(project, joint)?.value
  return outer && Math.max(outer.winter.max, outer.summer.max)
}

const smallest = (project: Project, joint: Id): number => {
  const inner = innerResistance.fallback(project, joint)?.value
  return inner ? Math.min(inner.winter.min, inner.summer.min) : 0
}

/** Whether products of a kind declare so much and not always more. What the kind only may state counts where it is stated. */
const hasProducts = (seal: AnySeal, { key, fallback }: SealValue, sd_m: number): boolean => {
  const band = fallback?.(seal).band
  return band ? isInside(exactly(sd_m), { unit: 'm', ...band }) : seal[key] !== undefined
}

/** Two digits are as many as a product declares. */
const roundedUp = (value: number): number => {
  const step = 10 ** (Math.floor(Math.log10(value)) - 1)
  return Number((Math.ceil(value / step - 1e-9) * step).toPrecision(2))
}
