import { type HeatCase, type Solution, flows_W_m, solveCase } from '../../core/heat'
import { moved } from '../given/moved'
import { randomFrom } from '../given/random'

/** The solution of a case that must have one. */
export const solved = (it: HeatCase): Solution => {
  const result = solveCase(it)
  if (!result.ok) throw new Error(`${it.name}: ${JSON.stringify(result.problems)}`)
  return result.value
}

const inflow = (it: Solution): number => flows_W_m(it)[0] ?? NaN

/** What laws compare of two solutions. */
export type Told = { readonly inflow: number; readonly errorShare: number; readonly vertices: number }

export const told = (it: Solution): Told => ({
  inflow: inflow(it),
  errorShare: it.errorShare,
  vertices: it.mesh.vertices,
})

/** Whether two flows agree within twice the errors that both solutions estimate. */
export const agree = (a: Told, b: Told): boolean =>
  Math.abs(a.inflow - b.inflow) <= (2 * (a.errorShare + b.errorShare) + 1e-6) * Math.max(a.inflow, b.inflow)

/** Every triangle counter-clockwise, and together as large as the bodies. */
export const isTiling = ({ case: it, mesh }: Solution): boolean => {
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

/** Whether no corner is warmer or colder than the environments, but for a hundredth that quadratic elements may overshoot. */
export const staysBetween = (it: Solution): boolean => {
  const air = it.case.surfaces.map(surface => surface.air_C)
  const [least, most] = [Math.min(...air), Math.max(...air)]
  const slack = 0.01 * (most - least) + 1e-9
  return it.field.corner_C.every(u => least - slack <= u && u <= most + slack)
}

/** Mirrored about y, turned by any angle, and moved: off the grid, or thin layers would change their thickness. */
export const mirroredAndTurned = (it: HeatCase, seed: number): HeatCase => {
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
