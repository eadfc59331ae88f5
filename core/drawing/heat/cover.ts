import type { Point } from '../../geometry'
import type { Box } from './box'

/** What lies where on the paper, by small cells. */
export type Cover = {
  /** the weight of the lines of other levels under a box */
  readonly over: (box: Box, own_C: number) => number
}

type CoverLine = { readonly paper: readonly Point[]; readonly level_C: number; readonly weight: number }

/** The side of a cell on paper: about the height of a letter's half. Ours. */
const cell_mm = 1.25

/** Lines laid into cells: each cell keeps its heaviest line, and whether another level passes it too. */
export const coverOf = ([low, high]: Box, lines: readonly CoverLine[]): Cover => {
  const across = Math.max(1, Math.ceil((high[0] - low[0]) / cell_mm))
  const up = Math.max(1, Math.ceil((high[1] - low[1]) / cell_mm))
  const weight = new Float32Array(across * up)
  const level = new Float64Array(across * up).fill(NaN)
  const isMixed = new Uint8Array(across * up)
  for (const line of lines)
    for (let i = 1; i < line.paper.length; i++) {
      const [x0, y0] = line.paper[i - 1] ?? low
      const [x1, y1] = line.paper[i] ?? low
      const steps = Math.max(1, Math.ceil((2 * Math.hypot(x1 - x0, y1 - y0)) / cell_mm))
      for (let s = 0; s < steps; s++) {
        const column = Math.floor((x0 + ((x1 - x0) * s) / steps - low[0]) / cell_mm)
        const row = Math.floor((y0 + ((y1 - y0) * s) / steps - low[1]) / cell_mm)
        if (column < 0 || across <= column || row < 0 || up <= row) continue
        const at = row * across + column
        const there = level[at] ?? NaN
        if (!Number.isNaN(there) && there !== line.level_C) isMixed[at] = 1
        if (line.weight >= (weight[at] ?? 0)) {
          weight[at] = line.weight
          level[at] = line.level_C
        }
      }
    }
  return {
    over: ([from, to], own_C) => {
      const [c0, c1] = [Math.floor((from[0] - low[0]) / cell_mm), Math.floor((to[0] - low[0]) / cell_mm)]
      const [r0, r1] = [Math.floor((from[1] - low[1]) / cell_mm), Math.floor((to[1] - low[1]) / cell_mm)]
      let sum = 0
      for (let row = Math.max(0, r0); row <= Math.min(up - 1, r1); row++)
        for (let column = Math.max(0, c0); column <= Math.min(across - 1, c1); column++) {
          const at = row * across + column
          if (level[at] !== own_C || isMixed[at] === 1) sum += weight[at] ?? 0
        }
      return sum
    },
  }
}
