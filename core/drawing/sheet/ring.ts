import type { Point } from '../../geometry'
import type { View, ViewMark } from '../mark'
import { placeView } from '../place-view'
import type { Window } from '../section/clip'
import { heights, textWidth_mm } from '../text/lettering'
import type { Taken } from './free-room'
import { text } from './marks'
import { type Box, meet, stepsAlong } from './side-words'

/** A ring on a main view has round corners of this radius: nothing that is built looks so. Ours. */
const corner_mm = 2.2
const steps = 4

const ringRound = (low: Point, high: Point, toModel: (at: Point) => Point): ViewMark => {
  const radius = Math.min(corner_mm, (high[0] - low[0]) / 2, (high[1] - low[1]) / 2)
  const corners: readonly Point[] = [
    [high[0] - radius, high[1] - radius],
    [low[0] + radius, high[1] - radius],
    [low[0] + radius, low[1] + radius],
    [high[0] - radius, low[1] + radius],
  ]
  const points = corners.flatMap(([x, y], corner) =>
    Array.from({ length: steps + 1 }, (_, at): Point => {
      const angle = ((corner + at / steps) * Math.PI) / 2
      return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)]
    }),
  )
  return { kind: 'path', layer: 'sheet', pen: 'seen', closed: true, points: points.map(toModel) }
}

/** How far off the ring its letter is looked for, and how much room it wants round it. Ours. */
const farthest_mm = 40
const round_mm = 0.9

/** What is enlarged, as a box on the sheet. */
export const ringBox = (main: View, window: Window): Box => {
  const { toPaper } = placeView(main)
  const [a, b] = [toPaper(window[0]), toPaper(window[1])]
  return [
    [Math.min(a[0], b[0]), Math.min(a[1], b[1])],
    [Math.max(a[0], b[0]), Math.max(a[1], b[1])],
  ]
}

/**
 * A thin line round what is enlarged, with its letter beside it where there is paper, joined to it by a line that runs
 * through no words.
 */
export const ringOn = (
  main: View,
  [low, high]: Box,
  letter: string,
  { taken, words }: { readonly taken: Taken; readonly words: readonly Box[] },
): readonly ViewMark[] => {
  const { toModel } = placeView(main)
  const strikes = (from: Point, to: Point) =>
    stepsAlong(from, to).some(step => words.some(box => meet(step, box)))
  const [wide, tall] = [textWidth_mm(letter, heights.subtitle_mm, true), heights.subtitle_mm]
  let best: { readonly at: Point; readonly from: Point; readonly to: Point } | undefined
  let least = Infinity
  for (let x = low[0] - farthest_mm; x <= high[0] + farthest_mm; x += 1)
    for (let y = low[1] - farthest_mm; y <= high[1] + farthest_mm; y += 1) {
      const middle: Point = [x + wide / 2, y + tall / 2]
      const from: Point = [
        Math.min(Math.max(middle[0], low[0]), high[0]),
        Math.min(Math.max(middle[1], low[1]), high[1]),
      ]
      const away = Math.hypot(middle[0] - from[0], middle[1] - from[1])
      if (away >= least || away < 1) continue
      const box = [[x - round_mm, y - round_mm], [x + wide + round_mm, y + tall + round_mm]] as const // prettier-ignore
      if (!taken.isFree(box)) continue
      const off = (Math.max(wide, tall) / 2 + round_mm) / away
      const to: Point = [
        middle[0] + (from[0] - middle[0]) * Math.min(1, off),
        middle[1] + (from[1] - middle[1]) * Math.min(1, off),
      ]
      if (strikes(from, to)) continue
      ;[best, least] = [{ at: [x, y], from, to }, away]
    }
  const ring = ringRound(low, high, toModel)
  if (best === undefined) return [ring]
  const joined: ViewMark = {
    kind: 'path',
    layer: 'sheet',
    pen: 'seen',
    closed: false,
    points: [best.from, best.to].map(toModel),
  }
  const letters = text(letter, toModel(best.at), { height_mm: heights.subtitle_mm, bold: true })
  return [ring, joined, letters]
}
