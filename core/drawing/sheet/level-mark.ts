import { known, openingOf, type Project, type ZonePlace } from '../../detail'
import type { Point } from '../../geometry'
import { decimalMark, type Language, words } from '../../words'
import type { Mark } from '../mark'
import { lengthOf_mm, type LengthUnit } from '../sizes/lengths'
import { heights, textWidth_mm } from '../text/lettering'
import { line, text } from './marks'

/** A level over the finished floor inside, as it is written: its number over the line, what it is below. */
export type Level = { readonly number: string; readonly name: string }

/** The level of the bare sill where the model holds it; of nothing else it holds one. */
export const levelAt = (
  project: Project,
  { opening, side }: ZonePlace,
  { language, unit }: { readonly language: Language; readonly unit: LengthUnit },
): Level | undefined => {
  if (side !== 'sill') return undefined
  const height = known(project, { field: 'opening.sill-height', part: openingOf(project, opening).id })
  if (height === undefined || typeof height.value !== 'number') return undefined
  return { number: levelWords(height.value, unit, language), name: sillWord[language] }
}

const sillWord = words('bare sill over FFL', 'Rohbrüstung ü. OKFF')

/** Levels are metres with three decimals and their sign, as building drawings have them, or inches. Common practice. */
const levelWords = (height_mm: number, unit: LengthUnit, language: Language): string => {
  const sign = height_mm > 0 ? '+' : height_mm < 0 ? '−' : '±'
  const size = Math.abs(height_mm)
  const number = unit === 'mm' ? (size / 1000).toFixed(3) : (size / lengthOf_mm.inch).toFixed(2)
  return `${sign}${number.replace('.', decimalMark[language])} ${unit === 'mm' ? 'm' : 'in'}`
}

/** A filled triangle stands for what is bare, an open one for what is finished; the words say it too. Common practice. */
const triangle_mm: Point = [2.8, 2.4]
const beside_mm = 1.2
const offLine_mm = 1.1

/** What a mark takes beside a view. */
export const levelTakes_mm = ({ number, name }: Level): number =>
  4 +
  Math.max(
    textWidth_mm(number, heights.size_mm) + triangle_mm[0] + 2 * beside_mm,
    textWidth_mm(name, heights.size_mm),
  )

/** A level at the left of a view: its line ends at a place, at the height of the level. */
export const levelMarks = (level: Level, [x, y]: Point): readonly Mark[] => {
  const long = levelTakes_mm(level) - 2
  const [half, high] = [triangle_mm[0] / 2, triangle_mm[1]]
  const apex = x - beside_mm - half
  const numberAt = apex - half - beside_mm
  return [
    line('size', [x, y], [x - long, y]),
    {
      kind: 'area',
      layer: 'sheet',
      outline: [[apex, y], [apex + half, y + high], [apex - half, y + high]], // prettier-ignore
      holes: [],
      tint: '#111111',
    },
    text(level.number, [numberAt, y + offLine_mm], { anchor: 'end' }),
    text(level.name, [x, y - offLine_mm - heights.size_mm], { anchor: 'end' }),
  ]
}
