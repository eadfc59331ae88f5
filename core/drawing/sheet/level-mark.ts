import { known, openingOf, type Project, thresholdLevels, type ZonePlace } from '../../detail'
import type { Point } from '../../geometry'
import type { Section } from '../../section'
import { decimalMark, filled, type Language, type Words, words } from '../../words'
import type { Mark } from '../mark'
import { lengthOf_mm, type LengthUnit } from '../sizes/lengths'
import { heights, textWidth_mm } from '../text/lettering'
import { line, text } from './marks'

/** One level over the finished floor inside, as it is written: its number over the line, what it is below. */
type OneLevel = {
  readonly number: string
  readonly name: string
  /** how far it lies over the end of the wall, in mm of the model */
  readonly up_mm: number
  readonly isBare: boolean
}

/** The levels of a cut, from the lowest; a cut without any has none. */
export type Level = readonly OneLevel[]

/** The levels that the model holds at a cut: of a threshold floor, top, surface and waterproofing, else the bare sill. */
export const levelAt = (
  project: Project,
  { opening, side }: ZonePlace,
  {
    language,
    unit,
    section,
  }: { readonly language: Language; readonly unit: LengthUnit; readonly section: Section },
): Level | undefined => {
  if (side !== 'sill') return undefined
  const { id, told } = openingOf(project, opening)
  if (section.levels) {
    const { top_mm, outside_mm, edge_mm } = thresholdLevels(told)
    const { levels } = section
    const isEdgeAtTop = edge_mm.value === top_mm.value
    const one = (name: Words, height_mm: number, up_mm: number, isAssumed: boolean): OneLevel => ({
      number: levelWords(height_mm, unit, language),
      name: (isAssumed ? filled(assumedWord, name) : name)[language],
      up_mm,
      isBare: false,
    })
    return [
      one(floorWord, 0, levels.floor_mm, false),
      one(surfaceWord, outside_mm.value, levels.surface_mm, outside_mm.basis === 'assumed'),
      one(isEdgeAtTop ? topAndEdgeWord : topWord, top_mm.value, levels.top_mm, top_mm.basis === 'assumed'),
      ...(isEdgeAtTop
        ? []
        : [one(edgeWord, edge_mm.value, levels.edge_mm, edge_mm.basis === 'assumed')]),
    ].toSorted((a, b) => a.up_mm - b.up_mm)
  }
  const height = known(project, { field: 'opening.sill-height', part: id })
  if (height === undefined || typeof height.value !== 'number') return undefined
  return [{ number: levelWords(height.value, unit, language), name: sillWord[language], up_mm: 0, isBare: true }]
} // prettier-ignore

const sillWord = words('bare sill over FFL', 'Rohbrüstung ü. OKFF')
const floorWord = words('finished floor, FFL', 'OK Fertigfußboden')
const surfaceWord = words('surface outside', 'OK Belag außen')
const topWord = words('top of threshold', 'OK Schwelle')
const edgeWord = words('edge of waterproofing', 'OK Abdichtung')
const topAndEdgeWord = words('threshold, waterproofing', 'OK Schwelle, Abdichtung')
const assumedWord = words('{0}, assumed', '{0}, angenommen')

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
/** Marks stand no closer than number and name take; a line bends to a mark that had to move, over this much. Ours. */
const pitch_mm = 2 * (heights.size_mm + offLine_mm) + 1.2
const bend_mm = 4

/** What marks take beside a view. */
export const levelTakes_mm = (level: Level): number =>
  4 + (level.length > 1 ? bend_mm : 0) + Math.max(...level.map(wide_mm))

const wide_mm = ({ number, name }: OneLevel): number =>
  Math.max(
    textWidth_mm(number, heights.size_mm) + triangle_mm[0] + 2 * beside_mm,
    textWidth_mm(name, heights.size_mm),
  )

/** Between which heights the marks stand, from the lower edge of a view whose window begins at `low_mm` across. */
export const levelReach_mm = (
  level: Level,
  scale: number,
  low_mm: number,
): readonly [low: number, high: number] => {
  const at = spread(level.map(it => (it.up_mm - low_mm) * scale))
  const half = pitch_mm / 2
  return [Math.min(...at) - half, Math.max(...at) + half]
}

/**
 * Levels at the left of a view: their lines end at a place across and at their heights, which are measured from the end
 * of the wall at `y`. Where levels lie close together their marks move apart.
 */
export const levelMarks = (level: Level, [x, y]: Point, scale: number): readonly Mark[] => {
  const long = levelTakes_mm(level) - 2
  const heights_mm = level.map(it => y + it.up_mm * scale)
  return spread(heights_mm).flatMap((at, i) => {
    const one = level[i]
    const own = heights_mm[i] ?? at
    return one ? markAt(one, { x, y: own, at, long, isBent: level.length > 1 }) : []
  })
}

/** Places in rising order, moved apart evenly round where they stand. */
const spread = (places: readonly number[]): readonly number[] => {
  const groups: { sum: number; count: number }[] = []
  for (const place of places) {
    let group = { sum: place, count: 1 }
    for (let last = groups.at(-1); last; last = groups.at(-1)) {
      const gap = group.sum / group.count - last.sum / last.count
      if (gap >= ((group.count + last.count) / 2) * pitch_mm) break
      groups.pop()
      group = { sum: group.sum + last.sum, count: group.count + last.count }
    }
    groups.push(group)
  }
  return groups.flatMap(({ sum, count }) =>
    Array.from({ length: count }, (_, i) => sum / count + (i - (count - 1) / 2) * pitch_mm),
  )
}

const markAt = (
  { number, name, isBare }: OneLevel,
  to: { readonly x: number; readonly y: number; readonly at: number; readonly long: number; readonly isBent: boolean },
): readonly Mark[] => {
  const right = to.isBent ? to.x - bend_mm : to.x
  const [half, high] = [triangle_mm[0] / 2, triangle_mm[1]]
  const apex = right - beside_mm - half
  const outline: readonly Point[] = [[apex, to.at], [apex + half, to.at + high], [apex - half, to.at + high]] // prettier-ignore
  return [
    ...(to.isBent ? [line('size', [to.x, to.y], [right, to.at])] : []),
    line('size', [right, to.at], [to.x - to.long, to.at]),
    ...(isBare
      ? [{ kind: 'area', layer: 'sheet', outline, holes: [], tint: '#111111' } as const]
      : [{ kind: 'path', layer: 'sheet', pen: 'size', points: outline, closed: true } as const]),
    text(number, [apex - half - beside_mm, to.at + offLine_mm], { anchor: 'end' }),
    text(name, [right, to.at - offLine_mm - heights.size_mm], { anchor: 'end' }),
  ]
} // prettier-ignore
