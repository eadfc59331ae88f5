import { filled, same, type Words } from '../../../core/words'
import type { Readings } from '../state/readings.svelte'
import { say } from '../window-words'

/** A part as it is said aloud when it is selected: name, value, number, worst verdict. */
export const spokenPart = (readings: Readings, id: string): Words => {
  const row = readings.rows.find(it => it.part.id === id)
  if (row === undefined) return same('')
  const verdict = row.verdict ? filled(same(', {0}'), say[row.verdict]) : same('')
  const number =
    row.number === undefined ? same('') : filled(same(', {0}'), filled(say.part, `${row.number}`))
  const out = row.isOut ? filled(same(', {0}'), say.takenOut) : same('')
  return filled(same('{0}, {1}{2}{3}{4}'), row.part.name, row.part.value, number, out, verdict)
}
