import type { JointBand, Term } from '../../movement'
import { words } from '../../words'

/** How the still width at one end of a joint comes about: as planned with its tolerance, or as measured. */
export const stillSum = (band: JointBand, end: 'narrowest' | 'widest'): readonly Term[] => {
  return [
    ...band.stillSums[end],
    {
      sign: '=',
      value: end === 'narrowest' ? band.still_mm.min : band.still_mm.max,
      unit: 'mm',
      says: end === 'narrowest' ? narrowest : widest,
    },
  ]
}

const narrowest = words('narrowest, without movement', 'engste, ohne Bewegung')
const widest = words('widest, without movement', 'breiteste, ohne Bewegung')
