import { fieldOf } from '../../../core/detail'
import type { Words } from '../../../core/words'
import { say as words } from '../window-words'

/** Goes to the line in the fields that states a value, if it stands there. */
export const focusField = (field: string, say: (it: Words) => string): void => {
  const name = say(field === 'joint.planned' ? words.jointThisSide : (fieldOf(field)?.name ?? words.sizes))
  const inputs = [...document.querySelectorAll<HTMLInputElement>('[data-area="fields"] input')]
  inputs.find(it => it.ariaLabel === name)?.focus()
}
