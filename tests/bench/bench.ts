/** Something that is timed: what it does in words, how long it should take, and one run of it. */
export type Bench = {
  readonly name: string
  /** what a user bears; printed beside the time, never judged */
  readonly wanted_ms: number
  /** runs before the clock counts, and runs that count */
  readonly warmUp: number
  readonly runs: number
  readonly run: () => unknown
}

/** Median and slowest twentieth of the times of a bench, in milliseconds. */
export type Timed = { readonly median_ms: number; readonly slow_ms: number }

/** Runs a bench and times each run by itself. */
export const timed = async ({ warmUp, runs, run }: Omit<Bench, 'name' | 'wanted_ms'>): Promise<Timed> => {
  for (let at = 0; at < warmUp; at++) await run()
  const times: number[] = []
  for (let at = 0; at < runs; at++) {
    const from = performance.now()
    await run()
    times.push(performance.now() - from)
  }
  times.sort((a, b) => a - b)
  return { median_ms: at(times, 0.5), slow_ms: at(times, 0.95) }
}

const at = (sorted: readonly number[], share: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN
