import type { Point } from '../../geometry'

/** Zones beside a step reach as far as the step is deep, at most this far (EN ISO 10077-2, published). */
const widest_mm = 30

/** A stretch of an inside surface, and whether it lies in a zone of reduced radiation. */
export type Zoned = { readonly from: Point; readonly to: Point; readonly isReduced: boolean }

/**
 * Splits an inside surface (a path with the section on its left) at the zones of reduced radiation. In each corner that
 * is open to the room by less than a straight angle, the step itself is reduced wholly and the longer arm as far as the
 * step is deep, up to 30 mm. A step deeper than twice that is no step of a frame: then both arms are reduced for 30 mm (ours).
 */
export const reducedZones = (path: readonly Point[]): readonly Zoned[] => {
  const arms = straightArms(path)
  const cuts = arms.map(() => ({ atStart_mm: 0, atEnd_mm: 0 }))
  for (let i = 0; i + 1 < arms.length; i++) {
    const [before, after] = [arms[i], arms[i + 1]]
    if (!before || !after || !isInnerCorner(before, after)) continue
    const step_mm = Math.min(before.length_mm, after.length_mm)
    const reach = (arm: Arm) =>
      arm.length_mm === step_mm && step_mm <= 2 * widest_mm ? step_mm : Math.min(step_mm, widest_mm)
    const [first, second] = [cuts[i], cuts[i + 1]]
    if (first) first.atEnd_mm = Math.max(first.atEnd_mm, reach(before))
    if (second) second.atStart_mm = Math.max(second.atStart_mm, reach(after))
  }
  return arms.flatMap((arm, i) => pieces(arm, cuts[i]?.atStart_mm ?? 0, cuts[i]?.atEnd_mm ?? 0))
}

type Arm = { readonly from: Point; readonly to: Point; readonly length_mm: number }

const straightArms = (path: readonly Point[]): readonly Arm[] => {
  const arms: Arm[] = []
  for (let i = 1; i < path.length; i++) {
    const [from, to] = [path[i - 1], path[i]]
    if (!from || !to) continue
    const last = arms.at(-1)
    const isStraight = last && Math.abs(turnOf(last, { from, to })) < 1e-3 && dotOf(last, { from, to }) > 0
    if (last && isStraight) arms[arms.length - 1] = armOf(last.from, to)
    else arms.push(armOf(from, to))
  }
  return arms
}

const armOf = (from: Point, to: Point): Arm => ({
  from,
  to,
  length_mm: Math.hypot(to[0] - from[0], to[1] - from[1]),
})

/** Sine of the turn from one arm into the next, positive to the left. */
const turnOf = (a: Pick<Arm, 'from' | 'to'>, b: Pick<Arm, 'from' | 'to'>): number => {
  const [ax, ay, bx, by] = [
    a.to[0] - a.from[0],
    a.to[1] - a.from[1],
    b.to[0] - b.from[0],
    b.to[1] - b.from[1],
  ]
  return (ax * by - ay * bx) / (Math.hypot(ax, ay) * Math.hypot(bx, by))
}

const dotOf = (a: Pick<Arm, 'from' | 'to'>, b: Pick<Arm, 'from' | 'to'>): number =>
  (a.to[0] - a.from[0]) * (b.to[0] - b.from[0]) + (a.to[1] - a.from[1]) * (b.to[1] - b.from[1])

/** The section lies on the left, the room on the right: turning right, the corner closes in on the room. */
const isInnerCorner = (before: Arm, after: Arm): boolean => turnOf(before, after) < -0.5

const pieces = (arm: Arm, atStart_mm: number, atEnd_mm: number): readonly Zoned[] => {
  if (atStart_mm === 0 && atEnd_mm === 0) return [{ ...arm, isReduced: false }]
  if (atStart_mm + atEnd_mm >= arm.length_mm) return [{ ...arm, isReduced: true }]
  const first = along(arm, atStart_mm)
  const second = along(arm, arm.length_mm - atEnd_mm)
  return [
    ...(atStart_mm > 0 ? [{ from: arm.from, to: first, isReduced: true }] : []),
    { from: first, to: second, isReduced: false },
    ...(atEnd_mm > 0 ? [{ from: second, to: arm.to, isReduced: true }] : []),
  ]
}

const along = ({ from, to, length_mm }: Arm, at_mm: number): Point => [
  from[0] + ((to[0] - from[0]) * at_mm) / length_mm,
  from[1] + ((to[1] - from[1]) * at_mm) / length_mm,
]
