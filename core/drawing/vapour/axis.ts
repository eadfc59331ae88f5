import type { Language } from '../../words'
import { writeNumber } from '../../units'
import type { Place } from '../heat/scale-marks'
import type { ViewMark } from '../mark'
import { line, text } from '../sheet/marks'
import { heights } from '../text/lettering'

/** A chart's inner box and how its upward axis runs: from 0 to `to` in steps. */
export type Axis = {
  readonly x0: number
  readonly x1: number
  readonly y0: number
  readonly y1: number
  readonly steps: readonly number[]
  readonly py: (value: number) => number
}

/** Room for numbers at the left, for names at the foot, and above the last number. Ours. */
const room_mm = { left: 12, right: 2, foot: 6, head: 2 } as const

/** An axis from nothing up to what has to be shown, in steps of 1, 2 or 5 with room for their numbers. */
export const axisTo = (most: number, { at, size }: Place): Axis => {
  const [y0, y1] = [at[1] + room_mm.foot, at[1] + size[1] - room_mm.head]
  const count = Math.max(2, Math.floor((y1 - y0) / 6))
  const step = stepFor(most > 0 ? most : 1, count)
  const to = step * Math.max(1, Math.ceil(most / step - 1e-9))
  return {
    x0: at[0] + room_mm.left,
    x1: at[0] + size[0] - room_mm.right,
    y0,
    y1,
    steps: Array.from({ length: Math.round(to / step) + 1 }, (_, i) => i * step),
    py: value => y0 + (value / to) * (y1 - y0),
  }
}

const stepFor = (most: number, count: number): number => {
  const rough = most / count
  const tens = 10 ** Math.floor(Math.log10(rough))
  return tens * ([1, 2, 5].find(it => it * tens >= rough) ?? 10)
}

/** Lines across with their numbers, and what the numbers are above them. */
export const axisMarks = ({ x0, x1, y1, steps, py }: Axis, says: string, language: Language): readonly ViewMark[] => [
  ...steps.flatMap(value => [
    line('faint', [x0, py(value)], [x1, py(value)]),
    text(writeNumber(Number(value.toPrecision(6)), language), [x0 - 1.5, py(value) - heights.note_mm / 2], { anchor: 'end' }),
  ]),
  text(says, [x0, y1 + 1.4], { faint: true }),
] // prettier-ignore
