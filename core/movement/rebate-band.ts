import { openingOf, type Project, rebateWidth_mm } from '../detail'
import type { Id } from '../geometry'
import type { Side } from '../kinds'
import type { Band, Stated } from '../units'
import { type Words, words } from '../words'
import { jointBand, type JointBand } from './joint-band'
import type { Term } from './term'

/**
 * The gap between the nib of a rebate and the frame as a range: measured where it was measured, else as the position of
 * the frame leaves it, with the tolerance of its joint. The frame changes its length along this gap, never across it, so
 * its width stays. Nothing where the side has no nib.
 */
export const rebateBand = (project: Project, opening: Id, side: Side, zone: Id): JointBand | undefined => {
  const found = openingOf(project, opening)
  const planned_mm = rebateWidth_mm(project, found, side)
  if (planned_mm === undefined) return undefined
  const joint = jointBand(project, opening, side, zone)
  const measured = found.survey?.rebates_mm?.[side]
  const type = project.joints[found.sides[side].find(it => it.id === zone)?.joint ?? '']
  const off: Stated<number> = type?.tolerance_mm ?? { value: 0, basis: 'assumed' }
  const ends = measured
    ? {
        narrowest: [term('', measured.narrowest, asMeasured)],
        widest: [term('', measured.widest, asMeasured)],
      }
    : {
        narrowest: [
          term('', { ...found.position_mm, value: planned_mm }, asPlaced),
          term('−', off, tolerance),
        ],
        widest: [term('', { ...found.position_mm, value: planned_mm }, asPlaced), term('+', off, tolerance)],
      }
  const still_mm: Band = measured
    ? {
        min: Math.min(measured.narrowest.value, measured.widest.value),
        max: Math.max(measured.narrowest.value, measured.widest.value),
      }
    : { min: planned_mm - off.value, max: planned_mm + off.value }
  const settled = (value: number, says: Words): Term => ({ sign: '=', value, unit: 'mm', says })
  return {
    ...joint,
    planned_mm,
    still_mm,
    moving_mm: still_mm,
    opens_mm: 0,
    closes_mm: 0,
    stillSums: ends,
    narrowestSum: [...ends.narrowest, settled(still_mm.min, narrowest)],
    widestSum: [...ends.widest, settled(still_mm.max, widest)],
    restsOn:
      measured || off.basis !== 'assumed' || type === undefined
        ? []
        : [{ field: 'joint.tolerance', part: type.id }],
  }
}

const term = (sign: Term['sign'], it: Stated<number>, says: Words): Term => ({
  sign,
  value: it.value,
  unit: 'mm',
  says,
  basis: it.basis,
})

const asMeasured = words('gap at the nib, as measured', 'Fuge am Anschlag, gemessen')
const asPlaced = words('from nib to frame', 'vom Anschlag bis zum Rahmen')
const tolerance = words('tolerance', 'Toleranz')
const narrowest = words('narrowest', 'engste')
const widest = words('widest', 'breiteste')
