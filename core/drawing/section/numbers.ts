import type { Id, Point } from '../../geometry'
import type { Section } from '../../section'
import { layOutColumns } from '../labels/columns'
import type { Column, Layout, Slots } from '../labels/lay-out'
import type { Site } from '../labels/leaders'
import type { Shape } from '../labels/shape'
import type { ViewMark } from '../mark'
import type { Placement } from '../place-view'
import { clipLine, clipOutline, type Window } from './clip'
import type { ListedPart } from './listed-part'

/** Numbers in circles with leaders to the parts that a window shows. */
export const drawNumbers = (
  section: Section,
  parts: readonly ListedPart[],
  on: {
    readonly hatchOf: (material: Id) => string
    readonly window: Window
    readonly placement: Placement
    readonly columns: readonly Column[]
    readonly kept?: Slots
  },
): { readonly marks: readonly ViewMark[]; readonly layout: Layout } => {
  const { toPaper, toModel } = on.placement
  const shapes = shapesOf(section, on.hatchOf, on.window, toPaper)
  const sites = parts.map(part => siteOf(part, section, shapes, on.window, toPaper)).filter(isVisible)
  const layout = layOutColumns(sites, [...shapes.values()].flat(), on.columns, on.kept)
  const marks = parts.flatMap((part): ViewMark[] => {
    const [first, ...more] = (layout.leaders.get(part.id)?.path ?? []).map(toModel)
    if (first === undefined) return []
    return [
      {
        kind: 'leader',
        layer: 'numbers',
        part: part.id,
        pen: 'leader',
        path: [first, ...more],
        end: 'dot',
        number: part.number,
      },
    ]
  })
  return { marks, layout }
}

const isVisible = (site: Site): boolean => site.shapes.length + site.places.length > 0

/** The visible bodies of each part of the section, on paper. Gas and air are seen through, not pointed at. */
const shapesOf = (
  section: Section,
  hatchOf: (material: Id) => string,
  window: Window,
  toPaper: (at: Point) => Point,
): ReadonlyMap<Id, readonly Shape[]> => {
  const shapes = new Map<Id, Shape[]>()
  for (const region of section.regions) {
    if (region.fill.kind === 'air' || hatchOf(region.fill.material) === 'air_cavity') continue
    const loops = [region.outline, ...region.holes]
      .map(it => clipOutline(it, window))
      .filter(it => it.length > 2)
      .map(it => it.map(toPaper))
    if (loops.length > 0) shapes.set(region.part, [...(shapes.get(region.part) ?? []), { loops }])
  }
  return shapes
}

/** A part is pointed at in its larger bodies: small ones beside them would draw the eye away. */
const mostBodies = 3

const siteOf = (
  part: ListedPart,
  section: Section,
  shapes: ReadonlyMap<Id, readonly Shape[]>,
  window: Window,
  toPaper: (at: Point) => Point,
): Site => {
  const own = part.of.map(it => shapes.get(it) ?? []).find(it => it.length > 0) ?? []
  const seen = section.seen.filter(it => part.of.includes(it.part)).map(it => clipOutline(it.outline, window))
  const lines = section.lines.filter(it => part.of.includes(it.part)).flatMap(it => clipLine(it.path, window))
  return {
    id: part.id,
    shapes: [...own, ...seen.filter(it => it.length > 2).map(it => ({ loops: [it.map(toPaper)] }))]
      .toSorted((a, b) => sizeOf(b) - sizeOf(a))
      .slice(0, mostBodies),
    places: lines.flatMap(line => alongLine(line.map(toPaper))),
  }
}

const sizeOf = ({ loops: [outline = []] }: Shape): number =>
  Math.abs(
    outline.reduce((sum, [x, y], at) => {
      const [toX, toY] = outline[(at + 1) % outline.length] ?? [x, y]
      return sum + x * toY - toX * y
    }, 0),
  )

/** The middles of the stretches of a line: dots on its corners would hide how it runs. */
const alongLine = (line: readonly Point[]): Point[] =>
  line.slice(1).flatMap((to, at): Point[] => {
    const from = line[at] ?? to
    if (Math.hypot(to[0] - from[0], to[1] - from[1]) < 2) return []
    return [0.35, 0.65].map((share): Point => [
      from[0] + share * (to[0] - from[0]),
      from[1] + share * (to[1] - from[1]),
    ])
  })
