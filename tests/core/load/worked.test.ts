import { describe, expect, test } from 'vitest'
import {
  bendingResistance_N,
  blockPressure_N_mm2,
  combined,
  deflection_mm,
  edgeLoad_N_m,
  type Element,
  endReaction_N,
  fixingForce,
  leverShare_N,
  memberLoad_N_m,
  mostLoadedSupport_N,
  neededInertia_cm4,
  suction,
} from '../../../core/load'

// Windows worked by hand from EN 1991-1-4 table 7.1 (zone A), the 45° envelope and the bending formula of ETAG 001
// annex C. Each line is given to as many digits as the hand sum has.
const near = (value: number, to: number): void =>
  expect(Math.abs(value - to), `${value}, by hand ${to}`).toBeLessThan(0.005 * to)
const plain = (width_mm: number, height_mm: number): Element => ({
  width_mm,
  height_mm,
  mullions_mm: [],
  transoms_mm: [],
})
const design = 1.5

describe('wind', () => {
  test.each([
    ['1.23 × 1.48 m at 0.65 kN/m²', 650, 1.23 * 1.48, 876],
    ['2.10 × 1.35 m at 0.80 kN/m²', 800, 2.1 * 1.35, 1048],
    ['a lift-slide door of 4.0 × 2.4 m at 0.80 kN/m²', 800, 9.6, 963],
    ['less than 1 m² counts as 1 m²', 800, 0.6, 1120],
    ['more than 10 m² counts as 10 m²', 800, 14, 960],
  ])('%s', (_, peak_Pa, area_m2, pressure_Pa) => near(suction(peak_Pa, area_m2, 0).pressure_Pa, pressure_Pa))
  test('pressure inside adds to it', () => near(suction(1000, 1, 0.2).pressure_Pa, 1600))
})

describe('force on a fixing', () => {
  test('1.23 × 1.48 m, fixings 0.70 m apart: 0.566 kN', () => {
    const it = plain(1230, 1480)
    const edge_N_m = edgeLoad_N_m(it, suction(650, 1.23 * 1.48, 0).pressure_Pa)
    near(edge_N_m, 539)
    const side = { length_mm: 1480, axes_mm: [40, 740, 1440], edge_N_m, members: [], unheld_N: { first: 0, last: 0 } }
    near(design * (fixingForce(side)?.force_N ?? 0), 566)
  }) // prettier-ignore

  test('beside a mullion: 0.759 kN where line load times spacing gives 0.549 kN', () => {
    const it: Element = { ...plain(2100, 1350), mullions_mm: [1050] }
    const { pressure_Pa } = suction(800, 2.1 * 1.35, 0)
    const edge_N_m = edgeLoad_N_m(it, pressure_Pa)
    const reaction_N = endReaction_N(it, { edge: 'level', at_mm: 1050 }, pressure_Pa)
    near(reaction_N, 454)
    const axes_mm = [210, 875, 1225, 1890]
    const side = { length_mm: 2100, axes_mm, edge_N_m, unheld_N: { first: 0, last: 0 } }
    near(design * (fixingForce({ ...side, members: [] })?.force_N ?? 0), 549)
    near(design * (fixingForce({ ...side, members: [{ at_mm: 1050, reaction_N }] })?.force_N ?? 0), 759)
  })

  test('a transom 0.90 m up in 1.25 × 2.35 m brings 0.319 kN', () => {
    const it: Element = { ...plain(1250, 2350), transoms_mm: [900] }
    const { pressure_Pa } = suction(650, 1.25 * 2.35, 0)
    near(edgeLoad_N_m(it, pressure_Pa), 531)
    near(endReaction_N(it, { edge: 'upright', at_mm: 900 }, pressure_Pa), 319)
  })

  test('a head of 2.40 m that nothing holds hangs on the top screws: 1.69 kN', () => {
    const { pressure_Pa } = suction(650, 2.4 * 1.64, 0)
    const edge_N_m = edgeLoad_N_m(plain(2400, 1640), pressure_Pa)
    near(edge_N_m, 683)
    const unheld_N = { first: 0, last: edge_N_m * 1.2 }
    const jamb = { length_mm: 1400, axes_mm: [210, 700, 1190], edge_N_m, members: [], unheld_N }
    near(design * (fixingForce(jamb)?.force_N ?? 0), 1695)
  })

  test('a guard between two fixings goes to the nearer one by the lever: 0.352 kN', () => {
    near(design * leverShare_N([750, 1350], 900, 312.5), 352)
    const { guardLeads, windLeads, inFull } = combined(478, 352)
    near(guardLeads, 638)
    near(windLeads, 724)
    near(inFull, 829)
  })
})

describe('what bears', () => {
  const screw = { core_mm: 5.5, steel_N_mm2: 600, held: 0.5 }
  test.each([
    [10, 738, 1476],
    [15, 530, 1060],
    [20, 414, 827],
    [25, 339, 678],
    [30, 287, 575],
    [40, 220, 440],
  ])('a screw over a joint of %i mm takes %i N, or %i N held at both ends', (joint_mm, free, held) => {
    near(bendingResistance_N({ ...screw, joint_mm }, 1), free)
    near(bendingResistance_N({ ...screw, joint_mm }, 2), held)
  })

  test('a head of 2.40 m under 0.683 kN/m wants 17.6 cm⁴ of steel, and bends by 35.1 mm with 4.0', () => {
    const head = { load_N_m: 683, span_mm: 2400, modulus_N_mm2: 210_000 }
    near(neededInertia_cm4(head, 300), 17.6)
    near(deflection_mm(head, 4), 35.1)
  })

  test('a timber mullion between two fields of 0.8 m bends by 0.70 mm', () => {
    const it: Element = { ...plain(1600, 1500), mullions_mm: [800] }
    const load_N_m = memberLoad_N_m(it, { edge: 'level', at_mm: 800 }, suction(550, 2.4, 0).pressure_Pa)
    near(load_N_m, 583)
    near(deflection_mm({ load_N_m, span_mm: 1500, modulus_N_mm2: 11_000 }, 500), 0.7)
  })

  test('76.5 kg on two blocks of 100 × 70 press with 0.072 N/mm²', () =>
    near(blockPressure_N_mm2(mostLoadedSupport_N(76.5), 100, 70), 0.0724))
})
