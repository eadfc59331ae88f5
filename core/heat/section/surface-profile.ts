import type { Point } from '../../geometry'
import type { Face } from '../../section'
import type { Solution } from '../solution'
import type { SectionCase } from './section-case'

/** A place of a surface: how far along it, from the cut end of the wall on, where in the section, and how warm. */
export type SurfacePlace = {
  readonly along_mm: number
  readonly at_mm: Point
  readonly temperature_C: number
}

/** A stretch of a surface of one kind, and its places in order; neighbours share the place between them. */
export type SurfaceStretch = { readonly of: Face['of']; readonly places: readonly SurfacePlace[] }

/**
 * The temperature along the inside, from the cut end of the wall over the reveal and the frame to that of the glass:
 * every node of the mesh and the middle between two. Empty where no film looks inside.
 */
export const surfaceProfile = (
  { faces }: Pick<SectionCase, 'faces'>,
  { mesh, system, field }: Solution,
): readonly SurfaceStretch[] => {
  const next = new Map<number, { to: number; e: number; of: Face['of'] }[]>()
  const put = (from: number, to: number, e: number, of: Face['of']): void => {
    const at = next.get(from)
    if (at) at.push({ to, e, of })
    else next.set(from, [{ to, e, of }])
  }
  system.filmEdge.forEach((e, m) => {
    const face = faces[system.filmSurface[m] ?? -1]
    if (face?.to !== 'inside') return
    const [a, b] = [mesh.edgeFrom[e] ?? 0, mesh.edgeTo[e] ?? 0]
    put(a, b, e, face.of)
    put(b, a, e, face.of)
  })
  const ends = [...next].filter(([, to]) => to.length === 1).map(([v]) => v)
  const x = (v: number): number => mesh.x[v] ?? 0
  let at = ends.reduce<number | undefined>((best, v) => (best === undefined || x(v) < x(best) ? v : best), undefined) // prettier-ignore
  const stretches: { of: Face['of']; places: SurfacePlace[] }[] = []
  const taken = new Set<number>()
  let along_mm = 0
  const placeAt = (v: number): SurfacePlace => ({
    along_mm,
    at_mm: [x(v), mesh.y[v] ?? 0],
    temperature_C: field.corner_C[v] ?? NaN,
  })
  while (at !== undefined) {
    const here: number = at
    const step = next.get(here)?.find(it => !taken.has(it.e))
    if (!step) break
    taken.add(step.e)
    const first = placeAt(here)
    let last = stretches.at(-1)
    if (last?.of !== step.of) {
      last = { of: step.of, places: [first] }
      stretches.push(last)
    }
    const [toX, toY] = [x(step.to), mesh.y[step.to] ?? 0]
    const length_mm = Math.hypot(toX - first.at_mm[0], toY - first.at_mm[1])
    const mean_C = (first.temperature_C + (field.corner_C[step.to] ?? NaN)) / 2
    last.places.push({
      along_mm: along_mm + length_mm / 2,
      at_mm: [(first.at_mm[0] + toX) / 2, (first.at_mm[1] + toY) / 2],
      temperature_C: mean_C + (field.bubble_K[step.e] ?? 0),
    })
    along_mm += length_mm
    last.places.push(placeAt(step.to))
    at = step.to
  }
  return stretches
}
