import type { Outline } from '../../geometry'
import type { HeatCase } from '../case'
import { metres, resistance_m2K_W } from '../si'
import type { SectionCase } from './section-case'

/** A layer of the undisturbed wall, from outside to inside. */
export type WallLayer = {
  readonly part: string
  readonly thickness_mm: number
  readonly lambda_W_mK: number
  readonly resistance_m2K_W: number
}

/** The undisturbed wall: its layers, the films on both sides, and U = 1 / (Rse + Σ R + Rsi). */
export type UndisturbedWall = {
  readonly layers: readonly WallLayer[]
  readonly outside_m2K_W: number
  readonly inside_m2K_W: number
  readonly u_W_m2K: number
  /** Length that the wall counts with in L2D: from the cut to the reveal at x = 0. */
  readonly length_mm: number
}

/** This far from its cut end the wall is read. Ours: inside any layer's outline, far from the joint. */
const inset_mm = 0.5

/** Reads the wall at its cut end, one-dimensionally. */
export const undisturbedWall = ({
  case: it,
  parts,
}: Pick<SectionCase, 'case' | 'parts'>): UndisturbedWall => {
  const left_mm = Math.min(...it.bodies.flatMap(body => body.outline.map(([x]) => x)))
  const { layers: found, outside_m2K_W, inside_m2K_W } = layersAlong({ case: it, parts }, left_mm + inset_mm)
  const layers = found.map(({ part, thickness_mm, lambda_W_mK, resistance_m2K_W }) => ({
    part,
    thickness_mm,
    lambda_W_mK,
    resistance_m2K_W,
  }))
  const sum = layers.reduce((all, layer) => all + layer.resistance_m2K_W, outside_m2K_W + inside_m2K_W)
  return { layers, outside_m2K_W, inside_m2K_W, u_W_m2K: 1 / sum, length_mm: -left_mm }
}

/** A layer on a line through a section: the body that it is of, and where the line enters it. */
export type LayerAlong = WallLayer & {
  readonly body: number
  readonly name: string
  readonly from_mm: number
}

/** What a line across the wall at one x meets, from outside to inside, and the films at its ends. */
export const layersAlong = (
  { case: it, parts }: Pick<SectionCase, 'case' | 'parts'>,
  at_mm: number,
): {
  readonly layers: readonly LayerAlong[]
  readonly outside_m2K_W: number
  readonly inside_m2K_W: number
} => {
  const layers = it.bodies
    .flatMap((body, b) =>
      spans([body.outline, ...body.holes], at_mm).map(([from_mm, to]) => ({
        body: b,
        name: body.name,
        from_mm,
        part: parts[b] ?? body.name,
        thickness_mm: to - from_mm,
        lambda_W_mK: body.lambda_W_mK,
        resistance_m2K_W: resistance_m2K_W(to - from_mm, body.lambda_W_mK),
      })),
    )
    .toSorted((a, b) => a.from_mm + a.thickness_mm / 2 - b.from_mm - b.thickness_mm / 2)
  const [outer, inner] = filmsAt(it, at_mm)
  return { layers, outside_m2K_W: 1 / outer, inside_m2K_W: 1 / inner }
}

/** Flow through the wall alone, per metre and kelvin. */
export const wallCoupling_W_mK = ({
  u_W_m2K,
  length_mm,
}: Pick<UndisturbedWall, 'u_W_m2K' | 'length_mm'>): number => u_W_m2K * metres(length_mm)

/** The stretches of a vertical line inside rings (even-odd), in ascending order. */
const spans = (rings: readonly Outline[], x_mm: number): readonly (readonly [number, number])[] => {
  const ys = rings
    .flatMap(ring =>
      ring.flatMap((a, i) => {
        const b = ring[(i + 1) % ring.length] ?? a
        if (a[0] <= x_mm === b[0] <= x_mm) return []
        return [a[1] + ((x_mm - a[0]) / (b[0] - a[0])) * (b[1] - a[1])]
      }),
    )
    .toSorted((a, b) => a - b)
  return ys.flatMap((y, i) => (i % 2 === 1 ? [[ys[i - 1] ?? y, y] as const] : []))
}

/** The films on the outermost and innermost surface that the line meets. */
const filmsAt = (it: HeatCase, x_mm: number): readonly [number, number] => {
  const met = it.surfaces.flatMap(surface =>
    surface.edges.flatMap(([a, b]) =>
      a[0] <= x_mm === b[0] <= x_mm
        ? []
        : [{ y: a[1] + ((x_mm - a[0]) / (b[0] - a[0])) * (b[1] - a[1]), film_W_m2K: surface.h_W_m2K }],
    ),
  )
  const sorted = met.toSorted((a, b) => a.y - b.y)
  return [sorted[0]?.film_W_m2K ?? Infinity, sorted.at(-1)?.film_W_m2K ?? Infinity]
}
