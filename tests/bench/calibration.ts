import type { Bench } from './bench'

/**
 * A fixed piece of arithmetic. Times are printed as multiples of it, so that numbers from a fast and a slow machine,
 * or from a busy one, can be laid side by side.
 */
export const calibration: Omit<Bench, 'wanted_ms'> = {
  name: 'calibration loop',
  warmUp: 20,
  runs: 60,
  run: () => {
    let sum = 0
    for (let n = 1; n <= 1_000_000; n++) sum += Math.sqrt(n) / (1 + (n % 7))
    return sum
  },
}
