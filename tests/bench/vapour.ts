import { samples, zonesOf } from '../../core/detail'
import { variantsOf } from '../../core/study'
import { monthlyBalance, sectionField, sectionVapour, solveZone, unfavourable } from '../../core/vapour'
import type { Bench } from './bench'

/** The sample whose cut has most regions, and its left jamb. */
const largest = samples
  .flatMap(({ file, project }) => {
    const place = zonesOf(project).find(it => it.side === 'left')
    const zone = place && solveZone(project, place, { purpose: 'surface-humidity' })
    return place && zone?.ok ? [{ file, project, place, zone: zone.value }] : []
  })
  .toSorted((a, b) => b.zone.section.regions.length - a.zone.section.regions.length)[0]

const benchesOf = ({ file, project, place, zone }: NonNullable<typeof largest>): readonly Bench[] => {
  const { vapourView, conditions, solved } = zone
  const { along } = sectionVapour(vapourView, 'joint', conditions)
  const path = along.ok ? along.value.path : undefined
  const choices = path ? unfavourable(path) : []
  return [
    {
      name: `four places of the frame, ${file}`,
      wanted_ms: 80,
      warmUp: 8,
      runs: 30,
      run: () => variantsOf(project, place),
    },
    {
      name: `a year of vapour by months at every choice of ranges, ${file}`,
      wanted_ms: 5,
      warmUp: 20,
      runs: 100,
      run: () => path && choices.map(taken => monthlyBalance(path, taken, conditions.year)),
    },
    {
      name: `vapour field with its wet zone, ${file}`,
      wanted_ms: 150,
      warmUp: 8,
      runs: 30,
      run: () => sectionField(vapourView, solved.solution, conditions),
    },
  ]
}

/** Studies and vapour of one zone. */
export const vapour: readonly Bench[] = largest ? benchesOf(largest) : []
