import { applyEdits, type Edit, type Project } from '../../detail'
import type { Plane } from '../../kinds'
import { type AnySeal, kindOf, type SealValue } from '../../seals'
import { exactly, inWords, isInside, writeQuantity } from '../../units'
import { filled, isSome, type Some, type Words, words } from '../../words'
import type { Remedy } from '../finding'
import type { Place } from '../place'
import { outerResistance } from '../readings/vapour'
import { design } from './design'
import { stateIt } from './fit'
import { replacements } from './remedies'

/** Asks for a product inside whose declared resistance is `ratio` times that of the outer plane. */
export const tighterInside = (at: Place, ratio: number): readonly Remedy[] =>
  declaredInside(at.project, at, ratio).map(({ say, edits }) => ({
    kind: 'change',
    say: filled(words('Choose: {0}', 'Wählen: {0}'), say),
    edits,
  }))

/** Puts seals of other kinds into some planes, the inner one with the resistance that the outer one then asks for. */
export const otherSeals = (at: Place, planes: readonly Plane[], ratio: number): readonly Remedy[] =>
  replacements(at, planes).flatMap(({ edits, says }) => {
    const edited = applyEdits(at.project, edits)
    const [declared] = edited.ok ? declaredInside(edited.value, at, ratio) : []
    return design(at, {
      edits: [...edits, ...(declared?.edits ?? [])],
      says: [...says, ...(declared ? [declared.say] : [])],
      cures: () => true,
    })
  })

type Declared = { readonly say: Words; readonly edits: Some<Edit> }

/** What the products of the inner plane have to declare, as far as their kind has such products. */
const declaredInside = (project: Project, at: Place, ratio: number): readonly Declared[] => {
  const joint = project.joints[at.joint.id]
  const outer = outerResistance.fallback(project, at.joint.id)?.value
  if (!joint || !outer) return []
  const sd_m = roundedUp(ratio * Math.max(outer.winter.max, outer.summer.max))
  const say = filled(
    words('product inside with s_d {0}', 'innen ein Produkt mit s_d {0}'),
    inWords(language => writeQuantity(sd_m, 'm', language)),
  )
  return joint.seals
    .filter(it => it.plane === 'inner')
    .flatMap(seal => {
      const edits = kindOf(seal)
        .values.filter(value => value.unit === 'm' && hasProducts(seal, value, sd_m))
        .map(value => stateIt(value.id, seal.id, sd_m))
      return isSome(edits) ? [{ say, edits }] : []
    })
}

/** Whether products of a kind declare so much and not always more. What the kind only may state counts where it is stated. */
const hasProducts = (seal: AnySeal, { key, fallback }: SealValue, sd_m: number): boolean =>
  fallback?.band ? isInside(exactly(sd_m), { unit: 'm', ...fallback.band }) : seal[key] !== undefined

/** Two digits are as many as a product declares. */
const roundedUp = (value: number): number => {
  const step = 10 ** (Math.floor(Math.log10(value)) - 1)
  return Number((Math.ceil(value / step - 1e-9) * step).toPrecision(2))
}
