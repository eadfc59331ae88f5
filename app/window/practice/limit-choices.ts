import { choiceOf, type Project, type Word } from '../../../core/detail'
import { planeName, planes } from '../../../core/kinds'
import type { AnyRule } from '../../../core/rules'
import { listed, type Words, words } from '../../../core/words'

/** A list of words in what a limit gives, by its key, and all the words that it may have. */
export type WordList = {
  readonly key: string
  readonly chosen: readonly string[]
  readonly offered: readonly Word[]
}

/** The list of words that a limit gives, if it gives one whose words the program knows: those of what its rule reads. */
export const wordListOf = (project: Project, rule: AnyRule, then: unknown): WordList | undefined => {
  if (typeof then !== 'object' || then === null) return undefined
  for (const [key, value] of Object.entries(then)) {
    if (!isWords(value)) continue
    const read = rule.reads.flatMap(it => choiceOf(it.id)?.allowed(project, '').choices ?? [])
    const offered = key === 'planes' ? planes.map(it => ({ value: it, name: planeName[it] })) : read
    if (value.every(one => offered.some(it => it.value === one))) return { key, chosen: value, offered }
  }
  return undefined
}

const isWords = (value: unknown): value is readonly string[] =>
  Array.isArray(value) && value.length > 0 && value.every(it => typeof it === 'string')

/** The words of a list as people say them: "free or covered", for any of them will do; planes are asked for together. */
export const chosenWords = ({ key, chosen, offered }: WordList): Words => {
  const names = chosen.flatMap(one => offered.find(it => it.value === one)?.name ?? [])
  if (key === 'planes') return listed(names)
  return { en: names.map(it => it.en).join(' or '), de: names.map(it => it.de).join(' oder ') }
}

/** What a limit gives with another list of words in its place. */
export const withWords = (then: unknown, key: string, to: readonly string[]): unknown =>
  typeof then === 'object' && then !== null ? { ...then, [key]: to } : then

export const atLeastOne = words('At least one word has to be accepted', 'Mindestens ein Wort muss gelten')
