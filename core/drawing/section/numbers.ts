import type { Id, Point } from '../../geometry'
import type { Section } from '../../section'
import type { Site } from '../labels/anchors'
import type { Column, Slots } from '../labels/columns'
import { type Layout, layOutColumns } from '../labels/lay-out'
import type { Box, SizeLine } from '../labels/scene'
import type { Shape } from '../labels/shape'
import type { ViewMark } from '../mark'
import type { Placement } from '../place-view'
import { clipLine, clipOutline, type Window } from './clip'
import type { ListedPart } from './listed-part'
import { drawnPath } from './membranes'

/** Numbers in circles with leaders to what a window shows: to every part, or to some that are told apart. */
export const drawNumbers = (
  section: Section,
  parts: readonly ListedPart[],
  on: {
    /** every part as the section is drawn with it */
    readonly drawn: readonly ListedPart[]
    readonly hatchOf: (material: Id) => string
    readonly window: Window
    /** where ground and floor are pointed at, which reach beyond any window; absent: anywhere in it */
    readonly near?: Window
    readonly placement: Placement
    readonly scale: number
    readonly columns: readonly Column[]
    /** words that leaders keep off, and lines of sizes that they had better not cross, on paper */
    readonly words: readonly Box[]
    readonly lines: readonly SizeLine[]
    /** the slope of leaders */
    readonly slope_deg: number
    readonly kept?: Slots
  },
): { readonly marks: readonly ViewMark[]; readonly layout: Layout } => {
  const { toPaper, toModel } = on.placement
  const bodies = bodiesOf(section, on.hatchOf, on.window, toPaper)
  const nearBodies = on.near ? bodiesOf(section, on.hatchOf, on.near, toPaper) : bodies
  const byPart = new Map(on.drawn.flatMap(part => part.of.map(of => [of, part] as const)))
  const lines = section.lines.map(it => ({ part: it.part, path: drawnPath(section, it, byPart, on.scale) }))
  const sites = parts
    .map(part =>
      on.near && part.role === 'ground'
        ? siteOf(part, { seen: [], lines }, nearBodies, on.near, toPaper)
        : siteOf(part, { seen: section.seen, lines }, bodies, on.window, toPaper),
    )
    .filter(isVisible)
  const solid = [...bodies.values()].flatMap(it => it.solid)
  const picture = { bodies: solid, words: on.words, lines: on.lines, slope_deg: on.slope_deg }
  const layout = layOutColumns(sites, picture, on.columns, on.kept)
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

/** Bodies of one part on paper: those of a material, and the air or gas that it holds. */
type Bodies = {
  readonly solid: readonly (Shape & { readonly material: Id })[]
  readonly clear: readonly Shape[]
}

/** The visible bodies of each part of the section. */
const bodiesOf = (
  section: Section,
  hatchOf: (material: Id) => string,
  window: Window,
  toPaper: (at: Point) => Point,
): ReadonlyMap<Id, Bodies> => {
  const bodies = new Map<Id, Bodies>()
  for (const { part, fill, outline, holes } of section.regions) {
    const loops = [outline, ...holes]
      .map(it => clipOutline(it, window))
      .filter(it => it.length > 2)
      .map(it => it.map(toPaper))
    if (loops.length === 0) continue
    const { solid, clear } = bodies.get(part) ?? { solid: [], clear: [] }
    bodies.set(
      part,
      fill.kind === 'air' || hatchOf(fill.material) === 'air_cavity'
        ? { solid, clear: [...clear, { loops }] }
        : { solid: [...solid, { loops, material: fill.material }], clear },
    )
  }
  return bodies
}

/** A part is pointed at in its larger bodies: small ones beside them would draw the eye away. */
const mostBodies = 3

const siteOf = (
  part: ListedPart,
  section: Pick<Section, 'seen'> & {
    readonly lines: readonly { readonly part: Id; readonly path: readonly Point[] }[]
  },
  bodies: ReadonlyMap<Id, Bodies>,
  window: Window,
  toPaper: (at: Point) => Point,
): Site => {
  // gas is seen through and not pointed at, except where a part is nothing but air
  const held = part.of.flatMap(it => bodies.get(it) ?? [])
  const solid = held.find(it => it.solid.length > 0)?.solid
  const meant = solid?.filter(it => part.pointedIn === undefined || it.material === part.pointedIn) ?? []
  const own = meant.length > 0 ? meant : (solid ?? held.find(it => it.clear.length > 0)?.clear ?? [])
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
    // a level leader runs along a level line: from its ends the least
    const isLevel = Math.abs(to[1] - from[1]) < 0.1 * Math.abs(to[0] - from[0])
    return (isLevel ? [0.1, 0.35, 0.65, 0.9] : [0.35, 0.65]).map((share): Point => [
      from[0] + share * (to[0] - from[0]),
      from[1] + share * (to[1] - from[1]),
    ])
  })
