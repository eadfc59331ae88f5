import type { Id } from '../../geometry'
import { kindOf } from '../../seals'
import type { ChoiceField } from '../choice-field'
import type { FieldAt, Known } from '../field'
import { sealOf } from '../find'
import type { Project } from '../model'
import { partKindOf } from './field-of'
import { layerChoices } from './layer-choices'
import { materialChoices } from './material-choices'
import { modelChoices } from './model-choices'
import { partChoices } from './part-choices'
import { roomChoices } from './room'
import { sealChoices } from './seal-choices'
import { siteChoices } from './site'
import { toldChoices } from './told'
import { staysChoices } from './stays'
import { zoneJoint } from './zone'

/** Every named word of the model. */
export const choices: readonly ChoiceField[] = [
  ...layerChoices,
  ...modelChoices,
  ...toldChoices,
  ...partChoices,
  ...materialChoices,
  zoneJoint,
  ...roomChoices,
  ...siteChoices,
  ...sealChoices,
  ...staysChoices,
]

const byId: ReadonlyMap<string, ChoiceField> = new Map(choices.map(it => [it.id, it]))

/** The choice of that name, if there is one. */
export const choiceOf = (id: string): ChoiceField | undefined => byId.get(id)

/** The word in use: what is stated, else what is fallen back on; nothing where it is missing. */
export const knownChoice = (project: Project, at: FieldAt): Known<string> | undefined => {
  const choice = choiceOf(at.field)
  const stated = choice?.read(project, at.part)
  return stated ? { ...stated, origin: 'file' } : choice?.fallback(project, at.part)
}

/** The choices that a part has, stated or not. */
export const choicesOf = (project: Project, part: Id): readonly ChoiceField[] => {
  const kind = partKindOf(project, part)
  const seal = sealOf(project, part)?.seal
  const own = seal && new Set(kindOf(seal).choices.map(it => it.id))
  return choices.filter(
    it => it.of === kind && (it.has?.(project, part) ?? (own === undefined || own.has(it.id))),
  )
}
