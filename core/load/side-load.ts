/** A side with its fixings, and what ends on it: members by their end reaction, corners of sides that nothing holds. */
export type HeldSide = {
  readonly length_mm: number
  readonly axes_mm: readonly number[]
  readonly edge_N_m: number
  readonly members: readonly { readonly at_mm: number; readonly reaction_N: number }[]
  /** end reaction of a side that nothing holds, at the lower or left end and at the other */
  readonly unheld_N: { readonly first: number; readonly last: number }
}

/** The most loaded fixing of a side: its stretch of the line load, and what ends beside it. Characteristic, in N. */
export type FixingForce = {
  readonly at_mm: number
  readonly tributary_mm: number
  /** share of the end reaction of a member, or of a side that nothing holds */
  readonly reaction_N: number
  readonly force_N: number
}

/**
 * Force on the most loaded fixing: line load times the largest spacing; beside a member half of its end reaction and
 * the load up to its axis; at a corner of a side that nothing holds all of that side's reaction, and the load up to
 * the corner. Nothing where no fixing holds the side.
 */
export const fixingForce = (side: HeldSide): FixingForce | undefined => {
  const all = [...plain(side), ...besideMembers(side), ...besideUnheld(side)]
  const [first, ...more] = all
  return first && more.reduce((most, it) => (it.force_N > most.force_N ? it : most), first)
}

const forceOf = (side: HeldSide, at_mm: number, tributary_mm: number, reaction_N: number): FixingForce => ({
  at_mm,
  tributary_mm,
  reaction_N,
  force_N: reaction_N + (side.edge_N_m * tributary_mm) / 1000,
})

/** Away from members: the largest spacing that no member divides. */
const plain = (side: HeldSide): readonly FixingForce[] => {
  const { axes_mm, members, length_mm } = side
  const [only] = axes_mm
  if (only !== undefined && axes_mm.length === 1) return [forceOf(side, only, length_mm, 0)]
  return axes_mm.slice(1).flatMap((at_mm, i) => {
    const before_mm = axes_mm[i] ?? 0
    const isDivided = members.some(it => before_mm < it.at_mm && it.at_mm < at_mm)
    return isDivided ? [] : [forceOf(side, at_mm, at_mm - before_mm, 0)]
  })
}

const besideMembers = (side: HeldSide): readonly FixingForce[] =>
  side.members.flatMap(({ at_mm, reaction_N }) => {
    const before = side.axes_mm.filter(it => it <= at_mm).toReversed()
    const after = side.axes_mm.filter(it => it > at_mm)
    return [before, after].flatMap(([next, beyond]) => {
      if (next === undefined) return []
      const half_mm = beyond === undefined ? 0 : Math.abs(beyond - next) / 2
      return [forceOf(side, next, half_mm + Math.abs(at_mm - next), reaction_N / 2)]
    })
  })

const besideUnheld = (side: HeldSide): readonly FixingForce[] => {
  const { axes_mm, length_mm, unheld_N } = side
  const corner = (
    next: number | undefined,
    beyond: number | undefined,
    end_mm: number,
    reaction_N: number,
  ) => {
    if (next === undefined || reaction_N === 0) return []
    const half_mm = beyond === undefined ? 0 : Math.abs(beyond - next) / 2
    return [forceOf(side, next, half_mm + Math.abs(end_mm - next), reaction_N)]
  }
  return [
    ...corner(axes_mm[0], axes_mm[1], 0, unheld_N.first),
    ...corner(axes_mm.at(-1), axes_mm.at(-2), length_mm, unheld_N.last),
  ]
}

/** The larger share that one of two neighbouring fixings takes of a force between them: by the lever. In N. */
export const leverShare_N = (axes_mm: readonly number[], at_mm: number, force_N: number): number => {
  const before = axes_mm.filter(it => it <= at_mm).at(-1)
  const after = axes_mm.find(it => it > at_mm)
  if (before === undefined || after === undefined) return force_N
  return (force_N * Math.max(at_mm - before, after - at_mm)) / (after - before)
}
