import { densityOf, type Pen, type ViewMark } from '../../../core/drawing'
import type { Point } from '../../../core/geometry'
import { around, type Box, boxOf, grown } from './box'

/**
 * What has changed between the marks of a part and the marks that come in their place: boxes in model millimetres that
 * hold every place that looks different, without the width of pens. Nothing where it cannot be told: all may look different.
 */
export const changesBetween = (
  old: readonly ViewMark[],
  now: readonly ViewMark[],
  scale: number,
): readonly Box[] | undefined => {
  const boxes =
    old.length === now.length && old.every((it, at) => it.kind === now[at]?.kind)
      ? old.map((it, at) => changeOf(it, now[at] ?? it, scale))
      : [...old, ...now].map(extentOf)
  const known = boxes.flatMap(it => it ?? [])
  return boxes.every(it => it !== undefined) ? known : undefined
}

/** The box that a mark lies in, in model millimetres, without the width of pens; nothing where words decide how far it reaches. */
export const extentOf = (mark: ViewMark): readonly Box[] | undefined => {
  switch (mark.kind) {
    case 'path':
      return some(boxOf(mark.points))
    case 'area':
      return some(boxOf(mark.outline))
    case 'text':
    case 'dimension':
    case 'leader':
    case 'symbol':
    case 'picture':
      return undefined
  }
}

const some = (box: Box | undefined): readonly Box[] => (box ? [box] : [])

const changeOf = (old: ViewMark, now: ViewMark, scale: number): readonly Box[] | undefined => {
  if (old === now) return []
  if (old.kind === 'path' && now.kind === 'path') {
    if (old.pen !== now.pen || old.layer !== now.layer || !plainPens.includes(old.pen))
      return isSame(old, now) ? [] : [...some(boxOf(old.points)), ...some(boxOf(now.points))]
    return differing(edgesOf([old.points], old.closed), edgesOf([now.points], now.closed))
  }
  if (old.kind === 'area' && now.kind === 'area') {
    const edges = differing(
      edgesOf([old.outline, ...old.holes], true),
      edgesOf([now.outline, ...now.holes], true),
    )
    return isLikeHatched(old, now, scale) ? edges : [...some(boxOf(old.outline)), ...some(boxOf(now.outline))]
  }
  return isSame(old, now) ? [] : undefined
}

/** Pens that draw the same along a piece of a line wherever the line begins: neither dashes nor marks set along it. */
const plainPens: readonly Pen[] = ['cut', 'cut-small', 'seen']

const isSame = (a: ViewMark, b: ViewMark): boolean => JSON.stringify(a) === JSON.stringify(b)

type Area = Extract<ViewMark, { kind: 'area' }>

/** Whether two areas look alike wherever both are: a hatch is fixed to its origin, not to the outline. */
const isLikeHatched = (a: Area, b: Area, scale: number): boolean => {
  if (a.tint !== b.tint || a.layer !== b.layer) return false
  if (a.hatch === undefined || b.hatch === undefined) return a.hatch === b.hatch
  return (
    a.hatch.size !== undefined &&
    JSON.stringify(a.hatch) === JSON.stringify(b.hatch) &&
    densityOf(a, a.hatch, scale) === densityOf(b, b.hatch, scale)
  )
}

type Edge = readonly [from: Point, to: Point]

const edgesOf = (lines: readonly (readonly Point[])[], isClosed: boolean): readonly Edge[] =>
  lines.flatMap(line => {
    const edges = line.slice(1).map((to, at): Edge => [line[at] ?? to, to])
    const [first, last] = [line[0], line[line.length - 1]]
    return isClosed && first && last ? [...edges, [last, first] as const] : edges
  })

/** The boxes of those pieces of edges that only one side has. */
const differing = (old: readonly Edge[], now: readonly Edge[]): readonly Box[] => {
  const left = [...without(old, now), ...without(now, old)]
  const box = around(left.flatMap(it => some(boxOf(it))))
  return some(box && grown(box, same_mm))
}

const without = (edges: readonly Edge[], others: readonly Edge[]): readonly Edge[] =>
  edges.flatMap(edge => {
    if (others.some(it => isSameEdge(it, edge))) return []
    const axis = level(edge)
    if (axis === undefined) return [edge]
    // Neighbours share their vertices, so a straight side may be parted here and whole there.
    const along = others.filter(it => isOver(it, edge, axis))
    return along.reduce<readonly Edge[]>(
      (rest, it) => rest.flatMap(piece => cutAway(piece, it, axis)),
      [edge],
    )
  })

/** Whether a level edge and another one lie on one line and over each other. */
const isOver = (a: Edge, b: Edge, axis: 0 | 1): boolean => {
  const line = b[0][other(axis)]
  return (
    Math.abs(a[0][other(axis)] - line) < same_mm &&
    Math.abs(a[1][other(axis)] - line) < same_mm &&
    Math.min(a[0][axis], a[1][axis]) < Math.max(b[0][axis], b[1][axis]) &&
    Math.min(b[0][axis], b[1][axis]) < Math.max(a[0][axis], a[1][axis])
  )
}

const other = (axis: 0 | 1): 0 | 1 => (axis === 0 ? 1 : 0)

/** The axis that an edge runs along. */
const level = ([a, b]: Edge): 0 | 1 | undefined =>
  Math.abs(a[1] - b[1]) < same_mm ? 0 : Math.abs(a[0] - b[0]) < same_mm ? 1 : undefined

const isSameEdge = (a: Edge, b: Edge): boolean =>
  (isSamePlace(a[0], b[0]) && isSamePlace(a[1], b[1])) || (isSamePlace(a[0], b[1]) && isSamePlace(a[1], b[0]))

const isSamePlace = (a: Point, b: Point): boolean =>
  Math.abs(a[0] - b[0]) < same_mm && Math.abs(a[1] - b[1]) < same_mm

/** Lengths that differ by less than this are the same on any screen, in mm. */
const same_mm = 1e-6

const cutAway = (piece: Edge, by: Edge, axis: 0 | 1): readonly Edge[] => {
  const [from, to] = [Math.min(piece[0][axis], piece[1][axis]), Math.max(piece[0][axis], piece[1][axis])]
  const [low, high] = [Math.min(by[0][axis], by[1][axis]), Math.max(by[0][axis], by[1][axis])]
  const place = (along: number): Point => (axis === 0 ? [along, piece[0][1]] : [piece[0][0], along])
  const pieces: Edge[] = [
    [place(from), place(Math.min(to, low))],
    [place(Math.max(from, high)), place(to)],
  ]
  return pieces.filter(([a, b]) => b[axis] - a[axis] > same_mm)
}
