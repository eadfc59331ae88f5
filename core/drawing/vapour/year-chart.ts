import { monthName } from '../../air'
import type { Balance } from '../../vapour'
import { type Language, words } from '../../words'
import type { Place } from '../heat/scale-marks'
import type { ViewMark } from '../mark'
import { rectangle, text } from '../sheet/marks'
import { axisMarks, axisTo } from './axis'

/** What share of a month's room its bar takes: ours. */
const share = 0.6

/** The water that lies in a path at the end of each month, as bars from the first month with water on. */
export const yearChart = ({ rows }: Balance, place: Place, language: Language): readonly ViewMark[] => {
  const lies = rows.map(it => it.lies_kg_m2.reduce((sum, one) => sum + one, 0))
  const axis = axisTo(Math.max(0, ...lies), place)
  const { x0, x1, y0, py } = axis
  const pitch = (x1 - x0) / Math.max(1, rows.length)
  return [
    ...axisMarks(axis, says[language], language),
    ...rows.flatMap(({ month }, i): readonly ViewMark[] => {
      const left = x0 + (i + (1 - share) / 2) * pitch
      const height = py(lies[i] ?? 0) - y0
      return [
        ...(height > 0.05 ? [rectangle('stroke', [left, y0], [share * pitch, height])] : []),
        text(monthName[month][language].slice(0, 3), [x0 + (i + 0.5) * pitch, y0 - 4], { anchor: 'middle' }),
      ]
    }),
  ]
}

const says = words('lies there, kg/m²', 'liegt dort, kg/m²')
