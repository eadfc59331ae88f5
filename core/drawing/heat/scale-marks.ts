import type { Point } from '../../geometry'
import { writeNumber } from '../../units'
import type { Language } from '../../words'
import type { ViewMark } from '../mark'
import { heights } from '../text/lettering'
import { boxOf, line, rectangle, text } from '../sheet/marks'
import { levelWords, roomFor_mm } from './level-words'
import type { HeatPicture } from './picture'
import { bandColour, isStrong } from './scale'

/** Where a picture beside a field stands on the paper: its lower left corner and its size in mm. */
export type Place = { readonly at: Point; readonly size: Point }

const bar_mm = 5
const tick_mm = 1
const gap_mm = 1.2

/** The scale of a field: a bar in its bands, numbers each five degrees, its named lines. */
export const scaleMarks = (
  { scale, named }: Pick<HeatPicture, 'scale' | 'named'>,
  { at: [x0, y0], size: [width, height] }: Place,
  language: Language,
): readonly ViewMark[] => {
  const { low_C, high_C, edges_C } = scale
  const y = y0 + Math.max(heights.note_mm + tick_mm + gap_mm + 0.6, (height - bar_mm) * 0.42)
  const place = (value_C: number): number =>
    x0 + (high_C > low_C ? ((value_C - low_C) / (high_C - low_C)) * width : width / 2)
  const ends = [low_C, ...edges_C, high_C]
  const bands = ends.slice(1).map((to_C, band): ViewMark => ({
    kind: 'area',
    layer: 'heat',
    outline: boxOf([place(ends[band] ?? low_C), y], [place(to_C) - place(ends[band] ?? low_C), bar_mm]),
    holes: [],
    tint: bandColour(scale, band),
  }))
  const lines = edges_C.map((level_C): ViewMark =>
    line(
      isStrong(level_C) ? 'isotherm-strong' : 'isotherm',
      [place(level_C), y],
      [place(level_C), y + bar_mm],
    ),
  )
  const rim = rectangle('size', [x0, y], [width, bar_mm])
  const numbers = ends.filter(it => it === low_C || it === high_C || isStrong(it))
  let last = -Infinity
  const ticks = numbers.flatMap((value_C, i): readonly ViewMark[] => {
    const isEnd = i === numbers.length - 1
    const said = `${writeNumber(value_C, language)}${isEnd ? ' °C' : ''}`
    const half = roomFor_mm(said) / 2
    const middle = Math.min(x0 + width - half, Math.max(x0 + half, place(value_C)))
    const next = numbers[i + 1]
    // The warm end has the unit: a number that would touch it steps back.
    const isCrowded = !isEnd && next === high_C && place(high_C) - middle < 2 * half + 5
    if (middle - half < last + gap_mm || isCrowded)
      return [line('size', [place(value_C), y - tick_mm], [place(value_C), y])]
    last = middle + half
    return [
      line('size', [place(value_C), y - tick_mm], [place(value_C), y]),
      text(said, [middle, y - tick_mm - gap_mm - heights.note_mm], { anchor: 'middle' }),
    ]
  })
  return [
    ...bands,
    ...lines,
    rim,
    ...ticks,
    ...namesOver({ named, place, y: y + bar_mm, x0, width, language }),
  ]
}

/**
 * Names over the bar with a dashed stroke through it: the colder one at the left of its stroke, the warmer at the right;
 * where they would touch, the warmer stands higher.
 */
const namesOver = (of: {
  readonly named: HeatPicture['named']
  readonly place: (value_C: number) => number
  readonly y: number
  readonly x0: number
  readonly width: number
  readonly language: Language
}): readonly ViewMark[] => {
  const { named, place, y, x0, width, language } = of
  let last = -Infinity
  return named
    .toSorted((a, b) => a.level_C - b.level_C)
    .flatMap(({ level_C, name }, i): readonly ViewMark[] => {
      const said = levelWords({ level_C, name }, language)
      const long = roomFor_mm(said, true)
      const isLeft = i === 0 && named.length > 1
      const foot = isLeft
        ? Math.max(x0, place(level_C) + 0.9 - long)
        : Math.max(x0, Math.min(x0 + width - long, place(level_C) - 0.9))
      const up = foot < last + gap_mm ? heights.note_mm + 1.1 : 0
      last = foot + long
      return [
        line('isotherm-named', [place(level_C), y - bar_mm], [place(level_C), y + 1 + up]),
        text(said, [foot, y + 2 + up], { bold: true }),
      ]
    })
}
