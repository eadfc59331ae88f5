import { drawSection, type ViewMark } from '../../core/drawing'
import type { Point } from '../../core/geometry'

/** So many marks a board has to bear. */
const wanted = 3000

type Drawing = typeof drawSection

/** The copies of a board and of the enlarged joint, each made once. */
const still = new Map<string, readonly ViewMark[]>()

/**
 * Draws a section as usual, and below it as many small copies of it as make three thousand marks, spread over all that is
 * drawn. The copies stand still while the section moves, as the rest of a full board does.
 */
export const tiledSection: Drawing = (section, look) => {
  const drawn = drawSection(section, look)
  const { view } = drawn
  const of = JSON.stringify([view.window, view.scale, section.side])
  const marks = still.get(of) ?? copies(view.marks, view.window)
  still.set(of, marks)
  return { ...drawn, view: { ...view, marks: [...marks, ...view.marks] } }
}

const copies = (marks: readonly ViewMark[], [low, high]: readonly [Point, Point]): readonly ViewMark[] => {
  const count = Math.ceil(wanted / marks.length) - 1
  const columns = Math.ceil(Math.sqrt(count))
  const shrink = 0.92 / columns
  return Array.from({ length: count }, (_, at) => {
    const [column, row] = [at % columns, Math.floor(at / columns)]
    const to = ([x, y]: Point): Point => [
      low[0] + ((high[0] - low[0]) * column) / columns + (x - low[0]) * shrink,
      low[1] + ((high[1] - low[1]) * row) / columns + (y - low[1]) * shrink,
    ]
    return marks.flatMap(mark => copied(mark, to, { shrink, name: `#${at}` }))
  }).flat()
}

const copied = (
  mark: ViewMark,
  to: (at: Point) => Point,
  { shrink, name }: { readonly shrink: number; readonly name: string },
): readonly ViewMark[] => {
  const part = `${mark.part ?? ''}${name}`
  if (mark.kind === 'path') return [{ ...mark, part, points: mark.points.map(to) }]
  if (mark.kind !== 'area') return []
  const { hatch } = mark
  return [
    {
      ...mark,
      part,
      outline: mark.outline.map(to),
      holes: mark.holes.map(hole => hole.map(to)),
      ...(hatch && {
        hatch: {
          ...hatch,
          origin: to(hatch.origin),
          ...(hatch.size && { size: [hatch.size[0] * shrink, hatch.size[1] * shrink] as const }),
        },
      }),
    },
  ]
}
