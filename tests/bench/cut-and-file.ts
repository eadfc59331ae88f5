import { openProject, type Project, samples, saveProject, zonesOf } from '../../core/detail'
import { jointBand } from '../../core/movement'
import { cutSection } from '../../core/section'
import type { Bench } from './bench'
import { manyOpenings } from '../given/many-openings'

/** Every zone of every sample, with the width that it is planned at. */
const cuts = samples.flatMap(({ project }) =>
  zonesOf(project).map(place => {
    const { planned_mm } = jointBand(project, place.opening, place.side, place.zone.id)
    return { project, place, width_mm: planned_mm }
  }),
)
let at = 0

/** What a project can hold: one section after the other, and a file of a thousand openings read and written. */
export const cutAndFile: readonly Bench[] = [
  {
    name: `cut one zone, each of ${cuts.length} in turn`,
    wanted_ms: 3,
    warmUp: 2 * cuts.length,
    runs: 10 * cuts.length,
    run: () => {
      const it = cuts[at++ % cuts.length]
      return it && cutSection(it.project, it.place, { state: 'planned', width_mm: it.width_mm })
    },
  },
  ...thousand(manyOpenings(1000, 1000)),
]

function thousand(project: Project): readonly Bench[] {
  const text = saveProject(project)
  const mb = (text.length / 1e6).toFixed(1)
  return [
    {
      name: `open 1,000 openings, ${mb} MB`,
      wanted_ms: 400,
      warmUp: 3,
      runs: 15,
      run: () => {
        const opened = openProject(text)
        if (!opened.ok) throw new Error(opened.problems[0].say.en)
        return opened
      },
    },
    {
      name: `save 1,000 openings, ${mb} MB`,
      wanted_ms: 500,
      warmUp: 3,
      runs: 15,
      run: () => saveProject(project),
    },
  ]
}
