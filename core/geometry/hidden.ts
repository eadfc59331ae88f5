import type { Network } from './network'

/** A network with the owner at the left of each half-edge. */
export type Owned = { readonly network: Network; readonly owner: Int32Array }

/**
 * Takes out the edges that nobody sees (the same owner on both sides, and no path on them) and the vertices that are
 * left in the middle of a straight edge, where nothing branches off.
 */
export const withoutHidden = (it: Network, owner: Int32Array): Owned => {
  const seen: number[] = []
  for (let edge = 0; edge < it.from.length; edge++) {
    if (owner[2 * edge] !== owner[2 * edge + 1] || it.onPath[edge] === 1) seen.push(edge)
  }
  return straightened(it, owner, withoutLooseEnds(it, seen))
}

/** A path that ends inside a tile divides nothing: its edges go, from the loose end back. */
const withoutLooseEnds = (it: Network, seen: readonly number[]): readonly number[] => {
  const degree = new Int32Array(it.x.length)
  const touching: number[][] = Array.from({ length: it.x.length }, () => [])
  for (const edge of seen) {
    for (const at of [it.from[edge]!, it.to[edge]!]) {
      degree[at]! += 1
      touching[at]!.push(edge)
    }
  }
  const gone = new Set<number>()
  const loose = touching.flatMap((_, at) => (degree[at] === 1 ? [at] : []))
  for (let at = loose.pop(); at !== undefined; at = loose.pop()) {
    const edge = touching[at]!.find(one => !gone.has(one))
    if (edge === undefined) continue
    gone.add(edge)
    const other = it.from[edge] === at ? it.to[edge]! : it.from[edge]!
    degree[other]! -= 1
    if (degree[other] === 1) loose.push(other)
  }
  return seen.filter(edge => !gone.has(edge))
}

/** Joins two edges that run straight through a vertex where nothing branches off and no path ends. */
const straightened = (it: Network, owner: Int32Array, kept: readonly number[]): Owned => {
  const touching: number[][] = Array.from({ length: it.x.length }, () => [])
  for (const edge of kept) {
    touching[it.from[edge]!]!.push(edge)
    touching[it.to[edge]!]!.push(edge)
  }
  const ends = new Set(it.paths.flatMap(path => [path[0] ?? -1, path.at(-1) ?? -1]))
  const goesStraight = (at: number): boolean => {
    if (ends.has(at)) return false
    const [a, b, more] = touching[at]!
    if (a === undefined || b === undefined || more !== undefined || it.onPath[a] !== it.onPath[b])
      return false
    const p = otherEnd(it, a, at)
    const q = otherEnd(it, b, at)
    const ux = it.x[at]! - it.x[p]!
    const uy = it.y[at]! - it.y[p]!
    const vx = it.x[q]! - it.x[at]!
    const vy = it.y[q]! - it.y[at]!
    return ux * vy === uy * vx && ux * vx + uy * vy > 0
  }
  const straight = touching.map((_, at) => goesStraight(at))
  const used = new Set<number>()
  const from: number[] = []
  const to: number[] = []
  const onPath: number[] = []
  const owners: number[] = []
  const follow = (edge: number, start: number): number => {
    let at = start
    for (let along = edge; ;) {
      used.add(along)
      if (!straight[at]) return at
      const ahead = touching[at]!.find(one => one !== along)
      if (ahead === undefined || used.has(ahead)) return at
      at = otherEnd(it, ahead, at)
      along = ahead
    }
  }
  for (const edge of kept) {
    if (used.has(edge)) continue
    const head = follow(edge, it.to[edge]!)
    const tail = follow(edge, it.from[edge]!)
    from.push(tail)
    to.push(head)
    onPath.push(it.onPath[edge]!)
    owners.push(owner[2 * edge]!, owner[2 * edge + 1]!)
  }
  const network = { ...it, from: Int32Array.from(from), to: Int32Array.from(to), onPath: Uint8Array.from(onPath), sources: [] } // prettier-ignore
  return { network, owner: Int32Array.from(owners) }
}

const otherEnd = (it: Network, edge: number, at: number): number =>
  it.from[edge] === at ? it.to[edge]! : it.from[edge]!
