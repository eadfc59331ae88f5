import type { Joint } from '../../detail'
import { type Plane, planeName } from '../../kinds'
import { type AnySeal, type SealKind, sealKinds } from '../../seals'
import { filled, isSome, same, type Some, type Words, words } from '../../words'
import type { Remedy } from '../finding'
import type { Place } from '../place'
import { hasValue, plainBay } from '../readings/seals'
import { withDeclared } from './declared'
import { design } from './design'
import { type Design, lengthIn } from './fit'
import type { Room } from './sizes'

/** Designs the joint anew with the seals that it has, so that its width cures. */
export const otherWidth = (at: Place, cures?: (room: Room) => boolean): readonly Remedy[] =>
  design(at, { edits: [], says: [] }, cures)

/** Puts each other kind of seal that serves the plane in the place of one. */
export const replaceSeal = (at: Place, seal: AnySeal): readonly Remedy[] =>
  otherKinds(at, seal).flatMap(kind => design(at, withDeclared(at, replacement([{ seal, kind }]))))

/** Puts other kinds of seal into some planes at once, in every combination. A plane with several seals is left as it is. */
export const replacePlanes = (at: Place, planes: readonly Plane[]): readonly Remedy[] =>
  planes
    .reduce<readonly (readonly Swap[])[]>(
      (so, plane) => {
        const [seal, ...more] = at.joint.seals.filter(it => it.plane === plane)
        if (!seal || more.length > 0) return []
        return so.flatMap(swaps => otherKinds(at, seal).map(kind => [...swaps, { seal, kind }]))
      },
      [[]],
    )
    .flatMap(swaps => design(at, withDeclared(at, replacement(swaps))))

type Swap = { readonly seal: AnySeal; readonly kind: SealKind }
const otherKinds = (at: Place, seal: AnySeal): readonly SealKind[] =>
  serving(seal.plane, at.joint).filter(kind => kind.kind !== seal.kind)

const replacement = (swaps: readonly Swap[]): Design => ({
  edits: swaps.map(({ seal, kind }) => ({ kind: 'replace', part: seal.id, seal: kind.kind })),
  says: swaps.map(({ seal, kind }) => inPlane(kind, seal.plane)),
})

/** Puts a seal of another kind in the place of the only bead of a joint. */
export const replaceBead = (at: Place): readonly Remedy[] => {
  const [bead, ...more] = at.joint.seals.filter(it => hasValue(it, 'sealant.share'))
  return bead && more.length === 0 ? replaceSeal(at, bead) : []
}

/** Puts a seal into each of some planes, in every combination of the kinds that serve them. */
export const fillPlanes = (at: Place, planes: readonly Plane[]): readonly Remedy[] =>
  planes
    .reduce<readonly (readonly Filling[])[]>(
      (so, plane) => so.flatMap(chosen => serving(plane, at.joint).map(kind => [...chosen, { plane, kind }])),
      [[]],
    )
    .flatMap(chosen =>
      design(
        at,
        withDeclared(at, {
          edits: chosen.map(it => ({
            kind: 'fill',
            joint: at.joint.id,
            plane: it.plane,
            seal: it.kind.kind,
          })),
          says: chosen.map(it => inPlane(it.kind, it.plane)),
        }),
      ),
    )

type Filling = { readonly plane: Plane; readonly kind: SealKind }

/** "inner plane: membrane" */
const inPlane = (kind: SealKind, plane: Plane): Words => filled(same('{0}: {1}'), planeName[plane], kind.name)

/** Kinds that serve a plane, best first: inside the tightest to vapour, elsewhere the most open. */
const serving = (plane: Plane, joint: Joint): readonly SealKind[] => {
  const sd_m = (kind: SealKind) => {
    const sd = kind.sd_m(kind.fresh('fresh', plane, plainBay(joint)))
    return sd ? (plane === 'inner' ? -sd.winter.min : sd.winter.max) : Infinity
  }
  return sealKinds
    .filter(it => it.planes.includes(plane))
    .map(kind => ({ kind, sd_m: sd_m(kind) }))
    .toSorted((a, b) => (a.sd_m === b.sd_m ? 0 : a.sd_m - b.sd_m))
    .map(it => it.kind)
}

/** Work on site: the built joint has to vary less. `suits` says whether a tolerance would do; half-millimetre steps. */
export const levelReveal = (at: Place, suits: (tolerance_mm: number) => boolean): readonly Remedy[] => {
  const now_mm = at.joint.tolerance_mm.value
  const steps = Array.from({ length: Math.ceil(2 * now_mm) }, (_, i) => Math.ceil(2 * now_mm - 1 - i) / 2)
  const tolerance_mm = steps.find(it => 0 < it && it < now_mm && suits(it))
  if (tolerance_mm === undefined) return []
  return [
    {
      kind: 'act',
      say: filled(
        words(
          'Level the reveal so that the joint keeps within ±{0}, then measure',
          'Leibung ausgleichen, bis die Fuge ±{0} einhält, dann messen',
        ),
        lengthIn(tolerance_mm),
      ),
      thenState: { field: 'joint.tolerance', part: at.joint.id },
    },
  ]
}

/** The candidates that there are; where there is none, the joint has to be measured. */
export const someOf = (at: Place, candidates: readonly Remedy[]): Some<Remedy> =>
  isSome(candidates)
    ? candidates
    : [
        {
          kind: 'act',
          say: words('Measure the joint and design it anew', 'Fuge messen und neu entwerfen'),
          thenState: { field: 'joint.tolerance', part: at.joint.id },
        },
      ]
