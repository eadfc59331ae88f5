import type { Body, Foil, HeatCase, Stretch, Surface } from '../../core/heat'
import { type Random, randomFrom } from './random'

type Place = readonly [number, number]

/**
 * A valid heat section that nobody has chosen: a grid of cells from 0.25 mm to 200 mm, warped into slopes, some cells
 * cut by diagonals down to a few degrees, some with a round in them, some missing; any conductivities, foils, films or
 * fixed temperatures on the outer edges; turned by any angle, every vertex on the grid of 1e-4 mm.
 */
export const randomHeatSection = (seed: number): HeatCase => {
  const random = randomFrom(seed)
  const xs = steps(random, random.whole(1, 4))
  const ys = steps(random, random.whole(1, 4))
  const turn_rad = random.chance(0.3) ? 0 : random.between(0, Math.PI)
  const nodes = warped(random, xs, ys).map(row => row.map(it => turned(it, turn_rad)))
  const at = (i: number, j: number): Place => nodes[i]?.[j] ?? [0, 0]
  const missing = random.chance(0.3) && xs.length > 2 ? `${random.one([0, xs.length - 2])},0` : ''
  const bodies: Body[] = []
  for (let i = 0; i + 1 < xs.length; i++)
    for (let j = 0; j + 1 < ys.length; j++) {
      if (`${i},${j}` === missing) continue
      const cell = [at(i, j), at(i + 1, j), at(i + 1, j + 1), at(i, j + 1)] as const
      bodies.push(...filled(random, `cell ${i},${j}`, cell))
    }
  return {
    name: `seed ${seed}`,
    bodies,
    surfaces: surfacesOf(random, bodies),
    foils: foilsOf(random, bodies),
    probes: {},
  }
}

/** The outer edges of bodies: those that only one of them has. */
export const outerEdges = (bodies: readonly Body[]): readonly Stretch[] => {
  const edges = bodies.flatMap(it => [it.outline, ...it.holes].flatMap(ring))
  const all = new Set(edges.map(key))
  return edges.filter(([a, b]) => !all.has(key([b, a])))
}

const ring = (points: readonly Place[]): readonly Stretch[] =>
  points.map((from, i): Stretch => [from, points[(i + 1) % points.length] ?? from])

const key = ([a, b]: Stretch): string => `${a[0]},${a[1]};${b[0]},${b[1]}`

const onGrid = (value: number): number => Math.round(value * 1e4) / 1e4

const steps = (random: Random, count: number): readonly number[] => {
  const places = [0]
  for (let i = 0; i < count; i++) {
    const kind = random.whole(0, 5)
    const step =
      kind === 0 ? 0.25 : kind === 1 ? random.between(0.3, 3) : random.between(3, kind === 2 ? 200 : 40)
    places.push((places.at(-1) ?? 0) + step)
  }
  return places
}

/** Moves grid points by up to a third of the nearest spacing: thin layers stay whole, the rest becomes slopes. */
const warped = (
  random: Random,
  xs: readonly number[],
  ys: readonly number[],
): readonly (readonly Place[])[] => {
  const amount = random.chance(0.4) ? 0 : 0.33
  const room = (of: readonly number[], i: number) =>
    amount * Math.min(...[-1, 1].map(d => Math.abs((of[i + d] ?? Infinity) - (of[i] ?? 0))))
  return xs.map((x, i) =>
    ys.map((y, j): Place => [
      x + random.between(-1, 1) * room(xs, i),
      y + random.between(-1, 1) * room(ys, j),
    ]),
  )
}

const turned = ([x, y]: Place, turn_rad: number): Place => [
  onGrid(x * Math.cos(turn_rad) - y * Math.sin(turn_rad)),
  onGrid(x * Math.sin(turn_rad) + y * Math.cos(turn_rad)),
]

const lambda_W_mK = (random: Random): number =>
  random.one([0.02, 0.035, 0.13, 0.5, 1, 2.3, 17, 160, random.between(0.02, 3)])

type Cell = readonly [Place, Place, Place, Place]

const filled = (random: Random, name: string, cell: Cell): readonly Body[] => {
  const plain: Body = { name, outline: cell, holes: [], lambda_W_mK: lambda_W_mK(random) }
  const [a, b, c, d] = cell
  if (random.chance(0.2))
    return [
      { ...plain, name: `${name} below`, outline: [a, b, c] },
      { ...plain, name: `${name} above`, outline: [a, c, d], lambda_W_mK: lambda_W_mK(random) },
    ]
  const centre: Place = [(a[0] + b[0] + c[0] + d[0]) / 4, (a[1] + b[1] + c[1] + d[1]) / 4]
  const inner = Math.min(...ring(cell).map(edge => distance(centre, edge)))
  if (!random.chance(0.2) || inner < 1) return [plain]
  const round = circle(centre, inner * random.between(0.3, 0.97), random.whole(8, 32))
  return [
    { ...plain, holes: [round.toReversed()] },
    { name: `${name} round`, outline: round, holes: [], lambda_W_mK: lambda_W_mK(random) },
  ]
}

const distance = ([x, y]: Place, [a, b]: Stretch): number =>
  Math.abs((b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0])) / Math.hypot(b[0] - a[0], b[1] - a[1])

const circle = ([x, y]: Place, radius: number, corners: number): readonly Place[] =>
  Array.from({ length: corners }, (_, i): Place => [
    onGrid(x + radius * Math.cos((2 * Math.PI * i) / corners)),
    onGrid(y + radius * Math.sin((2 * Math.PI * i) / corners)),
  ])

/** Warm and cold sides on outer edges that do not touch each other; the rest is adiabatic. */
const surfacesOf = (random: Random, bodies: readonly Body[]): readonly Surface[] => {
  const edges = outerEdges(bodies)
  const warm = random.one([edges[0] ?? edgeless, ...edges])
  const ends = new Set(warm.map(String))
  const apart = edges.filter(edge => edge !== warm && !edge.some(end => ends.has(String(end))))
  const cold = apart.filter(() => random.chance(0.4))
  const film = () => random.one([7.69, 25, 4, 1e9])
  return [
    { name: 'warm', h_W_m2K: film(), air_C: 20, edges: [warm] },
    {
      name: 'cold',
      h_W_m2K: film(),
      air_C: random.between(-20, 15),
      edges: cold.length > 0 ? cold : apart.slice(0, 1),
    },
  ].filter(it => it.edges.length > 0)
}

const edgeless: Stretch = [[0, 0], [0, 0]] // prettier-ignore

const foilsOf = (random: Random, bodies: readonly Body[]): readonly Foil[] =>
  random.chance(0.2)
    ? (bodies[0]?.outline ?? []).slice(1).flatMap((to, i): readonly Foil[] => {
        const from = bodies[0]?.outline[i]
        return from
          ? [{ name: `foil ${i}`, path: [from, to], conductance_W_K: random.between(1e-3, 0.1) }]
          : []
      })
    : []
