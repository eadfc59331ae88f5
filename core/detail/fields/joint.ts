import { words } from '../../words'
import { numberField } from './number-field'
import { withJoint } from './tables'
import { entryAt } from '../find'

/** Wider than this nobody calls it a joint: ours. The narrow end is the least that can be drawn. */
const width = { unit: 'mm', min: 0.5, max: 100 } as const

export const jointPlanned = numberField({
  id: 'joint.planned',
  name: words('Joint, planned', 'Fuge, geplant'),
  of: 'joint',
  unit: 'mm',
  read: (project, joint) => entryAt(project.joints, joint)?.planned_mm,
  allowed: () => ({ bounds: width, because: words('a joint has a width', 'eine Fuge hat eine Breite') }),
  write: (project, joint, to) =>
    withJoint(project, joint, it => ({ ...it, planned_mm: to ?? it.planned_mm })),
})

export const jointTolerance = numberField({
  id: 'joint.tolerance',
  name: words('Tolerance, each way', 'Toleranz, je Richtung'),
  of: 'joint',
  unit: 'mm',
  surveyed: true,
  read: (project, joint) => entryAt(project.joints, joint)?.tolerance_mm,
  allowed: () => ({
    bounds: { unit: 'mm', min: 0, max: 50 },
    because: words('how far the built width may be off', 'wie weit die gebaute Breite abweichen darf'),
  }),
  write: (project, joint, to) =>
    withJoint(project, joint, it => ({ ...it, tolerance_mm: to ?? it.tolerance_mm })),
})
