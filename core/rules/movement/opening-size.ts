import type { Opening } from '../../detail'
import { exactly } from '../../units'
import type { Stated } from '../../units'
import { words } from '../../words'
import { type Beneath, placed, type Reading } from '../reading'
import { act } from '../remedies/state'
import { rule } from '../rule'
import { isTold } from '../told-rules'

/** A measured opening against its nominal size: the measurement that is farthest off, for width and height. */
type Measured = { readonly nominal_mm: number; readonly off_mm: number }

const farthest = (
  nominal: Stated<number> | undefined,
  sizes: Readonly<Record<string, Stated<number> | undefined>> | undefined,
): Measured | undefined => {
  const offs = Object.values(sizes ?? {}).flatMap(it => (it && nominal ? [it.value - nominal.value] : []))
  const off_mm = offs.reduce((most, it) => (Math.abs(it) > Math.abs(most) ? it : most), 0)
  return nominal && offs.length > 0 ? { nominal_mm: nominal.value, off_mm } : undefined
}

const across = ({ told, survey }: Opening) => farthest(told?.nominalWidth_mm, survey?.widths_mm)
const upright = ({ told, survey }: Opening) => farthest(told?.nominalHeight_mm, survey?.heights_mm)

const measured: Reading<readonly Measured[]> = placed({
  id: 'opening.measured-size',
  name: words('Size as measured', 'Gemessene Größe'),
  compute: ({ opening }) => {
    const all = [across(opening), upright(opening)].flatMap(it => it ?? [])
    return all.length > 0 ? all : undefined
  },
  beneath: ({ opening: { id, told } }): readonly Beneath[] => [
    { field: 'opening.nominal-width', part: id, stated: told?.nominalWidth_mm },
    { field: 'opening.nominal-height', part: id, stated: told?.nominalHeight_mm },
  ],
})

/** The opening is as large as it was meant to be, within the tolerances of building. */
export const openingSize = rule({
  id: 'opening-size',
  about: 'opening',
  title: words('Opening within its tolerance', 'Öffnung in ihrer Toleranz'),
  says: words(
    'The measured opening is off its nominal size by no more than building tolerances allow.',
    'Die gemessene Öffnung weicht vom Nennmaß nicht weiter ab, als Toleranzen im Hochbau erlauben.',
  ),
  why: words(
    'What the mason left too large or too small the joint has to take, and it cannot.',
    'Was der Rohbau zu groß oder zu klein ließ, müsste die Fuge aufnehmen, und sie kann es nicht.',
  ),
  reads: { measured },
  limit: 'opening-size',
  band: [],
  applies: at =>
    at.opening.survey?.widths_mm || at.opening.survey?.heights_mm
      ? isTold(at, 'nominalWidth_mm') || isTold(at, 'nominalHeight_mm') || words('nobody names the nominal size', 'niemand nennt das Nennmaß')
      : words('the opening was not measured', 'die Öffnung ist nicht gemessen'),
  ask: known => {
    const [first, ...more] = known.measured.map(it => ({ given: { length_mm: it.nominal_mm }, width_mm: it.off_mm }))
    return [first ?? { given: { length_mm: 0 }, width_mm: 0 }, ...more]
  },
  compare: (_known, { within_mm }, { width_mm = 0 }) => ({
    kind: 'amount',
    actual: exactly(width_mm),
    required: { unit: 'mm', min: -within_mm, max: within_mm },
  }),
  sum: known =>
    known.measured.flatMap(it => [
      { sign: '', value: it.nominal_mm + it.off_mm, unit: 'mm', says: words('as measured, farthest off', 'gemessen, am weitesten daneben') },
      { sign: '−', value: it.nominal_mm, unit: 'mm', says: words('nominal size', 'Nennmaß') },
    ]),
  *remedies(_known, _then, at) {
    yield act(words('Level or cut the reveal, then measure again', 'Leibung ausgleichen oder nacharbeiten, dann neu messen'), 'opening.nominal-width', at.opening.id)
  },
  examples: [
    {
      when: words('2 mm off 1630 mm', '2 mm neben 1630 mm'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { measured: [{ nominal_mm: 1630, off_mm: 2 }] },
      verdict: 'met',
    },
    {
      when: words('15 mm too small at 2.1 m', '15 mm zu klein bei 2,1 m'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { measured: [{ nominal_mm: 900, off_mm: 3 }, { nominal_mm: 2100, off_mm: -15 }] },
      verdict: 'not-met',
    },
  ],
}) // prettier-ignore
