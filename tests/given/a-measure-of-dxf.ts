import { Helper } from 'dxf'
import { type Drawing, placeView, sizeOnPaper_mm, type View, type ViewMark } from '../../core/drawing'
import type { ReadDxf } from './a-reader-of-dxf'

/** The views of a sheet. */
export const viewsOf = ({ marks }: Drawing): readonly View[] =>
  marks.flatMap(it => (it.kind === 'view' ? [it] : []))

/** The views of a sheet that have a drawing of their own in model space: what is enlarged shows one of them once more. */
const ownViewsOf = (drawing: Drawing): readonly View[] => viewsOf(drawing).filter(it => !it.enlarged)

/** Marks of one kind. */
export const ofKind = <K extends ViewMark['kind']>(
  marks: readonly ViewMark[],
  kind: K,
): readonly Extract<ViewMark, { kind: K }>[] =>
  marks.flatMap(it => (it.kind === kind ? [it as Extract<ViewMark, { kind: K }>] : [])) // the test just asked for its kind

const areaOf = (outline: readonly (readonly [number, number])[]): number =>
  Math.abs(
    outline.reduce((sum, [x, y], at) => {
      const [toX, toY] = outline[(at + 1) % outline.length] ?? [x, y]
      return sum + x * toY - toX * y
    }, 0),
  ) / 2

/** By how much of itself the area of a part in a file differs at most from that in its sheet; parts must be the same. */
export const worstArea = (found: Readonly<Record<string, number>>, drawing: Drawing): number => {
  const expected: Record<string, number> = {}
  for (const { part, outline, holes } of ownViewsOf(drawing).flatMap(it => ofKind(it.marks, 'area')))
    if (part !== undefined)
      expected[part] =
        (expected[part] ?? 0) + areaOf(outline) - holes.reduce((sum, it) => sum + areaOf(it), 0)
  if (Object.keys(found).toSorted().join() !== Object.keys(expected).toSorted().join()) return Infinity
  return Math.max(...Object.entries(expected).map(([part, it]) => Math.abs((found[part] ?? 0) / it - 1)))
}

/** What a file holds that its sheet does not, or less than it: audit, areas, counts by layer and kind, sizes, words. */
export const dxfFaults = (read: ReadDxf, drawing: Drawing): readonly string[] => {
  const views = viewsOf(drawing)
  const marks = ownViewsOf(drawing).flatMap(it => it.marks)
  const model = read.counts['Model'] ?? {}
  const paper = Object.entries(read.counts).find(([name]) => name !== 'Model')?.[1] ?? {}
  const sizes = ofKind(marks, 'dimension')
  const leaders = ofKind(marks, 'leader')
  const areas = ofKind(marks, 'area')
  const paths = ofKind(marks, 'path')
  const words = ofKind(
    drawing.marks.filter((it): it is ViewMark => it.kind !== 'view'),
    'text',
  )
  const same = (name: string, found: unknown, wanted: unknown): readonly string[] =>
    JSON.stringify(found) === JSON.stringify(wanted)
      ? []
      : [`${name}: ${JSON.stringify(found)}, not ${JSON.stringify(wanted)}`]
  return [
    ...same('errors', read.errors, []),
    ...same('fixes', read.fixes, []),
    ...(worstArea(read.areas, drawing) < 1e-9 ? [] : ['areas']),
    ...same('sizes', model['JW-SIZES DIMENSION'] ?? 0, sizes.length),
    ...same('words of sizes', read.sizeWords.flat(), sizes.map(it => it.words)),
    ...sizes.flatMap((it, at) => {
      const length = Math.hypot(it.to[0] - it.from[0], it.to[1] - it.from[1])
      return Math.abs((read.sizes[at]?.measures ?? 0) - length) < 1e-5 ? [] : [`size ${it.words}`]
    }),
    ...same('leaders', model['JW-NUMBERS-LEADER LEADER'] ?? 0, leaders.length),
    ...same('numbers', read.numbers, leaders.map(it => it.number)),
    ...same('regions', model['JW-REGIONS LWPOLYLINE'], areas.reduce((sum, it) => sum + 1 + it.holes.length, 0)),
    ...same(
      'outlines',
      model['JW-FABRIC-CUT LWPOLYLINE'] ?? 0,
      paths.filter(it => it.layer === 'fabric' && it.pen === 'cut').length,
    ),
    ...same(
      'words',
      (paper['JW-WORDS-TEXT TEXT'] ?? 0) + (paper['JW-WORDS-FAINT TEXT'] ?? 0),
      words.length,
    ),
    ...same('viewports', read.viewports.length, views.length),
    ...views.flatMap((it, at) => {
      const [, height = 0, seen = 1] = read.viewports[at] ?? []
      return Math.abs(height / seen - it.scale) < 1e-6 ? [] : [`scale ${height / seen}`]
    }),
    ...views.flatMap((it, at) => (it.enlarged ? enlargedFaults(it, views[at - 1] ?? it, at, read) : [])),
    ...onPaperFaults(views.filter(it => it.enlarged), read, paper),
  ] // prettier-ignore
}

