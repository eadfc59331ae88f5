import type { LowestSurface } from '../heat'

/** The coldest place of what is opaque inside: wall, reveal or sill. Glass and frames are judged apart (DIN 4108-2). */
export const coldestOf = (lowest: readonly LowestSurface[]): LowestSurface | undefined =>
  lowest.find(it => it.of !== 'frame' && it.of !== 'glass')
