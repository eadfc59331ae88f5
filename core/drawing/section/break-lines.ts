import type { Point, Region } from '../../geometry'
import type { ViewMark } from '../mark'
import type { Window } from './clip'

/** How far a break line reaches beyond what it cuts, and half the height of its zigzag, on paper. Ours. */
const beyond_mm = 3
const zigzag_mm = 2
/** Bodies with less than this between them share one break line, on paper. Ours. */
const joined_mm = 8

/** A thin line with a zigzag wherever the window cuts through bodies. */
export const breakLines = (
  regions: readonly Region[],
  window: Window,
  scale: number,
): readonly ViewMark[] => {
  const [low, high] = window
  const edges = [
    { axis: 0, at: low[0] },
    { axis: 0, at: high[0] },
    { axis: 1, at: low[1] },
    { axis: 1, at: high[1] },
  ] as const
  return edges.flatMap(({ axis, at }) =>
    joined(spansAt(regions, axis, at, window), joined_mm / scale).map(span =>
      breakLine(axis, at, span, scale),
    ),
  )
}

type Span = readonly [from: number, to: number]

/** Where bodies pass through a line across the section; a body that only ends there does not pass. */
const spansAt = (regions: readonly Region[], axis: 0 | 1, at: number, window: Window): Span[] => {
  const other = axis === 0 ? 1 : 0
  return regions.flatMap(region => {
    if (region.fill.kind === 'air') return []
    const reach = region.outline.map(it => it[axis])
    if (!(Math.min(...reach) < at && at < Math.max(...reach))) return []
    const crossings = [region.outline, ...region.holes]
      .flatMap(outline =>
        outline.flatMap((from, index) => crossing(from, outline[(index + 1) % outline.length], axis, at)),
      )
      .sort((a, b) => a - b)
    return crossings.flatMap((from, index): Span[] => {
      const to = crossings[index + 1]
      if (index % 2 === 1 || to === undefined) return []
      const span: Span = [Math.max(from, window[0][other]), Math.min(to, window[1][other])]
      return span[0] < span[1] ? [span] : []
    })
  })
}

const crossing = (from: Point, to: Point | undefined, axis: 0 | 1, at: number): number[] => {
  if (to === undefined || from[axis] < at === to[axis] < at) return []
  const other = axis === 0 ? 1 : 0
  return [from[other] + ((at - from[axis]) / (to[axis] - from[axis])) * (to[other] - from[other])]
}

const joined = (spans: readonly Span[], least: number): Span[] => {
  const result: Span[] = []
  for (const span of spans.toSorted((a, b) => a[0] - b[0])) {
    const last = result[result.length - 1]
    if (last && span[0] - last[1] <= least) result[result.length - 1] = [last[0], Math.max(last[1], span[1])]
    else result.push(span)
  }
  return result
}

const breakLine = (axis: 0 | 1, at: number, [from, to]: Span, scale: number): ViewMark => {
  const middle = (from + to) / 2
  const [over, up] = [beyond_mm / scale, zigzag_mm / scale]
  const place = (along: number, aside: number): Point =>
    axis === 0 ? [at + aside, along] : [along, at + aside]
  return {
    kind: 'path',
    layer: 'seen',
    pen: 'break',
    closed: false,
    points: [
      place(from - over, 0),
      place(middle - up, 0),
      place(middle - up / 2, up),
      place(middle + up / 2, -up),
      place(middle + up, 0),
      place(to + over, 0),
    ],
  }
}
