import { clearance_mm, jointTolerance_mm, probable_mm, worst_mm } from '../../core/movement'
import { around } from '../../core/units'
import { publishedValue, publishedValues } from './published-value'

const off = { opening_mm: 12, frame_mm: 2, setting_mm: 3 }
const value = (says: string, expected: number, compute: (it: typeof off) => number) =>
  publishedValue({
    says,
    by: 'convention',
    given: off,
    compute,
    expected,
    within: 0.005,
    spoiled: { opening_mm: 13.2 },
  })

publishedValues('tolerances of opening, frame and setting', [
  value('total clearance at its worst ±14', 14, it => jointTolerance_mm(it, worst_mm).total_mm),
  value('total clearance, probable ±12.17', 12.17, it => jointTolerance_mm(it, probable_mm).total_mm),
  value('one side at its worst ±10', 10, it => jointTolerance_mm(it, worst_mm).side_mm),
  value('one side, probable ±6.78', 6.78, it => jointTolerance_mm(it, probable_mm).side_mm),
])

// A brick opening +15 −0 and a timber component ±5, with 20 mm of play in all: 15 to 40, centred 7.5 to 20 a side.
const side = (end: 'min' | 'max') => (it: { least_mm: number; most_mm: number; part_mm: number }) =>
  clearance_mm({ min: it.least_mm, max: it.most_mm }, around(0, it.part_mm))[end] / 2
publishedValues('a component in a brick opening', [
  publishedValue({
    says: 'has 7.5 mm a side at least',
    by: 'working-drawings-handbook',
    given: { least_mm: 20, most_mm: 35, part_mm: 5 },
    compute: side('min'),
    expected: 7.5,
    within: 1e-9,
    spoiled: { part_mm: 5.5 },
  }),
  publishedValue({
    says: 'and 20 mm at most',
    by: 'working-drawings-handbook',
    given: { least_mm: 20, most_mm: 35, part_mm: 5 },
    compute: side('max'),
    expected: 20,
    within: 1e-9,
    spoiled: { most_mm: 38.5 },
  }),
])
