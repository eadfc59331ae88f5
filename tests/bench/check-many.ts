import { check } from '../../core/rules'
import { manyOpenings } from '../given/many-openings'
import type { Bench } from './bench'

/** Every verdict of a thousand openings, asked of nothing that was kept: with forty sizes, and with all sizes different. */
export const checkMany: readonly Bench[] = [40, 1000].map(sizes => {
  const project = manyOpenings(1000, sizes)
  return {
    name: `check 1,000 openings of ${sizes} sizes`,
    wanted_ms: sizes === 40 ? 1000 : 3000,
    warmUp: 1,
    runs: 5,
    run: () => check(project).findings.length,
  }
})
