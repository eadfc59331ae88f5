/** Numbers that look random and are the same in every run (mulberry32, public domain). */
export type Random = {
  readonly between: (min: number, max: number) => number
  readonly whole: (min: number, max: number) => number
  readonly one: <T>(of: readonly [T, ...T[]]) => T
  readonly chance: (share: number) => boolean
}

export const randomFrom = (seed: number): Random => {
  let state = seed >>> 0
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = Math.imul(state ^ (state >>> 15), 1 | state)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
  const whole = (min: number, max: number) => min + Math.floor(next() * (max - min + 1))
  return {
    between: (min, max) => min + next() * (max - min),
    whole,
    one: of => of[whole(0, of.length - 1)] ?? of[0],
    chance: share => next() < share,
  }
}
