import type { Point } from '../geometry'
import type { Some } from '../words'
import type { Hatching, View, ViewMark } from './mark'
import { placeView } from './place-view'

/**
 * The marks of a view as marks on paper. Their pens still follow the view's scale; their hatches keep their pitch,
 * because an area's hatching is turned and moved with it and its part's size is scaled.
 */
export const flatten = (view: View): readonly ViewMark[] => {
  const { toPaper } = placeView(view)
  return view.marks.map(mark => flatMark(mark, view, toPaper))
}

type ToPaper = (at: Point) => Point

const flatMark = (mark: ViewMark, view: View, to: ToPaper): ViewMark => {
  switch (mark.kind) {
    case 'path':
      return { ...mark, points: mark.points.map(to) }
    case 'area':
      return {
        ...mark,
        outline: mark.outline.map(to),
        holes: mark.holes.map(hole => hole.map(to)),
        ...(mark.hatch && { hatch: flatHatching(mark.hatch, view, to) }),
      }
    case 'text':
    case 'symbol':
    case 'picture':
      return { ...mark, at: to(mark.at) }
    case 'dimension':
      return { ...mark, from: to(mark.from), to: to(mark.to), line: to(mark.line), text: to(mark.text) }
    case 'leader': {
      const [first, ...more] = mark.path
      const path: Some<Point> = [to(first), ...more.map(to)]
      return { ...mark, path }
    }
  }
}

/** In a mirrored view a hatch is mirrored too, and its part's lower left corner is the other one. */
const flatHatching = (hatch: Hatching, view: View, to: ToPaper): Hatching => {
  const turn_deg = view.turn_deg + (view.mirrored ? -hatch.turn_deg : hatch.turn_deg)
  const size: Point | undefined = hatch.size && [hatch.size[0] * view.scale, hatch.size[1] * view.scale]
  const [x, y] = to(hatch.origin)
  const { mirrored, size: _, ...rest } = hatch
  const kept = { ...rest, turn_deg, ...(size && { size }) }
  if (!view.mirrored) return { ...kept, origin: [x, y], ...(mirrored && { mirrored }) }
  const back = size?.[0] ?? 0
  const angle = (turn_deg * Math.PI) / 180
  const origin: Point = [x - back * Math.cos(angle), y - back * Math.sin(angle)]
  return { ...kept, origin, ...(mirrored ? {} : { mirrored: true }) }
}
