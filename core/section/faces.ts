import type { WallDepths } from '../detail'
import { areaOf, grid_mm, type Outline, type Point } from '../geometry'
import type { Tile } from '../geometry'
import type { Coat } from './paint'
import type { Face } from './section'

/** An edge of the outer outline, with what it belongs to. */
type Edge = { readonly from: Point; readonly to: Point; readonly face: Face['to']; readonly of: Face['of'] }

/**
 * The faces of a section. Its outer edge runs counter-clockwise; where it lies at either end of the domain it is a cut,
 * and the two runs between the cuts look outside (towards smaller y) and inside. On the ground floor and surface are cut
 * off at their far ends, too, and the lower end lies in the ground.
 */
export const facesOf = (
  edges: readonly Outline[],
  tiles: readonly Tile<Coat>[],
  { depths, onGround }: { readonly depths: WallDepths; readonly onGround: boolean },
): readonly Face[] => {
  const outline = edges.toSorted((a, b) => Math.abs(areaOf(b)) - Math.abs(areaOf(a)))[0] ?? []
  const owner = owners(tiles)
  const xs = outline.map(([x]) => x)
  const ys = outline.map(([, y]) => y)
  const ends: readonly number[] = [Math.min(...xs), Math.max(...xs)]
  const sides: readonly number[] = onGround ? [Math.min(...ys), Math.max(...ys)] : []
  const all = outline.map((from, i): Edge => {
    const to = outline[(i + 1) % outline.length] ?? from
    const isCut =
      (from[0] === to[0] && ends.includes(from[0])) || (from[1] === to[1] && sides.includes(from[1]))
    return {
      from,
      to,
      face: isCut ? 'cut' : 'outside',
      of: surface(owner.get(keyOf(from, to)) ?? 'wall', from, to, depths),
    }
  })
  return joined(onGround ? grounded(sided(all), Math.min(...xs)) : sided(all))
}

/** Fabric shows the wall where it lies in the outer or inner face of the wall, and the reveal everywhere else. */
const surface = (of: Face['of'], from: Point, to: Point, depths: WallDepths): Face['of'] => {
  if (of !== 'wall' && of !== 'reveal') return of
  const inFace = (y_mm: number) => near(from[1], y_mm) && near(to[1], y_mm)
  return inFace(depths.outer_mm) || inFace(depths.inner_mm) ? 'wall' : 'reveal'
}

const near = (a: number, b: number): boolean => Math.abs(a - b) <= grid_mm

const keyOf = (from: Point, to: Point): string => `${from[0]},${from[1]};${to[0]},${to[1]}`

const owners = (tiles: readonly Tile<Coat>[]): ReadonlyMap<string, Face['of']> => {
  const found = new Map<string, Face['of']>()
  for (const { outline, label } of tiles) {
    outline.forEach((from, i) => found.set(keyOf(from, outline[(i + 1) % outline.length] ?? from), label.of))
  }
  return found
}

/**
 * Runs counter-clockwise from after the cut through the wall (at the smallest x, running downwards in y):
 * up to the next cut it looks outside, after it inside.
 */
const sided = (all: readonly Edge[]): readonly Edge[] => {
  const left = Math.min(...all.map(it => it.from[0]))
  const below = all.findIndex(it => it.face === 'cut' && it.from[0] === left && it.to[0] === left)
  const free = [...all.slice(below), ...all.slice(0, below)].findIndex(it => it.face !== 'cut')
  const start = (below + free) % all.length
  let looks: Face['to'] = 'outside'
  let wasCut = false
  return [...all.slice(start), ...all.slice(0, start)].map(edge => {
    if (edge.face === 'cut') {
      wasCut = true
      return edge
    }
    if (wasCut) looks = 'inside'
    return { ...edge, face: looks }
  })
}

/** What is cut at the lower end of a section lies in the ground there. */
const grounded = (all: readonly Edge[], low: number): readonly Edge[] =>
  all.map(it =>
    it.face === 'cut' && it.from[0] === low && it.to[0] === low ? { ...it, face: 'ground' } : it,
  )

/** Neighbouring edges of one kind become one face. */
const joined = (all: readonly Edge[]): readonly Face[] => {
  const faces: { to: Face['to']; of: Face['of']; path: Point[] }[] = []
  for (const edge of all) {
    const last = faces.at(-1)
    if (last?.to === edge.face && last.of === edge.of) last.path.push(edge.to)
    else faces.push({ to: edge.face, of: edge.of, path: [edge.from, edge.to] })
  }
  return faces
}
