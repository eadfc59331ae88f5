import {
  type Band,
  exactly,
  inWords,
  isInside,
  type Problem,
  readBand,
  readQuantity,
  type Wanted,
  writeQuantity,
} from '../../../core/units'
import { filled, type Language, same, type Words, words } from '../../../core/words'
import { say } from '../window-words'

/** What a field says below itself while something is typed, and how grave it is. */
export type Echo = { readonly kind: 'read' | 'asks' | 'refused'; readonly say: Words }

/** What typed text comes to: a value that can be taken, and what stands below the field. */
export type Typed<T> = { readonly value?: T; readonly asks: boolean; readonly echo?: Echo }

/** Reads the text of a field of one number. `shown` is how the field writes the present value. */
export const typedNumber = (text: string, wanted: Wanted, shown: Words): Typed<number> =>
  typed(text, shown, readQuantity(text, wanted), meantBy(text, wanted))

/** Reads the text of a range field. */
export const typedBand = (text: string, wanted: Wanted, shown: Words): Typed<Band> =>
  typed(text, shown, readBand(text, wanted))

/**
 * What was probably meant by a length that is far too small here: centimetres, or metres with three digits behind the
 * mark. It is only named; to take it, it has to be typed.
 */
const meantBy = (text: string, { unit, allowed }: Wanted): Words | undefined => {
  const read = unit === 'mm' && allowed ? readQuantity(text, { unit }) : undefined
  if (read?.ok !== true || allowed === undefined || isInside(exactly(read.value.value), allowed))
    return undefined
  const value = [10, 1000].map(times => read.value.value * times).find(it => isInside(exactly(it), allowed))
  return value === undefined ? undefined : inWords(language => writeQuantity(value, 'mm', language))
}

const typed = <T>(
  text: string,
  shown: Words,
  read: ReturnType<typeof readQuantity> | ReturnType<typeof readBand>,
  meant?: Words,
): Typed<T> => {
  if (!read.ok) {
    const kept = refusal(read.problems[0], shown)
    return { asks: false, echo: { kind: 'refused', say: meant ? filled(say.meant, kept, meant) : kept } }
  }
  const { value, understood, asks, notes, differs } = read.value
  // A plain number with a point needs no explanation in English, one with a comma none in German.
  const isPlain = { en: /^\s*\d+(\.\d+)?\s*$/.test(text), de: /^\s*\d+(,\d+)?\s*$/.test(text) }
  const wanted = { en: differs || !isPlain.en, de: differs || !isPlain.de }
  const note = notes[0] ? filled(words('; {0}', '; {0}'), notes[0]) : same('')
  const echo: Echo | undefined = asks
    ? { kind: 'asks', say: filled(say.takeIt, filled(asks)) }
    : wanted.en || wanted.de
      ? {
          kind: 'read',
          say: onlyWhere(
            wanted,
            filled(words('{0}{1}', '{0}{1}'), filled(say.readAs, text.trim(), understood), note),
          ),
        }
      : undefined
  // Both readers give the type that their caller asked for.
  return { value: value as T, asks: asks !== undefined, ...(echo && { echo }) }
}

/** The words in those languages in which they are wanted; nothing in the others. */
const onlyWhere = (wanted: Readonly<Record<Language, boolean>>, it: Words): Words => ({
  en: wanted.en ? it.en : '',
  de: wanted.de ? it.de : '',
})

/** What is not taken, and that the old value stays. */
export const refusal = (problem: Problem, shown: Words): Words => filled(say.kept, ended(problem.say), shown)

const ended = (it: Words): Words => filled(words('{0}.', '{0}.'), it)
