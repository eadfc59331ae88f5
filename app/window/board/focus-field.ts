import { tick } from 'svelte'
import { type FieldAt, fieldOf } from '../../../core/detail'
import { fieldsOfPart, isSame } from '../fields/fields-of-part'
import type { Desk } from '../state/desk'
import { say as words } from '../window-words'

/** Goes to the line in the fields of what is selected that states a value, out of a group that was folded away, too. */
export const focusField = async ({ board, readings, editing, say }: Desk, at: FieldAt): Promise<void> => {
  const [selected] = board.now.selection
  if (selected !== undefined) {
    const { groups } = fieldsOfPart(readings.project, readings.place, readings.grips, selected)
    const group = groups.find(it => it.rows.some(row => isSame(row.at, at)))
    if (group && group.id !== 'main') editing.folds[group.id] = true
  }
  await tick()
  const name = say(
    at.field === 'joint.planned' ? words.jointThisSide : (fieldOf(at.field)?.name ?? words.sizes),
  )
  const inputs = [...document.querySelectorAll<HTMLInputElement>('[data-area="fields"] input')]
  inputs.find(it => it.ariaLabel === name)?.focus()
}
