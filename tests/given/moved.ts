import type { HeatCase } from '../../core/heat'

/** A case with every place moved, its order kept. */
export const moved = (
  it: HeatCase,
  to: (place: readonly [number, number]) => readonly [number, number],
): HeatCase => ({
  ...it,
  bodies: it.bodies.map(body => ({
    ...body,
    outline: body.outline.map(to),
    holes: body.holes.map(hole => hole.map(to)),
  })),
  surfaces: it.surfaces.map(surface => ({
    ...surface,
    edges: surface.edges.map(([a, b]) => [to(a), to(b)] as const),
  })),
  foils: it.foils.map(foil => ({ ...foil, path: foil.path.map(to) })),
  probes: Object.fromEntries(Object.entries(it.probes).map(([name, place]) => [name, to(place)])),
})
