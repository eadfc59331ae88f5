import type { Network } from './network'

/**
 * The faces of a network. A loop runs with its face at the left: a face has one loop of positive area (its outline) and
 * loops of negative area (its holes). The unbounded ground is face −1.
 */
export type Loops = {
  /** vertices of each loop */
  readonly loops: readonly (readonly number[])[]
  /** half-edges of each loop */
  readonly halves: readonly (readonly number[])[]
  readonly areas: Float64Array
  /** the face at the left of each loop, named by the loop of its outline; −1 is the unbounded ground */
  readonly face: Int32Array
  readonly loopOf: Int32Array
}

/** Traces all faces and finds the face that each hole lies in. */
export const loopsOf = (it: Network): Loops => {
  const next = nextHalves(it)
  const loopOf = new Int32Array(next.length).fill(-1)
  const halves: number[][] = []
  for (let start = 0; start < next.length; start++) {
    if (loopOf[start]! >= 0) continue
    const run: number[] = []
    for (let half = start; loopOf[half]! < 0; half = next[half]!) {
      loopOf[half] = halves.length
      run.push(half)
    }
    halves.push(run)
  }
  const loops = halves.map(run => run.map(half => tail(it, half)))
  const areas = Float64Array.from(loops, loop => areaOf(it, loop))
  return { loops, halves, areas, loopOf, face: facesOfLoops(it, { loops, areas, loopOf }) }
}

const tail = (it: Network, half: number): number => (half % 2 === 0 ? it.from[half >> 1]! : it.to[half >> 1]!)
const head = (it: Network, half: number): number => tail(it, half ^ 1)

const areaOf = (it: Network, loop: readonly number[]): number => {
  // relative to the loop's first vertex, so that the products stay exact
  const ox = it.x[loop[0]!]!
  const oy = it.y[loop[0]!]!
  let twice = 0
  for (let i = 0; i < loop.length; i++) {
    const a = loop[i]!
    const b = loop[(i + 1) % loop.length]!
    twice += (it.x[a]! - ox) * (it.y[b]! - oy) - (it.x[b]! - ox) * (it.y[a]! - oy)
  }
  return twice / 2
}

/** For each half-edge the one that follows it round the face at its left: the next clockwise from its twin. */
const nextHalves = (it: Network): Int32Array => {
  const leaving: number[][] = Array.from({ length: it.x.length }, () => [])
  for (let half = 0; half < 2 * it.from.length; half++) leaving[tail(it, half)]!.push(half)
  const next = new Int32Array(2 * it.from.length)
  for (const round of leaving) {
    round.sort((a, b) => turnOrder(it, a, b))
    round.forEach((half, i) => {
      next[half ^ 1] = round[(i + round.length - 1) % round.length]!
    })
  }
  return next
}

/** Counter-clockwise order of two half-edges that leave one vertex, exact: places are whole numbers. */
const turnOrder = (it: Network, a: number, b: number): number => {
  const ax = it.x[head(it, a)]! - it.x[tail(it, a)]!
  const ay = it.y[head(it, a)]! - it.y[tail(it, a)]!
  const bx = it.x[head(it, b)]! - it.x[tail(it, b)]!
  const by = it.y[head(it, b)]! - it.y[tail(it, b)]!
  const upperA = ay > 0 || (ay === 0 && ax > 0)
  const upperB = by > 0 || (by === 0 && bx > 0)
  if (upperA !== upperB) return upperA ? -1 : 1
  return bx * ay - ax * by
}

type Traced = { readonly loops: Loops['loops']; readonly areas: Float64Array; readonly loopOf: Int32Array }

/** A hole lies in the face that a ray from its leftmost vertex to the left meets first. */
const facesOfLoops = (it: Network, traced: Traced): Int32Array => {
  const face = Int32Array.from(traced.areas, (area, loop) => (area > 0 ? loop : -1))
  const holes = traced.loops
    .map((loop, index) => ({ index, at: leftmost(it, loop) }))
    .filter(({ index }) => !(traced.areas[index]! > 0))
    .sort((a, b) => it.x[a.at]! - it.x[b.at]!)
  for (const { index, at } of holes) {
    const half = firstToTheLeft(it, it.x[at]!, it.y[at]!)
    face[index] = half < 0 ? -1 : face[traced.loopOf[half]!]!
  }
  return face
}

const leftmost = (it: Network, loop: readonly number[]): number =>
  loop.reduce((best, at) =>
    it.x[at]! < it.x[best]! || (it.x[at] === it.x[best] && it.y[at]! < it.y[best]!) ? at : best,
  )

/** The half-edge, running downwards, that a ray from a place to the left meets first; −1 where it meets none. */
const firstToTheLeft = (it: Network, px: number, py: number): number => {
  let found = -1
  let nearest = -Infinity
  for (let edge = 0; edge < it.from.length; edge++) {
    const a = it.from[edge]!
    const b = it.to[edge]!
    if (it.y[a]! > py === it.y[b]! > py) continue
    const x = it.x[a]! + ((py - it.y[a]!) / (it.y[b]! - it.y[a]!)) * (it.x[b]! - it.x[a]!)
    if (x >= px || x <= nearest) continue
    nearest = x
    found = it.y[a]! > it.y[b]! ? 2 * edge : 2 * edge + 1
  }
  return found
}
