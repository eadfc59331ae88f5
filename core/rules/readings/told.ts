import { choiceOf, fieldOf, type Told, toldWords } from '../../detail'
import type { Stated } from '../../units'
import type { Words } from '../../words'
import { placed, type Reading, statedThere } from '../reading'

type Amount = {
  readonly [K in keyof Told]-?: NonNullable<Told[K]>['value'] extends number ? K : never
}[keyof Told]
type Word = Exclude<keyof Told, Amount>
type WordIn<K extends Word> = NonNullable<Told[K]>['value']

/** What a value that is told of an opening is called. Throws on a name that nothing has: a rule that misspells it never loads. */
const nameOf = (id: string): Words => {
  const name = fieldOf(id)?.name ?? choiceOf(id)?.name
  if (name === undefined) throw new Error(`A rule reads ${id}, and nothing of that name is told`)
  return name
}

/** An amount that is told of an opening; missing where nobody has. */
export const toldAmount = (id: string, key: Amount): Reading<number> =>
  statedThere({ id, name: nameOf(id) }, at => at.opening.id, at => at.opening.told?.[key]) // prettier-ignore

/** A word that is told of an opening; missing where nobody has. */
export const toldWord = <K extends Word>(id: string, key: K): Reading<WordIn<K>> =>
  statedThere<WordIn<K>>(
    { id, name: nameOf(id) },
    at => at.opening.id,
    // The word of a key is one of its own list: TypeScript does not follow the key through the generic.
    at => at.opening.told?.[key] as Stated<WordIn<K>> | undefined,
  )

/** A word that matters only where somebody tells it. */
export const toldOr = <K extends Word>(id: string, key: K): Reading<WordIn<K> | 'not-told'> =>
  placed<WordIn<K> | 'not-told'>({
    id,
    name: nameOf(id),
    compute: at => at.opening.told?.[key]?.value ?? 'not-told',
  }) // prettier-ignore

/** How people say a word that is told. */
export const wordName = (id: string, value: string): Words =>
  toldWords
    .find(it => it.id === id)
    ?.choices.map((it): Named => it)
    .find(it => it.value === value)?.name ?? { en: value, de: value }

type Named = { readonly value: string; readonly name: Words }
