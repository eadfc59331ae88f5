import { describe, expect, test } from 'vitest'
import { type ViewMark, profileMarks, textWidth_mm } from '../../../../core/drawing'
import type { Point } from '../../../../core/geometry'
import type { Side } from '../../../../core/kinds'
import type { Language } from '../../../../core/words'
import { aHeatPicture } from '../../../given/a-heat-picture'

type Text = Extract<ViewMark, { kind: 'text' }>
type Path = Extract<ViewMark, { kind: 'path' }>

/** The words of a chart that name a line or a place: what the axis says lies outside of it. */
const wordsIn = (marks: readonly ViewMark[]): readonly Text[] =>
  marks.filter((it): it is Text => it.kind === 'text' && it.bold === true)

const cuts = (
  [
    ['right-jamb', 'left'],
    ['bead-in-brick', 'sill'],
    ['tight-outside', 'left'],
    ['facing-leaf', 'head'],
  ] as const satisfies readonly (readonly [string, Side])[]
).map(([file, side]) => ({ name: `${file}, ${side}`, picture: aHeatPicture(file, side).picture }))

describe.each(cuts)('the chart along the inside of $name', ({ picture }) => {
  test.each([90, 110, 150, 220])('%i mm wide: no line and no curve runs through words', width => {
    for (const language of ['en', 'de'] as const satisfies readonly Language[])
      for (const height of [32, 42, 60]) {
        const marks = profileMarks(picture, { at: [0, 0], size: [width, height] }, language)
        const named = wordsIn(marks)
        expect(named.length).toBeGreaterThan(1)
        for (const it of named) {
          const box = boxOf(it)
          const through = marks.filter(
            (mark): mark is Path => mark.kind === 'path' && mark.pen !== 'curve' && crosses(mark.points, box),
          )
          expect(through, `${it.words} at ${width} × ${height}`).toEqual([])
        }
      }
  })
})

const boxOf = ({ at: [x, y], words, height_mm }: Text): readonly [Point, Point] => [
  [x, y],
  [x + textWidth_mm(words, height_mm, true), y + height_mm],
]

/** Whether an upright or level stretch of a line passes through a box. */
const crosses = (points: readonly Point[], [[left, low], [right, high]]: readonly [Point, Point]): boolean =>
  points.slice(1).some(([x, y], i) => {
    const [px, py] = points[i] ?? [x, y]
    return (
      Math.min(x, px) < right && left < Math.max(x, px) && Math.min(y, py) < high && low < Math.max(y, py)
    )
  })
