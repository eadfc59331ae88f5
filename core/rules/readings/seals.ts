import { type Joint, profileOf, sealOf } from '../../detail'
import { type Plane, planes, sides } from '../../kinds'
import { type AnySeal, type Bay, kindOf, mostDepth_mm, plainBay, serves } from '../../seals'
import { around } from '../../units'
import { type Words, words } from '../../words'
import type { Place } from '../place'
import { computed, placed, type Reading } from '../reading'

/** Whether a seal states a value of that name: what a rule about such values applies to. */
export const hasValue = (seal: AnySeal, field: string): boolean =>
  kindOf(seal).values.some(it => it.id === field)

/** Whether a joint has a sealant bead: a seal that takes a share of its width. */
export const hasBead = (joint: Joint): boolean => joint.seals.some(it => hasValue(it, 'sealant.share'))

/** Every seal round an opening. */
export const sealsRound = ({ round }: Place): readonly AnySeal[] =>
  sides.flatMap(side => round[side]).flatMap(it => it.seals)

/** Rules on membranes apply where there is one round the opening. */
export const hasMembrane = (at: Place): true | Words =>
  sealsRound(at).some(it => hasValue(it, 'membrane.bond-wall')) ||
  words('there is no membrane here', 'hier ist keine Folie')

/** Rules on tapes apply where one lies round the opening. */
export const hasTape = (at: Place): true | Words =>
  sealsRound(at).some(it => hasValue(it, 'tape.least')) ||
  words('there is no tape here', 'hier ist kein Fugenband')

/** Whether a seal only fills what the others leave of the joint. */
export const isFill = (seal: AnySeal, joint: Joint): boolean =>
  kindOf(seal).takesDepth(seal, joint.planned_mm.value) === 'rest'

/** What stands in each plane of a joint. */
export type Filled = Readonly<Record<Plane, readonly Words[]>>

/** The seals of a joint by plane, as they are called. */
export const filledPlanes: Reading<Filled> = computed({
  id: 'joint.planes',
  name: words('Seals by plane', 'Dichtungen je Ebene'),
  of: 'joint',
  compute: (project, joint) => {
    const seals = project.joints[joint]?.seals
    const called = (plane: Plane) =>
      (seals ?? []).filter(it => serves(it, plane)).map(it => kindOf(it).called(it))
    return seals && { inner: called('inner'), middle: called('middle'), outer: called('outer') }
  },
})

/** Diameter of the rod behind a bead; 0 where there is none. */
export const rodDiameter: Reading<number> = computed({
  id: 'sealant.rod-or-none',
  name: words('Backing rod', 'Rundschnur'),
  of: 'seal',
  compute: (project, part) => {
    const seal = sealOf(project, part)?.seal
    const rod = seal?.['rod_mm']
    return seal && (typeof rod === 'object' && typeof rod.value === 'number' ? rod.value : 0)
  },
  beneath: (project, part) => {
    const rod = sealOf(project, part)?.seal['rod_mm']
    return typeof rod === 'object' && rod.basis === 'assumed' ? [{ field: 'sealant.rod', part }] : []
  },
})

/** How many faces a seal is bonded to. */
export const bondedFaces: Reading<number> = computed({
  id: 'seal.bonded-faces',
  name: words('Bonded faces', 'Haftflächen'),
  of: 'seal',
  compute: (project, part) => {
    const found = sealOf(project, part)
    if (!found) return undefined
    const { seal, joint } = found
    return kindOf(seal)
      .bonds(seal, slotOf(joint), behind(joint, seal))
      .filter(it => it.width_mm > 0).length
  },
})

/** How deep a fill is: what the other seals leave of the depth of the frame. */
export const fillDepth: Reading<number> = placed({
  id: 'fill.depth',
  name: words('Depth of the fill', 'Tiefe der Füllung'),
  compute: ({ frame, joint }) => {
    const taken = joint.seals.map(it => kindOf(it).takesDepth(it, joint.planned_mm.value))
    return taken.reduce<number>((left, it) => (it === 'rest' ? left : left - it), profileOf(frame).depth_mm)
  },
})

/** Whether a fill is rated as an air seal. Not stated counts as not rated. */
export const ratedAsAirSeal: Reading<'yes' | 'no'> = computed({
  id: 'fill.rated',
  name: words('Rated as an air seal', 'Als Luftdichtung ausgewiesen'),
  of: 'seal',
  compute: (project, part) => (ratingOf(sealOf(project, part)?.seal) === 'yes' ? 'yes' : 'no'),
  beneath: (project, part) => {
    const seal = sealOf(project, part)?.seal
    const choice = seal && kindOf(seal).choices.find(it => it.key === 'rated')
    return choice && ratingOf(seal) === undefined ? [{ field: choice.id, part }] : []
  },
})

const ratingOf = (seal: AnySeal | undefined): unknown => {
  const rated = seal?.['rated']
  return typeof rated === 'object' ? rated.value : undefined
}

/** The seal next to one, towards the middle of the joint: what a bead without a rod would stick to. */
const behind = (joint: Joint, seal: AnySeal): AnySeal | undefined => {
  const inJoint = joint.seals.filter(it => it.id === seal.id || kindOf(it).serves(it).length > 0)
  const inward = inJoint.toSorted((a, b) => planes.indexOf(b.plane) - planes.indexOf(a.plane))
  const at = inward.findIndex(it => it.id === seal.id)
  return seal.plane === 'inner' ? inward[at - 1] : inward[at + 1]
}

/** A joint as a plain slot: what is bonded to what, and which size is fresh, does not hang on its depth. */
export const slotOf = (joint: Joint): Bay =>
  plainBay(around(joint.planned_mm.value, joint.tolerance_mm.value), mostDepth_mm)
