import type { Joint } from '../../detail'
import { type Plane, planeName } from '../../kinds'
import { type AnySeal, kindOf, type SealKind, sealKinds } from '../../seals'
import { filled, same, type Words, words } from '../../words'
import type { Remedy } from '../finding'
import type { Place } from '../place'
import { hasValue, slotOf } from '../readings/seals'
import { withDeclared } from './declared'
import { design } from './design'
import { type Design, lengthIn } from './fit'
import type { Room } from './sizes'

/** Designs the joint anew with the seals that it has, so that its width cures. */
export const otherWidth = (at: Place, cures?: (room: Room) => boolean): readonly Remedy[] =>
  design(at, { edits: [], says: [] }, cures)

/** Puts each other kind of seal that serves the plane in the place of one. */
export function* replaceSeal(at: Place, seal: AnySeal): Iterable<Remedy> {
  for (const kind of otherKinds(at, seal)) yield* design(at, withDeclared(at, replacement([{ seal, kind }])))
}

/** Puts other kinds of seal into some planes at once, in every combination. A plane with several seals is left as it is. */
export function* replacePlanes(at: Place, planes: readonly Plane[]): Iterable<Remedy> {
  const ways = planes.reduce<readonly (readonly Swap[])[]>(
    (so, plane) => {
      const [seal, ...more] = at.joint.seals.filter(it => it.plane === plane)
      if (!seal || more.length > 0) return []
      return so.flatMap(swaps => otherKinds(at, seal).map(kind => [...swaps, { seal, kind }]))
    },
    [[]],
  )
  for (const swaps of ways) yield* design(at, withDeclared(at, replacement(swaps)))
}

type Swap = { readonly seal: AnySeal; readonly kind: SealKind }
const otherKinds = (at: Place, seal: AnySeal): readonly SealKind[] =>
  serving(seal.plane, at.joint).filter(kind => kind.kind !== seal.kind)

const replacement = (swaps: readonly Swap[]): Design => ({
  edits: swaps.map(({ seal, kind }) => ({ kind: 'replace', part: seal.id, seal: kind.kind })),
  says: swaps.map(({ seal, kind }) => inPlane(kind, seal.plane)),
})

/** Puts a seal of another kind in the place of the only bead of a joint. */
export function* replaceBead(at: Place): Iterable<Remedy> {
  const [bead, ...more] = at.joint.seals.filter(it => hasValue(it, 'sealant.share'))
  if (bead && more.length === 0) yield* replaceSeal(at, bead)
}

/** Closes some planes: by a seal in each, in every combination of the kinds that serve them, or by one through them all. */
export function* closePlanes(at: Place, planes: readonly Plane[]): Iterable<Remedy> {
  for (const chosen of fillings(at.joint, planes))
    yield* design(at, withDeclared(at, fillingOf(chosen, at.joint)))
  for (const seal of at.joint.seals) {
    const all = [...planes, ...kindOf(seal).serves(seal)]
    for (const kind of sealKinds) {
      if (kind.kind === seal.kind || !isProposed(kind) || !kind.planes.includes(seal.plane)) continue
      const served = servedBy({ kind, plane: seal.plane }, at.joint)
      if (all.every(plane => served.includes(plane)))
        yield* design(at, withDeclared(at, replacement([{ seal, kind }])))
    }
  }
}

const fillingOf = (chosen: readonly Filling[], joint: Joint): Design => ({
  edits: chosen.map(it => ({ kind: 'fill', joint: joint.id, plane: it.plane, seal: it.kind.kind })),
  says: chosen.map(it => inPlane(it.kind, it.plane)),
})

type Filling = { readonly plane: Plane; readonly kind: SealKind }

/** Every way to fill some planes: one seal for each, and bodies that fill several of them at once. */
const fillings = (joint: Joint, planes: readonly Plane[]): readonly (readonly Filling[])[] => {
  const [first] = planes
  if (first === undefined) return [[]]
  const ways = filling(joint, first, planes)
  return ways.flatMap(one => {
    const left = planes.filter(plane => !servedBy(one, joint).includes(plane))
    return fillings(joint, left).map(more => [one, ...more])
  })
}

/** What can close a plane: seals that stand in it, and bodies through several planes that are all still empty. */
const filling = (joint: Joint, plane: Plane, empty: readonly Plane[]): readonly Filling[] => [
  ...serving(plane, joint).map(kind => ({ plane, kind })).filter(it => servedBy(it, joint).length === 1),
  ...sealKinds
    .filter(isProposed)
    .map(kind => ({ plane: kind.planes[0], kind }))
    .filter(it => {
      const served = servedBy(it, joint)
      return served.length > 1 && served.includes(plane) && served.every(one => empty.includes(one))
    }),
] // prettier-ignore

const servedBy = ({ kind, plane }: Filling, joint: Joint): readonly Plane[] =>
  kind.serves(kind.fresh('fresh', plane, slotOf(joint)))

/** What belongs to special places only is chosen by people. */
const isProposed = (kind: SealKind): boolean => kind.only === undefined

/** "inner plane: membrane" */
const inPlane = (kind: SealKind, plane: Plane): Words => filled(same('{0}: {1}'), planeName[plane], kind.name)

/** Kinds that serve a plane, best first: inside the tightest to vapour, elsewhere the most open. */
const serving = (plane: Plane, joint: Joint): readonly SealKind[] => {
  const fresh = (kind: SealKind) => kind.fresh('fresh', plane, slotOf(joint))
  const sd_m = (kind: SealKind) => {
    const sd = kind.sd_m(fresh(kind), plane)
    return sd ? (plane === 'inner' ? -sd.winter.min : sd.winter.max) : Infinity
  }
  return sealKinds
    .filter(it => isProposed(it) && it.planes.includes(plane) && it.serves(fresh(it)).includes(plane))
    .map(kind => ({ kind, sd_m: sd_m(kind) }))
    .toSorted((a, b) => (a.sd_m === b.sd_m ? 0 : a.sd_m - b.sd_m))
    .map(it => it.kind)
}

/**
 * Work on site: the built joint has to vary less. `suits` says whether a tolerance would do; half-millimetre steps.
 * Where the opening was measured there is no tolerance to keep.
 */
export function* levelReveal(at: Place, suits: (tolerance_mm: number) => boolean): Iterable<Remedy> {
  const now_mm = at.joint.tolerance_mm.value
  const steps = Array.from({ length: Math.ceil(2 * now_mm) }, (_, i) => Math.ceil(2 * now_mm - 1 - i) / 2)
  const tolerance_mm = steps.find(it => 0 < it && it < now_mm && suits(it))
  if (tolerance_mm === undefined || at.opening.survey) return
  yield {
    kind: 'act',
    say: filled(
      words(
        'Level the reveal so that the joint keeps within ±{0}, then measure',
        'Leibung ausgleichen, bis die Fuge ±{0} einhält, dann messen',
      ),
      lengthIn(tolerance_mm),
    ),
    thenState: { field: 'joint.tolerance', part: at.joint.id },
  }
}
