import {
  type Drawing,
  flatten,
  type Ink,
  inkOfMarks,
  inkOfView,
  placeView,
  sizeOnPaper_mm,
  type View,
  type ViewMark,
} from '../../drawing'
import type { Point } from '../../geometry'
import { drawArea } from './areas'
import { type Box, boxOf } from './bounds'
import { add, type Draft, type Place, type Space } from './draft'
import { drawInk } from './figures'
import { allButOutlines, type On, outlinesOver, viewportLayer } from './layers'
import { drawLeader, drawSize } from './sizes'
import { drawSymbol } from './symbols'
import { type Handle, point, type Tags } from './tags'

/** Between two views in model space, at least. Ours. */
const apart_mm = 100

/**
 * Draws a sheet: its own marks in paper space, its views true to size in model space, turned as on the sheet, each seen
 * through a viewport at its scale; what is enlarged is seen once more. The origin of the first view is that of model space; others follow to the right,
 * their origins on its level. Gives where the next view may begin, and the box of what is in model space.
 */
export const drawSheet = (
  draft: Draft,
  drawing: Drawing,
  into: { readonly paper: Space; readonly model: Space; readonly taken?: Box },
): Box | undefined => {
  const paper: Place = { draft, space: into.paper, scale: 1, at: it => it }
  let taken = into.taken
  let viewports = 1
  let main: Main | undefined
  for (const mark of drawing.marks) {
    if (mark.kind !== 'view') {
      drawMark(paper, mark, () => inkOfMarks([mark], draft.look).flatMap(it => it.inks))
      continue
    }
    if (mark.enlarged && main) {
      drawEnlarged(paper, mark, { ...main, id: ++viewports })
      continue
    }
    const box = boxOf(inkOfView(mark, draft.look).flatMap(it => it.inks))
    if (box === undefined) continue
    const place = placeOf(draft, mark, { model: into.model, box, taken })
    drawView(place, mark)
    viewport(paper, place, { box, id: ++viewports })
    main = { view: mark, place }
    taken = joined(taken, [place.at(box[0]), place.at(box[1])])
  }
  return taken
}

const joined = (a: Box | undefined, b: Box): Box =>
  a === undefined
    ? b
    : [
        [Math.min(a[0][0], b[0][0]), Math.min(a[0][1], b[0][1])],
        [Math.max(a[1][0], b[1][0]), Math.max(a[1][1], b[1][1])],
      ]

const placeOf = (
  draft: Draft,
  view: View,
  on: { readonly model: Space; readonly box: Box; readonly taken: Box | undefined },
): Place => {
  const origin = placeView(view).toPaper([0, 0])
  const left = (on.box[0][0] - origin[0]) / view.scale
  const shift =
    on.taken === undefined ? 0 : Math.ceil((on.taken[1][0] + apart_mm - left) / apart_mm) * apart_mm
  return {
    draft,
    space: on.model,
    scale: view.scale,
    at: ([x, y]) => [(x - origin[0]) / view.scale + shift, (y - origin[1]) / view.scale],
  }
}

const drawView = (place: Place, view: View): void => {
  flatten(view).forEach((mark, at) => {
    const own = view.marks[at]
    if (own === undefined) return
    drawMark(place, mark, () => inkOfView({ ...view, marks: [own] }, place.draft.look).flatMap(it => it.inks))
  })
}

/** A view with its place in model space. */
type Main = { readonly view: View; readonly place: Place }

/**
 * What is enlarged is no second drawing in model space: a second viewport shows the outlines of the first there, at its own
 * scale. What follows the paper (hatches, fills, sizes, numbers, membranes) and outlines that the first view is too small
 * for stand on the sheet, under that viewport or over it.
 */
