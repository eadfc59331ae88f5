import type { Point } from '../../geometry'
import { type Language, type Words, words } from '../../words'
import type { ViewMark } from '../mark'
import { lengthOf_mm, lengthSign, type LengthUnit } from '../sizes/lengths'
import { boxOf, line, rectangle, text } from './marks'
import type { Paper } from './paper'

/** Frame, centring marks and the references of the fields round it (ISO 5457, reported; marks from memory). */
export const sheetFrame = (paper: Paper): readonly ViewMark[] => {
  const [[x0, y0], [x1, y1]] = paper.frame
  const [width, height] = paper.size_mm
  return [
    rectangle('sheet', [x0, y0], [x1 - x0, y1 - y0]),
    ...centringMarks(paper),
    ...fieldReferences([x0, y0], [x1, y1], [width, height]),
  ]
}

/** Marks reach from 5 mm off the edge of the paper just inside the frame: ours, the standard's 5 mm would meet words. */
const inside_mm = 1.5

const centringMarks = ({ size_mm: [width, height], frame: [[x0, y0], [x1, y1]] }: Paper): ViewMark[] => [
  line('sheet', [width / 2, 5], [width / 2, y0 + inside_mm]),
  line('sheet', [width / 2, height - 5], [width / 2, y1 - inside_mm]),
  line('sheet', [15, height / 2], [x0 + inside_mm, height / 2]),
  line('sheet', [width - 5, height / 2], [x1 - inside_mm, height / 2]),
]

const strip_mm = 5
const field_mm = 50
const letters = 'ABCDEFGHJK'

/** Figures along the top and letters down the right side, every 50 mm from the middle of the sheet. */
const fieldReferences = ([x0, y0]: Point, [x1, y1]: Point, [width, height]: Point): ViewMark[] => {
  const across = places(x0, x1, width / 2)
  const down = places(y0, y1, height / 2).toReversed()
  return [
    line('faint', [x0, y1 + strip_mm], [x1 + strip_mm, y1 + strip_mm], [x1 + strip_mm, y0]),
    ...across.slice(1, -1).map(x => line('faint', [x, y1], [x, y1 + strip_mm])),
    ...down.slice(1, -1).map(y => line('faint', [x1, y], [x1 + strip_mm, y])),
    ...across
      .slice(1)
      .map((to, at) => text(`${at + 1}`, [((across[at] ?? to) + to) / 2, y1 + 1.25], reference)),
    ...down
      .slice(1)
      .map((to, at) =>
        text(letters.charAt(at), [x1 + strip_mm / 2, ((down[at] ?? to) + to) / 2 - 1.25], reference),
      ),
  ]
}

const reference = { anchor: 'middle', faint: true } as const

/** Borders of the fields: 50 mm apart from the middle, the last ones take what is left. */
const places = (from: number, to: number, middle: number): number[] => {
  const inner: number[] = []
  const first = middle - Math.floor((middle - from - 1) / field_mm) * field_mm
  for (let at = first; at < to - 1; at += field_mm) inner.push(at)
  return [from, ...inner.filter(it => it > from + 10 && it < to - 10), to]
}

/** A ruler in the margin, of 100 mm or 4 in: it shows at once whether a print is true to scale. Ours. */
export const checkRuler = (
  paper: Paper,
  { language, unit }: { readonly language: Language; readonly unit: LengthUnit },
): readonly ViewMark[] => {
  const [x, y] = [paper.frame[0][0] - 7, paper.frame[0][1]]
  const { step_mm, steps, longAt } = rulers[unit]
  const length_mm = step_mm * steps
  const ticks = Array.from({ length: steps + 1 }, (_, at) =>
    line('field', [x, y + step_mm * at], [x - (at % longAt === 0 ? 3 : 1.8), y + step_mm * at]),
  )
  return [
    line('field', [x, y], [x, y + length_mm]),
    ...ticks,
    text(rulerWords[unit][language], [x - 4, y + length_mm / 2], {
      turn_deg: 90,
      anchor: 'middle',
      faint: true,
    }),
  ]
}

const rulers: Readonly<
  Record<LengthUnit, { readonly step_mm: number; readonly steps: number; readonly longAt: number }>
> = {
  mm: { step_mm: 10, steps: 10, longAt: 5 },
  inch: { step_mm: 25.4 / 4, steps: 16, longAt: 4 },
}

const rulerWords: Readonly<Record<LengthUnit, Words>> = {
  mm: words('100 mm when printed at 100 %', '100 mm bei Druck mit 100 %'),
  inch: words('4 in when printed at 100 %', '4 in bei Druck mit 100 %'),
}

/** A scale bar: alternating black and white fields, each a round length of the model. */
export const scaleBar = ([x, y]: Point, scale: number, unit: LengthUnit): readonly ViewMark[] => {
  const step = barStep(scale, unit)
  const paper_mm = step * lengthOf_mm[unit] * scale
  const fields = [0, 1, 2, 3]
  return [
    ...fields
      .filter(it => it % 2 === 0)
      .map((at): ViewMark => ({
        kind: 'area',
        layer: 'sheet',
        outline: boxOf([x + at * paper_mm, y], [paper_mm, barHeight_mm]),
        holes: [],
        tint: '#111111',
      })),
    rectangle('field', [x, y], [4 * paper_mm, barHeight_mm]),
    ...[0, 2, 4].map(at =>
      text(
        `${at * step}${at === 4 ? ` ${lengthSign[unit]}` : ''}`,
        [x + at * paper_mm, y + barHeight_mm + 1.1],
        { anchor: at === 0 ? 'start' : 'middle' },
      ),
    ),
  ]
}

const barHeight_mm = 1.4

/** How long the bar is on paper. */
export const scaleBarLength_mm = (scale: number, unit: LengthUnit): number =>
  4 * barStep(scale, unit) * lengthOf_mm[unit] * scale

/** The first round length that is 10 mm on paper or more. */
const barStep = (scale: number, unit: LengthUnit): number =>
  barSteps[unit].find(it => it * lengthOf_mm[unit] * scale >= 10) ?? (unit === 'mm' ? 500 : 20)

const barSteps: Readonly<Record<LengthUnit, readonly number[]>> = {
  mm: [5, 10, 20, 50, 100, 200],
  inch: [0.5, 1, 2, 4, 8, 16],
}
