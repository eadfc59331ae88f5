import { filled, same, type Words } from '../../../core/words'
import type { Readings } from '../state/readings.svelte'
import { say } from '../window-words'
import { partRows } from './rows'

/** A part as it is said aloud when it is selected: name, value, number, worst verdict. */
export const spokenPart = (readings: Readings, id: string): Words => {
  const row = partRows(readings.project, readings.parts, readings.report, readings.view.side).find(
    it => it.part.id === id,
  )
  if (row === undefined) return same('')
  const verdict = row.verdict ? filled(same(', {0}'), say[row.verdict]) : same('')
  return filled(
    same('{0}, {1}, {2}{3}'),
    row.part.name,
    row.part.value,
    filled(say.part, `${row.number}`),
    verdict,
  )
}
