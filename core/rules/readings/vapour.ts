import type { FieldAt, Project } from '../../detail'
import type { Id, Seasonal } from '../../geometry'
import type { Plane } from '../../kinds'
import { type AnySeal, kindOf, planeResistance, type SealValue, serves } from '../../seals'
import { assumed } from '../../units'
import { type Words, words } from '../../words'
import { computed, type Reading } from '../reading'

/**
 * Vapour resistance of one plane of a joint: its seals one behind the other, dry and humid, as ranges.
 * Missing where the resistance of one of them is not known: it is never guessed.
 */
const resistanceOf = (plane: Plane, id: string, name: Words): Reading<Seasonal> =>
  computed({
    id,
    name,
    of: 'joint',
    compute: (project, joint) => {
      const seals = project.joints[joint]?.seals
      return seals && planeResistance(seals, plane)
    },
    beneath: (project, joint) => sealsIn(project, joint, plane).flatMap(seal => guessedIn(seal, plane)),
  })

export const innerResistance = resistanceOf(
  'inner',
  'joint.sd-inner',
  words('Vapour resistance of the inner plane', 'Dampfwiderstand der inneren Ebene'),
)
export const outerResistance = resistanceOf(
  'outer',
  'joint.sd-outer',
  words('Vapour resistance of the outer plane', 'Dampfwiderstand der äußeren Ebene'),
)

const sealsIn = (project: Project, joint: Id, plane: Plane): readonly AnySeal[] =>
  (project.joints[joint]?.seals ?? []).filter(it => serves(it, plane))

/** The values that the resistance of a seal hangs on and that are assumed; where it is not known, those that are missing. */
export const guessedIn = (seal: AnySeal, plane: Plane): readonly FieldAt[] => {
  const isKnown = kindOf(seal).sd_m(seal, plane) !== undefined
  return kindOf(seal)
    .values.filter(value => {
      const at = seal[value.key]
      if (typeof at === 'object') return at.basis === 'assumed' && matters(seal, value, plane)
      return (
        (isKnown ? value.fallback !== undefined : value.fallback === undefined) && matters(seal, value, plane)
      )
    })
    .map(value => ({ field: value.id, part: seal.id }))
}

/** Whether the resistance of a seal in a plane hangs on a value: it changes when the value goes from end to end. */
export const matters = (seal: AnySeal, value: SealValue, plane: Plane): boolean => {
  const { min = 0, max = 0 } = value.bounds
  const now = kindOf(seal).sd_m(seal, plane)
  return [min, max].some(end => !alike(kindOf(seal).sd_m({ ...seal, [value.key]: assumed(end) }, plane), now))
}

const alike = (a: Seasonal | undefined, b: Seasonal | undefined): boolean =>
  a?.winter.min === b?.winter.min &&
  a?.winter.max === b?.winter.max &&
  a?.summer.min === b?.summer.min &&
  a?.summer.max === b?.summer.max
