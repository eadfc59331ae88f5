/** Things in groups: each knows one further of its group, the leader itself (Tarjan 1975). */
export type Groups = Int32Array

/** As many things, each in a group of its own. */
export const groups = (count: number): Groups => {
  const leader = new Int32Array(count)
  for (let i = 0; i < count; i++) leader[i] = i
  return leader
}

/** Makes one group of two. */
export const join = (scratch: Groups, a: number, b: number): void => {
  scratch[leaderOf(scratch, a)] = leaderOf(scratch, b)
}

/** The one that speaks for the group; ways to it are shortened on the way. */
export const leaderOf = (scratch: Groups, of: number): number => {
  let at = of
  while (scratch[at] !== at) {
    scratch[at] = scratch[scratch[at]!]!
    at = scratch[at]!
  }
  return at
}
