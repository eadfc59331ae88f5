import { type Joint, sealOf } from '../../detail'
import { type Plane, planes } from '../../kinds'
import { type AnySeal, type Bay, kindOf, mostDepth_mm } from '../../seals'
import { around, assumed } from '../../units'
import { type Words, words } from '../../words'
import { computed, type Reading } from '../reading'

/** Whether a seal states a value of that name: what a rule about such values applies to. */
export const hasValue = (seal: AnySeal, field: string): boolean =>
  kindOf(seal).values.some(it => it.id === field)

/** Whether a joint has a sealant bead: a seal that takes a share of its width. */
export const hasBead = (joint: Joint): boolean => joint.seals.some(it => hasValue(it, 'sealant.share'))

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
      (seals ?? []).filter(it => it.plane === plane).map(it => kindOf(it).called(it))
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
      .bonds(seal, plainBay(joint), behind(joint, seal))
      .filter(it => it.width_mm > 0).length
  },
})

/** What a bead may be called an air seal for: the product is rated so. Not stated counts as not rated. */
export const ratedAsAirSeal: Reading<'yes' | 'no'> = {
  id: 'fill.rated',
  name: words('Rated as an air seal', 'Als Luftdichtung ausgewiesen'),
  of: 'seal',
  read: (project, part) => {
    const rated = sealOf(project, part)?.seal['rated']
    if (typeof rated !== 'object') return undefined
    return { ...rated, value: rated.value === 'yes' ? 'yes' : 'no' }
  },
  fallback: () => ({ ...assumed('no'), origin: 'practice' }),
}

/** The seal next to one, towards the middle of the joint: what a bead without a rod would stick to. */
const behind = (joint: Joint, seal: AnySeal): AnySeal | undefined => {
  const inward = joint.seals.toSorted((a, b) => planes.indexOf(b.plane) - planes.indexOf(a.plane))
  const at = inward.findIndex(it => it.id === seal.id)
  return seal.plane === 'inner' ? inward[at - 1] : inward[at + 1]
}

/** The joint as a plain slot of its planned width: how many faces there are does not hang on its depth. */
export const plainBay = (joint: Joint): Bay => {
  const width_mm = joint.planned_mm.value
  return {
    width_mm: around(width_mm, joint.tolerance_mm.value),
    from_mm: 0,
    to_mm: mostDepth_mm,
    wallFace: [[0, 0], [0, mostDepth_mm]],
    frameFace: [[width_mm, 0], [width_mm, mostDepth_mm]],
    flank: [],
  } // prettier-ignore
}