const drawEnlarged = (
  paper: Place,
  view: View,
  { view: from, place, id }: Main & { readonly id: number },
): void => {
  const { draft } = paper
  const onPaper: Place = { ...paper, draft: { ...draft, enlarged: view.scale } }
  const outlined = new Set(from.marks.flatMap(it => (isOutline(it) ? [it.part] : [])))
  const own = view.marks.filter(it => !(isOutline(it) && outlined.has(it.part)))
  drawView(onPaper, { ...view, marks: own })
  const [low, high] = view.window
  const middle: Point = [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2]
  const size = sizeOnPaper_mm(view)
  addViewport(paper, {
    middle: placeView(view).toPaper(middle),
    size,
    id,
    seen: place.at(placeView(from).toPaper(middle)),
    height: size[1] / view.scale,
    on: outlinesOver(draft),
    frozen: allButOutlines(draft),
  })
}

const isOutline = (mark: ViewMark): boolean =>
  mark.kind === 'path' && (mark.pen === 'cut' || mark.pen === 'cut-small') && mark.part !== undefined

/** Draws a mark whose places are paper mm; its ink is asked for only where the format has nothing better. */
const drawMark = (place: Place, mark: ViewMark, inks: () => readonly Ink[]): void => {
  switch (mark.kind) {
    case 'area':
      if (mark.hatch) {
        drawArea(place, { ...mark, hatch: mark.hatch })
        return
      }
      break
    case 'dimension':
      drawSize(place, mark, inks())
      return
    case 'leader':
      drawLeader(place, mark, inks())
      return
    case 'symbol':
      drawSymbol(place, mark)
      return
    default:
  }
  for (const ink of inks()) drawInk(place, ink, mark.layer, mark.kind === 'text' ? mark.pen : 'text')
}

/** What a viewport shows beyond its ink, so that no line lies on its edge. Ours. */
const margin_mm = 1

const viewport = (paper: Place, view: Place, on: { readonly box: Box; readonly id: number }): void => {
  const [[left, low], [right, high]] = on.box
  const middle: Point = [(left + right) / 2, (low + high) / 2]
  const size: Point = [right - left + 2 * margin_mm, high - low + 2 * margin_mm]
  addViewport(paper, { middle, size, id: on.id, seen: view.at(middle), height: size[1] / view.scale })
}

/** The viewport that stands for the sheet itself, which a layout must have first. */
export const sheetViewport = (paper: Place, [width, height]: Point): void =>
  addViewport(paper, {
    middle: [width / 2, height / 2],
    size: [width * 1.05, height * 1.05],
    id: 1,
    seen: [width / 2, height / 2],
    height: height * 1.05,
  })

const addViewport = (
  paper: Place,
  it: {
    readonly middle: Point
    readonly size: Point
    readonly id: number
    readonly seen: Point
    readonly height: number
    readonly on?: On
    /** layers that it does not show */
    readonly frozen?: readonly Handle[]
  },
): void => {
  const pair = (code: number, [x, y]: Point): Tags => [
    [code, x],
    [code + 10, y],
  ]
  add(paper, 'VIEWPORT', it.on ?? viewportLayer(paper.draft), [
    [100, 'AcDbViewport'],
    ...point(10, it.middle),
    [40, it.size[0]],
    [41, it.size[1]],
    [68, it.id],
    [69, it.id],
    ...pair(12, it.seen),
    ...pair(13, [0, 0]),
    ...pair(14, [10, 10]),
    ...pair(15, [10, 10]),
    ...[
      [16, 0],
      [26, 0],
      [36, 1],
    ].map(([code = 0, value = 0]) => [code, value] as const),
    ...point(17, [0, 0]),
    [42, 50],
    [43, 0],
    [44, 0],
    [45, it.height],
    [50, 0],
    [51, 0],
    [72, 1000],
    ...(it.frozen ?? []).map(layer => [331, layer] as const),
    [90, shownAndLocked],
    [1, ''],
    [281, 0],
    [71, 1],
    [74, 0],
    ...point(110, [0, 0]),
    ...point(111, [1, 0]),
    ...point(112, [0, 1]),
    [79, 0],
    [146, 0],
  ])
}

/** A viewport's flags: always on, fast zoom, and its scale locked. */
const shownAndLocked = 32768 | 16384 | 128
