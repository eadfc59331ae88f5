import { type Project, samples, starters, wallFrom } from '../../core/detail'
import { materials } from '../../core/materials'
import { specified } from '../../core/units'

/** The first sample with another wall, by the name of what one can begin with: its frame stands where it usually does. */
export const aWalledProject = (wall: string): Project => {
  const [sample] = samples
  const plan = starters.find(it => it.id === wall)
  if (sample === undefined || plan === undefined) throw new Error(`no wall begins as ${wall}`)
  const { project } = sample
  let next = project.next
  const built = wallFrom(plan, kind => `${kind}-${next++}`)
  return {
    ...project,
    next,
    materials: Object.fromEntries(materials.map(it => [it.id, it])),
    walls: { [built.id]: built },
    openings: Object.fromEntries(
      Object.entries(project.openings).map(([id, it]) => [
        id,
        { ...it, wall: built.id, position_mm: specified(plan.position_mm) },
      ]),
    ),
  }
}
