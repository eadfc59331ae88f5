import type { Id } from '../../geometry'
import type { Stated } from '../../units'
import type { ChoiceField } from '../choice-field'
import type { Field } from '../field'
import { entryAt } from '../find'
import type { Project } from '../model'
import { type Told, toldAmounts, toldWords } from '../told'
import { choiceField } from './choice-field'
import { numberField } from './number-field'
import { withOpening } from './tables'

/** Every amount that is told of an opening and its work. */
export const toldFields: readonly Field<number>[] = toldAmounts.map(
  ({ key, unit, min, max, because, ...it }) =>
    numberField({
      ...it,
      of: 'opening',
      unit,
      read: (project, opening) => entryAt(project.openings, opening)?.told?.[key],
      allowed: () => ({ bounds: { unit, min, max }, because }),
      write: (project, opening, to) => withTold(project, opening, key, to),
    }),
)

/** Every word that is told of it. */
export const toldChoices: readonly ChoiceField[] = toldWords.map(({ key, choices, ...it }) =>
  choiceField({
    ...it,
    of: 'opening',
    choices,
    read: (project, opening): Stated<(typeof choices)[number]['value']> | undefined =>
      entryAt(project.openings, opening)?.told?.[key],
    write: (project, opening, to) => withTold(project, opening, key, to),
  }),
)

const withTold = (project: Project, opening: Id, key: keyof Told, to: Stated<number | string> | undefined): Project =>
  withOpening(project, opening, ({ told, ...it }) => {
    const { [key]: _, ...rest } = told ?? {}
    const others = { ...rest, ...(to ? { [key]: to } : {}) }
    // The field of a key states what that key holds; without any, nothing is told.
    return Object.keys(others).length > 0 ? { ...it, told: others as Told } : it
  }) // prettier-ignore
