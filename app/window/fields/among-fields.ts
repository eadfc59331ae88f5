import { tick } from 'svelte'
import type { FieldAt } from '../../../core/detail'
import type { Desk } from '../state/desk'
import { fieldsOfPart, isSame } from './fields-of-part'

/**
 * Goes to a value among the fields: selects the part of the list that has it, opens the group that it stands in, and
 * puts the keyboard there. Nothing where no part of this cut has it.
 */
export const showAmongFields = async (
  { board, readings, editing, look }: Desk,
  at: FieldAt,
): Promise<void> => {
  const { project, place, grips, rows } = readings
  const groupsOf = (part: string) => fieldsOfPart(project, place, grips, part).groups
  const groupIn = (part: string) => groupsOf(part).find(it => it.rows.some(row => isSame(row.at, at)))
  const row = [...rows].sort((a, b) => Number(b.part.id === at.part) - Number(a.part.id === at.part)).find(it => groupIn(it.part.id)) // prettier-ignore
  const group = row && groupIn(row.part.id)
  if (row === undefined || group === undefined) return
  board.act({ kind: 'select', parts: [row.part.id] })
  look.tab = 'fields'
  if (group.id !== 'main') editing.folds[group.id] = true
  await tick()
  const line = document.querySelector(`[data-area="fields"] [data-field="${at.field}"]`)
  line?.scrollIntoView({ block: 'nearest' })
  line?.querySelector<HTMLElement>('input, button')?.focus()
}
