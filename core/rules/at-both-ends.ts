import type { LimitKey, LimitShapes } from '../practice'
import type { Band } from '../units'
import type { Some } from '../words'
import type { Asked } from './rule-shape'

/** Asks for the narrowest and for the widest joint: the worse answer counts, and says which end it was. */
export const atBothEnds = <L extends LimitKey>(
  joint_mm: Band,
  given: (width_mm: number) => LimitShapes[L]['given'],
): Some<Asked<L>> => [
  { given: given(joint_mm.min), state: 'narrowest', width_mm: joint_mm.min },
  { given: given(joint_mm.max), state: 'widest', width_mm: joint_mm.max },
]
