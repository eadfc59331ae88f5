import { describe, expect, it } from 'vitest'
import { type HeatCase, type Solution, flows_W_m, solveCase } from '../../core/heat'
import { moved } from '../given/moved'
import { randomHeatSection } from '../given/heat-section'
import { randomFrom } from '../given/random'

/** Sections per law: each law is tried on all 2,000 in four runs that share the work. */
const runs = [0, 1, 2, 3].map(run => Array.from({ length: 500 }, (_, i) => run * 500 + i + 1))

const solved = (it: HeatCase): Solution => {
  const result = solveCase(it)
  if (!result.ok) throw new Error(`${it.name}: ${JSON.stringify(result.problems)}`)
  return result.value
}

const inflow = (it: Solution): number => flows_W_m(it)[0] ?? NaN

type Told = { readonly inflow: number; readonly errorShare: number; readonly vertices: number }

const told = (it: Solution): Told => ({
  inflow: inflow(it),
  errorShare: it.errorShare,
  vertices: it.mesh.vertices,
})

/** What a seed's section gives as it is, solved once for all laws. */
const asItIs = new Map<number, Told>()
const toldBy = (seed: number): Told => {
  const known = asItIs.get(seed) ?? told(solved(randomHeatSection(seed)))
  asItIs.set(seed, known)
  return known
}

/** Whether two flows agree within twice the errors that both solutions estimate. */
const agree = (a: Told, b: Told): boolean =>
  Math.abs(a.inflow - b.inflow) <= (2 * (a.errorShare + b.errorShare) + 1e-6) * Math.max(a.inflow, b.inflow)

/** Every triangle counter-clockwise, and together as large as the bodies. */
const isTiling = ({ case: it, mesh }: Solution): boolean => {
  let sum = 0
  for (let t = 0; t < mesh.triangles; t++) {
    const [a, b, c] = [0, 1, 2].map(i => mesh.corner[3 * t + i] ?? 0) as [number, number, number] // three of them
    const at = (v: number) => [mesh.x[v] ?? 0, mesh.y[v] ?? 0] as const
    const [[ax, ay], [bx, by], [cx, cy]] = [at(a), at(b), at(c)]
    const area2 = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax)
    if (!(area2 > 0)) return false
    sum += area2
  }
  const whole = it.bodies.reduce(
    (all, body) => all + [body.outline, ...body.holes].reduce((some, ring) => some + area2Of(ring), 0),
    0,
  )
  return Math.abs(sum - whole) < 1e-9 * whole
}

const area2Of = (ring: readonly (readonly [number, number])[]): number =>
  ring.reduce((sum, [x, y], i) => {
    const [nx, ny] = ring[(i + 1) % ring.length] ?? [x, y]
    return sum + x * ny - nx * y
  }, 0)

describe.each(runs.map(seeds => [`seeds ${seeds[0]} to ${seeds.at(-1)}`, seeds] as const))(
  '%s',
  (_, seeds) => {
    it('mesh without a gap, balance, and stay between the temperatures outside', () => {
      const broken: string[] = []
      for (const seed of seeds) {
        const solution = solved(randomHeatSection(seed))
        asItIs.set(seed, told(solution))
        if (!isTiling(solution)) broken.push(`${seed} does not tile`)
        const flows = flows_W_m(solution)
        const amount = flows.reduce((sum, flow) => sum + Math.abs(flow), 0)
        const rest = Math.abs(flows.reduce((sum, flow) => sum + flow, 0))
        // Fixed temperatures are films of 1e9: a temperature is known to 1e-14 of itself, the flow to 1e-8.
        if (rest > 1e-5 * amount + 1e-7) broken.push(`${seed} loses ${rest} of ${amount}`)
        const air = solution.case.surfaces.map(it => it.air_C)
        const [least, most] = [Math.min(...air), Math.max(...air)]
        const slack = 0.01 * (most - least) + 1e-9
        for (const u of solution.field.corner_C)
          if (!(least - slack <= u && u <= most + slack)) {
            broken.push(`${seed} has ${u} outside ${least} to ${most}`)
            break
          }
      }
      expect(broken).toEqual([])
    })

    it('do not ask in which order the parts come', () => {
      const broken: string[] = []
      for (const seed of seeds) {
        const it = randomHeatSection(seed)
        const shuffled = { ...it, bodies: it.bodies.toReversed() }
        const [a, b] = [toldBy(seed), told(solved(shuffled))]
        if (Math.abs(a.inflow - b.inflow) > 1e-6 * Math.abs(a.inflow) || a.vertices !== b.vertices)
          broken.push(`${seed}: ${a.inflow} is ${b.inflow}`)
      }
      expect(broken).toEqual([])
    })

    it('are the same mirrored and turned, within the error that they tell', () => {
      const broken: string[] = []
      let unsettled = 0
      for (const seed of seeds) {
        const it = randomHeatSection(seed)
        const [a, b] = [toldBy(seed), told(solved(mirroredAndTurned(it, seed)))]
        if (a.errorShare === Infinity) unsettled++
        else if (!agree(a, b))
          broken.push(`${seed}: ${a.inflow} is ${b.inflow}, told ${a.errorShare} ${b.errorShare}`)
      }
      expect(broken).toEqual([])
      expect(unsettled).toBeLessThan(0.35 * seeds.length)
    })

    it('pass no less heat when a body conducts more', () => {
      const broken: string[] = []
      for (const seed of seeds) {
        const it = randomHeatSection(seed)
        const random = randomFrom(seed + 1_000_000)
        const which = random.whole(0, it.bodies.length - 1)
        const factor = random.between(1.2, 3)
        const better = {
          ...it,
          bodies: it.bodies.map((body, b) =>
            b === which ? { ...body, lambda_W_mK: factor * body.lambda_W_mK } : body,
          ),
        }
        const [a, b] = [toldBy(seed), told(solved(better))]
        if (a.errorShare === Infinity || b.errorShare === Infinity) continue
        if (b.inflow < a.inflow * (1 - a.errorShare - 1e-6))
          broken.push(`${seed}: ${a.inflow} falls to ${b.inflow}`)
      }
      expect(broken).toEqual([])
    })
  },
)

/** Mirrored about y, turned by any angle, and moved: off the grid, or thin layers would change their thickness. */
const mirroredAndTurned = (it: HeatCase, seed: number): HeatCase => {
  const turn_rad = randomFrom(seed + 2_000_000).between(0, 2 * Math.PI)
  const [cos, sin] = [Math.cos(turn_rad), Math.sin(turn_rad)]
  const turned = moved(it, ([x, y]) => [-x * cos - y * sin + 300, -x * sin + y * cos - 200])
  return {
    ...turned,
    bodies: turned.bodies.map(body => ({
      ...body,
      outline: body.outline.toReversed(),
      holes: body.holes.map(hole => hole.toReversed()),
    })),
  }
}
