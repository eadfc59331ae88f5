import type { FieldAt, Joint, Opening, Survey, Zone } from '../detail'
import type { Side } from '../kinds'
import type { Band, Stated } from '../units'
import { type Words, words } from '../words'
import type { Term } from './term'
import type { SideSizes } from './sizes'

/** Where a joint can be before anything moves, and how both ends come about. */
export type StillBand = {
  readonly still_mm: Band
  /** written out only when somebody reads them */
  readonly narrowest: () => readonly Term[]
  readonly widest: () => readonly Term[]
  readonly restsOn: readonly FieldAt[]
}

/**
 * The joint of a zone as it stands: measured where it was measured; else what the measured opening leaves beside the
 * frame; else as planned, with its tolerance. A measured opening needs no tolerance. A band at or below nothing is
 * possible: the frame does not fit, which is a finding.
 */
export const stillBand = (
  opening: Opening,
  joint: Joint,
  side: Side,
  zone: Zone,
  sizes: SideSizes,
): StillBand => {
  const { survey } = opening
  const measured = survey?.joints_mm?.[side]
  if (measured) return ofJoints(measured)
  const sizesAcross = survey && measuredAcross(survey, side)
  if (sizesAcross && sizesAcross.length > 0) return ofOpening(opening, side, zone, sizes, sizesAcross)
  return asPlanned(joint)
}

const ofJoints = (it: {
  readonly narrowest: Stated<number>
  readonly widest: Stated<number>
}): StillBand => ({
  still_mm: {
    min: Math.min(it.narrowest.value, it.widest.value),
    max: Math.max(it.narrowest.value, it.widest.value),
  },
  narrowest: () => [term('', it.narrowest, measuredJoint)],
  widest: () => [term('', it.widest, measuredJoint)],
  restsOn: [],
})

/** The opening as it was measured across the joint: widths for a jamb, heights for head and sill. */
const measuredAcross = (survey: Survey, side: Side): readonly Stated<number>[] =>
  Object.values(isUpright(side) ? (survey.heights_mm ?? {}) : (survey.widths_mm ?? {})).flatMap(it =>
    it ? [it] : [],
  )

const isUpright = (side: Side): boolean => side === 'head' || side === 'sill'

const ofOpening = (
  opening: Opening,
  side: Side,
  zone: Zone,
  { frame, frameField }: SideSizes,
  across: readonly Stated<number>[],
): StillBand => {
  const smallest = across.reduce((least, it) => (it.value < least.value ? it : least))
  const largest = across.reduce((most, it) => (it.value > most.value ? it : most))
  const shift_mm = shiftOf(opening, side)
  const flank = flankBand(opening, side, zone)
  const half_mm = (size: Stated<number>, flank_mm: number) =>
    (size.value - frame.value) / 2 + shift_mm - flank_mm
  const terms = (size: Stated<number>, says: Words, flank_mm: number): readonly Term[] => [
    term('', size, says),
    term('−', frame, opening.box && isUpright(side) ? frameAndBox : frameSize),
    { sign: '÷', value: 2, unit: 'one', says: oneOfTwo },
    ...(shift_mm === 0 ? [] : [{ sign: '+', value: shift_mm, unit: 'mm', says: offCentre } as const]),
    ...(flank_mm === 0
      ? []
      : [{ sign: '−', value: flank_mm, unit: 'mm', says: offPlumb, basis: 'measured' } as const]),
  ]
  return {
    still_mm: { min: half_mm(smallest, flank.max), max: half_mm(largest, flank.min) },
    narrowest: () => terms(smallest, smallestOpening, flank.max),
    widest: () => terms(largest, largestOpening, flank.min),
    restsOn: frame.basis === 'assumed' ? [frameField] : [],
  }
}

/** How much a joint gains because the frame stands off the middle: what one side gains the other loses. */
const shiftOf = (opening: Opening, side: Side): number => {
  const aside = opening.aside_mm?.value ?? 0
  const raised = opening.raised_mm?.value ?? 0
  return { left: aside, right: -aside, sill: raised, head: -raised }[side]
}

/** How far the flank stands into the opening along a zone, least and most; straight between the measured places. */
const flankBand = (opening: Opening, side: Side, zone: Zone): Band => {
  const places = (opening.survey?.offsets ?? [])
    .filter(it => it.side === side)
    .toSorted((a, b) => a.at_mm - b.at_mm)
  if (places.length === 0) return { min: 0, max: 0 }
  const before = opening.sides[side].filter(it => it.to_mm < zone.to_mm)
  const from = Math.max(0, ...before.map(it => it.to_mm))
  const at = (y: number): number => {
    const next = places.findIndex(it => it.at_mm >= y)
    const b = places[next] ?? places[places.length - 1]
    const a = next > 0 ? places[next - 1] : b
    if (a === undefined || b === undefined) return 0
    return b.at_mm === a.at_mm
      ? b.offset_mm
      : a.offset_mm + ((b.offset_mm - a.offset_mm) * (y - a.at_mm)) / (b.at_mm - a.at_mm)
  }
  const inside = places.filter(it => from < it.at_mm && it.at_mm < zone.to_mm).map(it => it.offset_mm)
  const values = [at(from), ...inside, at(zone.to_mm)]
  return { min: Math.min(...values), max: Math.max(...values) }
}

const asPlanned = ({ id, planned_mm: planned, tolerance_mm: tolerance }: Joint): StillBand => ({
  still_mm: { min: planned.value - tolerance.value, max: planned.value + tolerance.value },
  narrowest: () => [term('', planned, plannedWidth), term('−', tolerance, toleranceOf)],
  widest: () => [term('', planned, plannedWidth), term('+', tolerance, toleranceOf)],
  restsOn: [
    ...(planned.basis === 'assumed' ? [{ field: 'joint.planned', part: id }] : []),
    ...(tolerance.basis === 'assumed' ? [{ field: 'joint.tolerance', part: id }] : []),
  ],
})

const term = (sign: Term['sign'], it: Stated<number>, says: Words): Term => ({
  sign,
  value: it.value,
  unit: 'mm',
  says,
  basis: it.basis,
})

const plannedWidth = words('planned width', 'geplante Breite')
const toleranceOf = words('tolerance', 'Toleranz')
const measuredJoint = words('joint as measured', 'Fuge, gemessen')
const smallestOpening = words('smallest opening', 'kleinste Öffnung')
const largestOpening = words('largest opening', 'größte Öffnung')
const frameSize = words('frame', 'Rahmen')
const frameAndBox = words('frame and box', 'Rahmen und Kasten')
const oneOfTwo = words('one of two joints', 'eine von zwei Fugen')
const offCentre = words('off centre', 'außermittig')
const offPlumb = words('flank stands in', 'Leibung steht vor')
