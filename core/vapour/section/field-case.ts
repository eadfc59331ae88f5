import { saturation_Pa } from '../../air'
import type { Conditions } from '../../detail'
import { type Mesh, type Solution, quartered } from '../../heat'
import { type Band, type Result, ok, refused } from '../../units'
import type { VapourCase } from '../field/vapour-case'
import { factorsOf } from './factors'
import { membraneResistance } from './membranes'
import { type Unknown, notKnown } from './not-known'
import { onGround } from './on-ground'
import { tight, type VapourView } from './vapour-view'

/**
 * A section as a vapour case on the mesh of its heat solution, and on the same with every triangle cut into four. Seals of the inner plane are
 * taken as open as they can be, those of the outer one as tight; everything else at its dry end, as in winter.
 * Problems: bodies that are not known; a section on the ground.
 */
export const fieldCase = (
  view: VapourView,
  solution: Solution,
  conditions: Conditions,
): Result<{ readonly coarse: VapourCase; readonly fine: VapourCase }> => {
  const { turned, section } = view
  const ground = onGround(section)
  if (ground) return refused(ground)
  const factor = factorsOf(view)
  const planeOf = new Map(view.seals.map(it => [it.id, it.plane]))
  const taken = (part: string, of: Band): number => (planeOf.get(part) === 'inner' ? of.min : of.max)
  const unknown: Unknown[] = []
  const mu = turned.case.bodies.map((_, b) => {
    const part = turned.parts[b] ?? ''
    const of = factor(b)
    if (!of) unknown.push({ part, body: b })
    const value = of ? taken(part, of) : Infinity
    return value < tight ? value : Infinity
  })
  const interfaces = section.lines.flatMap(line => {
    const sd_m = membraneResistance(line, view)
    if (sd_m === 'unknown') unknown.push({ part: line.part })
    return typeof sd_m === 'object' ? [{ path: line.path, sd_m: taken(line.part, sd_m) }] : []
  })
  const [first, ...more] = notKnown(view, unknown)
  if (first) return refused(first, ...more)
  const airs_Pa = turned.faces.map(({ to }) => {
    if (to === 'inside') return conditions.inside.vapour_Pa
    return to === 'outside' ? conditions.outside.vapour_Pa : saturation_Pa(conditions.ground_C)
  })
  const { surface } = solution.graph
  const on = (mesh: Mesh, temperature_C: Float64Array): VapourCase => ({
    mesh,
    temperature_C,
    mu,
    interfaces,
    airAt_Pa: edge => {
      const segment = mesh.segmentOf[edge]!
      return segment < 0 ? undefined : airs_Pa[surface[segment]!]
    },
  })
  return ok({
    coarse: on(solution.mesh, solution.field.corner_C),
    fine: on(quartered(solution.mesh), temperatures_C(solution)),
  })
}

/** Temperatures at the corners of a quartered mesh: the old corners, then the middles of the old edges. */
const temperatures_C = ({ mesh, field }: Solution): Float64Array => {
  const all = new Float64Array(mesh.vertices + mesh.edges)
  all.set(field.corner_C)
  for (let e = 0; e < mesh.edges; e++)
    all[mesh.vertices + e] =
      (field.corner_C[mesh.edgeFrom[e]!]! + field.corner_C[mesh.edgeTo[e]!]!) / 2 + field.bubble_K[e]!
  return all
}