/**
 * What is wrong with a viewport that shows something enlarged: it must show the same place of the model as that of its main
 * view, and of that the outlines alone.
 */
const enlargedFaults = (view: View, main: View, at: number, read: ReadDxf): readonly string[] => {
  const [width = 0, height = 0, , x = 0, y = 0, seenX = 0, seenY = 0] = read.viewports[at] ?? []
  const [, , , mainX = 0, mainY = 0, mainSeenX = 0, mainSeenY = 0] = read.viewports[at - 1] ?? []
  const [low, high] = view.window
  const middle = [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2] as const
  const [there, here] = [placeView(main).toPaper(middle), placeView(view).toPaper(middle)]
  const off = Math.max(
    Math.abs(mainSeenX + (there[0] - mainX) / main.scale - seenX),
    Math.abs(mainSeenY + (there[1] - mainY) / main.scale - seenY),
    Math.abs(here[0] - x),
    Math.abs(here[1] - y),
    ...sizeOnPaper_mm(view).map((it, axis) => Math.abs(it - ([width, height][axis] ?? 0))),
  )
  const frozen = read.frozen[at] ?? []
  const shown = ['JW-FABRIC-CUT', 'JW-PARTS-CUT', 'JW-PARTS-CUT-SMALL'].filter(it => frozen.includes(it))
  const hidden = ['JW-HATCH', 'JW-TINT', 'JW-SIZES', 'JW-NUMBERS-LEADER'].filter(it => !frozen.includes(it))
  return [
    ...(off < 1e-5 ? [] : [`enlarged off by ${off}`]),
    ...shown.map(it => `${it} not shown enlarged`),
    ...hidden.map(it => `${it} shown enlarged`),
  ]
}

/** What is wrong with sizes and numbers of enlarged views: they stand on the sheet, true to the model. */
const onPaperFaults = (
  enlarged: readonly View[],
  read: ReadDxf,
  paper: Readonly<Record<string, number>>,
): readonly string[] => {
  const sizes = enlarged.flatMap(({ marks, scale }) =>
    ofKind(marks, 'dimension').map(it => ({
      length: Math.hypot(it.to[0] - it.from[0], it.to[1] - it.from[1]),
      times: 1 / scale,
    })),
  )
  const untrue = sizes.flatMap(({ length, times }, at) => {
    const found = read.onPaper[at]
    const isTrue =
      found !== undefined &&
      Math.abs(found.times - times) < 1e-6 &&
      Math.abs(found.long * found.times - length) < 1e-5 &&
      Math.abs(found.measures - length) < 1e-5
    return isTrue ? [] : [`size on the sheet ${length}`]
  })
  const leaders = enlarged.flatMap(it => ofKind(it.marks, 'leader')).length
  return [
    ...untrue,
    ...((paper['JW-SIZES DIMENSION'] ?? 0) === sizes.length ? [] : ['sizes on the sheet']),
    ...((paper['JW-NUMBERS-LEADER LEADER'] ?? 0) === leaders ? [] : ['numbers on the sheet']),
  ]
}

/** The box round the polylines of model space as another program reads them. */
export const secondExtent = (
  text: string,
): { readonly low: readonly number[]; readonly high: readonly number[] } => {
  const points = new Helper(text).parsed.entities
    .filter(it => it.type === 'LWPOLYLINE' && !it.paperSpace)
    .flatMap(it => it.vertices ?? [])
  return {
    low: [Math.min(...points.map(it => it.x)), Math.min(...points.map(it => it.y))],
    high: [Math.max(...points.map(it => it.x)), Math.max(...points.map(it => it.y))],
  }
}
