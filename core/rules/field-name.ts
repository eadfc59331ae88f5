import { choiceOf, type FieldAt, fieldOf } from '../detail'
import type { Words } from '../words'
import { rules } from './all'

/** What a value is called: as a field or a choice of the model, else as a rule that reads it calls it. */
export const fieldName = ({ field }: FieldAt): Words =>
  fieldOf(field)?.name ?? choiceOf(field)?.name ?? readBy.get(field) ?? { en: field, de: field }

const readBy: ReadonlyMap<string, Words> = new Map(
  rules.flatMap(rule => rule.reads.map(it => [it.id, it.name] as const)),
)
