import type { FieldAt, Frame, Joint, Opening, Project } from '../detail'
import type { Id } from '../geometry'
import type { Side } from '../kinds'
import { frameMovement } from '../practice'
import type { Band, Basis, Stated, Unit } from '../units'
import { around, inWords, writeNumber } from '../units'
import { type Words, words } from '../words'
import { frameSize, type FrameSize } from './frame-size'

/** One line of a sum, as it would be written by hand: "+ 0.3 mm, 0.5 mm/m × 1.206 m ÷ 2, assumed". */
export type Term = {
  readonly sign: '' | '+' | '−' | '×' | '÷' | '='
  readonly value: number
  readonly unit: Unit
  readonly says: Words
  readonly basis?: Basis
}

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
  /** how the narrowest and the widest moving width come about */
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
  const planned = at.joint.planned_mm
  const tolerance = at.joint.tolerance_mm
  const movement = movementOf(project, at.opening, at.frame, side)
  const still_mm = around(planned.value, tolerance.value)
  const ends = (sign: '+' | '−'): readonly Term[] => {
    const way = sign === '+' ? 1 : -1
    return [
      { sign: '', value: planned.value, unit: 'mm', says: plannedWidth, basis: planned.basis },
      { sign, value: tolerance.value, unit: 'mm', says: toleranceOf, basis: tolerance.basis },
      { sign, value: movement.value_mm, unit: 'mm', says: movement.says, basis: movement.basis },
      {
        sign: '=',
        value: planned.value + way * (tolerance.value + movement.value_mm),
        unit: 'mm',
        says: sign === '+' ? widest : narrowest,
      },
    ]
  }
  return {
    zone,
    planned_mm: planned.value,
    still_mm,
    moving_mm: { min: still_mm.min - movement.value_mm, max: still_mm.max + movement.value_mm },
    opens_mm: movement.value_mm,
    closes_mm: movement.value_mm,
    narrowestSum: ends('−'),
    widestSum: ends('+'),
    restsOn: [
      ...assumedAt(planned, 'joint.planned', at.joint.id),
      ...assumedAt(tolerance, 'joint.tolerance', at.joint.id),
      ...movement.restsOn,
    ],
  }
}

type Place = { readonly opening: Opening; readonly frame: Frame; readonly joint: Joint }

const place = (project: Project, openingId: Id, side: Side, zoneId: Id): Place => {
  const opening = project.openings[openingId]
  const zone = opening?.sides[side].find(it => it.id === zoneId)
  const joint = zone && project.joints[zone.joint]
  const frame = opening && project.frames[opening.frame]
  if (!opening || !joint || !frame) throw new Error(`No joint at ${openingId}, ${side}, ${zoneId}`)
  return { opening, frame, joint }
}

type SideMovement = {
  readonly value_mm: number
  readonly says: Words
  readonly basis: Basis
  readonly restsOn: readonly FieldAt[]
}

/** What share of the change of the frame's size the joint of a side takes, and which size that is. */
const taken: Readonly<
  Record<Side, { readonly of: keyof FrameSize; readonly share: number; readonly writes: string }>
> = {
  head: { of: 'height', share: 1, writes: '' },
  left: { of: 'width', share: 0.5, writes: ' ÷ 2' },
  right: { of: 'width', share: 0.5, writes: ' ÷ 2' },
  sill: { of: 'height', share: 0, writes: '' },
}

const movementOf = (project: Project, opening: Opening, frame: Frame, side: Side): SideMovement => {
  if (taken[side].share === 0) return { value_mm: 0, says: onBlocks, basis: 'specified', restsOn: [] }
  const rate = frame.movement_mm_m ?? tradeMovement(frame)
  const size = frameSize(project, opening)[taken[side].of]
  const basis = rate.basis === 'assumed' || size.basis === 'assumed' ? 'assumed' : rate.basis
  return {
    value_mm: (rate.value * size.value_mm * taken[side].share) / 1000,
    says: inWords(
      language =>
        `${writeNumber(rate.value, language)} mm/m × ${writeNumber(size.value_mm / 1000, language, 3)} m${taken[side].writes}`,
    ),
    basis,
    restsOn: [...assumedAt(rate, 'frame.movement', frame.id), ...size.restsOn],
  }
}

const tradeMovement = (frame: Frame): Stated<number> => ({
  value: frameMovement[frame.material].movement_mm_m,
  basis: 'assumed',
})

const assumedAt = (it: Stated<unknown>, field: string, part: Id): readonly FieldAt[] =>
  it.basis === 'assumed' ? [{ field, part }] : []

const plannedWidth = words('planned width', 'geplante Breite')
const toleranceOf = words('tolerance', 'Toleranz')
const narrowest = words('narrowest, with movement', 'engste, mit Bewegung')
const widest = words('widest, with movement', 'breiteste, mit Bewegung')
const onBlocks = words('stands on its blocks', 'steht auf den Tragklötzen')
