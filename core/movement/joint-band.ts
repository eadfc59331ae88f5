import type { FieldAt, Frame, Joint, Opening, Project, Zone } from '../detail'
import type { Id } from '../geometry'
import type { Side } from '../kinds'
import { frameMovement } from '../practice'
import type { Band, Basis, Stated } from '../units'
import { inWords, writeQuantity } from '../units'
import { type Words, words } from '../words'
import { sideSizes, type SideSizes } from './sizes'
import { stillBand } from './still-band'
import type { Term } from './term'

/**
 * Where the joint of one zone can be. Derived, never stored.
 * `still` is planned width and tolerance (or the survey); `moving` adds the movement of the frame both ways.
 */
export type JointBand = {
  readonly zone: Id
  readonly planned_mm: number
  readonly still_mm: Band
  readonly moving_mm: Band
  /** how far the joint opens and closes from its installed width */
  readonly opens_mm: number
  readonly closes_mm: number
  /** size of the frame across the joint (width at a jamb, height at head and sill), and of its opening */
  readonly frame_mm: number
  readonly opening_mm: number
  /** how the narrowest and the widest width come about before anything moves, and with movement */
  readonly stillSums: { readonly narrowest: readonly Term[]; readonly widest: readonly Term[] }
  readonly narrowestSum: readonly Term[]
  readonly widestSum: readonly Term[]
  /** the assumed values that it rests on */
  readonly restsOn: readonly FieldAt[]
}

/**
 * The joint of one zone as a range. The width of the frame moves the joints at its jambs, its height the joint at the
 * head. The frame is held in its middle sideways, so each jamb takes half of the change of its width; it stands on
 * its blocks, so the head takes the whole change of its height and the sill joint keeps its width. Own convention.
 * Throws on a side without that zone, or a zone without its joint: a project that was opened has neither.
 */
export const jointBand = (project: Project, opening: Id, side: Side, zone: Id): JointBand => {
  const at = place(project, opening, side, zone)
  const sizes = sideSizes(project, at.opening, side)
  const movement = movementOf(at.frame, sizes, side)
  const still = stillBand(at.opening, at.joint, side, at.zone, sizes)
  const { still_mm } = still
  const moving_mm = { min: still_mm.min - movement.value_mm, max: still_mm.max + movement.value_mm }
  const moved = (sign: '+' | '−', value: number, says: Words): readonly Term[] => [
    { sign, value: movement.value_mm, unit: 'mm', says: movement.says(), basis: movement.basis },
    { sign: '=', value, unit: 'mm', says },
  ]
  return {
    zone,
    planned_mm: at.joint.planned_mm.value,
    still_mm,
    moving_mm,
    opens_mm: movement.value_mm,
    closes_mm: movement.value_mm,
    frame_mm: sizes.frame.value,
    opening_mm: sizes.opening_mm,
    // Sums are written out only when somebody reads them: most bands are asked for their numbers alone.
    get stillSums() {
      return { narrowest: still.narrowest(), widest: still.widest() }
    },
    get narrowestSum() {
      return [...still.narrowest(), ...moved('−', moving_mm.min, narrowest)]
    },
    get widestSum() {
      return [...still.widest(), ...moved('+', moving_mm.max, widest)]
    },
    restsOn: [
      ...still.restsOn,
      ...assumedAt(sizes.frame, sizes.frameField.field, sizes.frameField.part),
      ...movement.restsOn,
    ],
  }
}

type Place = { readonly opening: Opening; readonly frame: Frame; readonly joint: Joint; readonly zone: Zone }

const place = (project: Project, openingId: Id, side: Side, zoneId: Id): Place => {
  const opening = project.openings[openingId]
  const zone = opening?.sides[side].find(it => it.id === zoneId)
  const joint = zone && project.joints[zone.joint]
  const frame = opening && project.frames[opening.frame]
  if (!opening || !zone || !joint || !frame) throw new Error(`No joint at ${openingId}, ${side}, ${zoneId}`)
  return { opening, frame, joint, zone }
}

type SideMovement = {
  readonly value_mm: number
  readonly says: () => Words
  readonly basis: Basis
  readonly restsOn: readonly FieldAt[]
}

/** What share of the change of the frame's size the joint of a side takes. */
const taken: Readonly<Record<Side, { readonly share: number; readonly writes: string }>> = {
  head: { share: 1, writes: '' },
  left: { share: 0.5, writes: ' ÷ 2' },
  right: { share: 0.5, writes: ' ÷ 2' },
  sill: { share: 0, writes: '' },
}

const movementOf = (frame: Frame, { frame: size }: SideSizes, side: Side): SideMovement => {
  const { share, writes } = taken[side]
  if (share === 0) return { value_mm: 0, says: () => onBlocks, basis: 'specified', restsOn: [] }
  const rate = frame.movement_mm_m ?? tradeMovement(frame)
  return {
    value_mm: (rate.value * size.value * share) / 1000,
    says: () =>
      inWords(
        language =>
          `${writeQuantity(rate.value, 'mm_m', language)} × ${writeQuantity(size.value / 1000, 'm', language, 3)}${writes}`,
      ),
    basis: rate.basis === 'assumed' || size.basis === 'assumed' ? 'assumed' : rate.basis,
    restsOn: assumedAt(rate, 'frame.movement', frame.id),
  }
}

const tradeMovement = (frame: Frame): Stated<number> => ({
  value: frameMovement[frame.material].movement_mm_m,
  basis: 'assumed',
})

const assumedAt = (it: Stated<unknown>, field: string, part: Id): readonly FieldAt[] =>
  it.basis === 'assumed' ? [{ field, part }] : []

const narrowest = words('narrowest, with movement', 'engste, mit Bewegung')
const widest = words('widest, with movement', 'breiteste, mit Bewegung')
const onBlocks = words('stands on its blocks', 'steht auf den Tragklötzen')
