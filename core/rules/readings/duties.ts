import { type Duty, duties, dutyName } from '../../kinds'
import { filled, words } from '../../words'
import { computed, type Reading } from '../reading'

/** The layers that the planes of a joint have to join. */
const needed: readonly Duty[] = ['bearing', 'airtight', 'rain']

/** The duties that the layers of a wall have; missing while none is said to bear, to be airtight, or to keep out rain. */
export const wallDuties: Reading<readonly Duty[]> = computed({
  id: 'wall.duties',
  name: filled(
    words('Layers that are {0}', 'Schichten mit Aufgabe: {0}'),
    words(
      'bearing, airtight and rain-tight',
      `${dutyName.bearing.de}, ${dutyName.airtight.de}, ${dutyName.rain.de}`,
    ),
  ),
  of: 'wall',
  compute: (project, wall) => {
    const layers = project.walls[wall]?.layers ?? []
    const has = (duty: Duty) => layers.some(it => it.duties.includes(duty))
    return needed.every(has) ? duties.filter(has) : undefined
  },
})
