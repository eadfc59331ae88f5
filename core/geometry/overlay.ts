import { loopsOf } from './loops'
import { type Network, pointAt, pointsOf, toGrid } from './network'
import { outside, ownersOf } from './owners'
import type { Outline, Point } from './point'
import { snapped } from './snap'
import { withoutHidden } from './hidden'

/**
 * An outline (counter-clockwise) with a label, laid over those before it: what it covers, it replaces.
 * Outlines that carry the very same label grow together where they meet.
 */
export type Painted<Label> = { readonly outline: Outline; readonly label: Label }

/** A flat body of one label: outline counter-clockwise, holes clockwise, every vertex of a neighbour included. */
export type Tile<Label> = {
  readonly label: Label
  readonly outline: Outline
  readonly holes: readonly Outline[]
}

/** The plane divided: tiles without gap or overlap, the outer edges of all of them, and the paths as laid. */
export type Overlay<Label> = {
  readonly tiles: readonly Tile<Label>[]
  /** outer edges of the whole, counter-clockwise, one for each separate island */
  readonly edges: readonly Outline[]
  readonly paths: readonly (readonly Point[])[]
}

/**
 * Lays painted outlines over each other, later over earlier, and divides the plane into tiles of one label.
 * All vertices come to lie on the grid and neighbours share all of theirs. Enclosed ground that nothing covers
 * becomes a tile labelled `gap`. A tile that a path crosses is split along it.
 */
export const overlay = <Label>(
  painted: readonly Painted<Label>[],
  paths: readonly (readonly Point[])[],
  gap: Label,
): Overlay<Label> => {
  const whole = snapped(painted.map(it => it.outline.map(toGrid)), paths.map(path => path.map(toGrid))) // prettier-ignore
  const firsts = firstsAlike(painted)
  const owners = ownersOf(whole, painted.length).map(at => firsts[at] ?? at)
  const { network, owner } = withoutHidden(whole, owners)
  const { loops, halves, areas, face } = loopsOf(network)
  const holes = new Map<number, Outline[]>()
  const edges: Outline[] = []
  loops.forEach((loop, index) => {
    if (areas[index]! > 0) return
    const outline = pointsOf(network, loop)
    const within = face[index]!
    if (within < 0) edges.push([...outline].reverse())
    else holes.set(within, [...(holes.get(within) ?? []), outline])
  })
  const tiles = loops.flatMap((loop, index) => {
    const half = halves[index]?.[0]
    const top = half === undefined ? outside : owner[half]!
    if (!(areas[index]! > 0) || top === outside) return []
    const label = painted[top]?.label ?? gap
    return [{ label, outline: pointsOf(network, loop), holes: holes.get(index) ?? [] }]
  })
  return { tiles, edges, paths: pathsAsLaid(whole, network) }
}

/** For each outline the first with the same label, so that what grows together has one owner. */
const firstsAlike = <Label>(painted: readonly Painted<Label>[]): readonly number[] => {
  const firsts = new Map<Label, number>()
  return painted.map(({ label }, at) => {
    const first = firsts.get(label) ?? at
    firsts.set(label, first)
    return first
  })
}

/** The paths, with the vertices that the tiles beside them have. What ends loose inside a tile is cut off. */
const pathsAsLaid = (whole: Network, kept: Network): readonly (readonly Point[])[] => {
  const there = new Set([...kept.from, ...kept.to])
  return whole.paths.map(path => path.filter(at => there.has(at)).map(at => pointAt(whole, at)))
}
