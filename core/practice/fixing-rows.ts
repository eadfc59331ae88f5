import { type FrameMaterial, frameMaterials } from '../kinds'
import { type Citation, cite } from '../sources'
import type { Row } from './limit'

/** The largest distance of fixings by frame; for a burglar-resistant element a smaller one comes first. */
export const spacings = (
  most_mm: Readonly<Record<FrameMaterial, number>>,
  by: Citation,
): readonly Row<'fixing-spacing'>[] => [
  {
    when: { burglary: ['yes'] },
    then: { most_mm: 600, least: 2 },
    cite: cite('burglary-note', 'published'),
    ifBroken: 'not-met',
  },
  ...frameMaterials.map((frame): Row<'fixing-spacing'> => ({
    when: { frame: [frame] },
    then: { most_mm: most_mm[frame], least: 2 },
    // no table names timber under aluminium: that it is held like timber is ours
    cite: frame === 'timber-aluminium' ? cite('convention', 'ours') : by,
    ifBroken: 'not-met',
  })),
]
