/** Values of a PDF, as far as a way to an attachment needs them. Names keep their slash, strings are left out. */
export type PdfValue =
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'name'; readonly value: string }
  | { readonly kind: 'string'; readonly value: string }
  | { readonly kind: 'reference'; readonly id: number }
  | { readonly kind: 'list'; readonly items: readonly PdfValue[] }
  | { readonly kind: 'dictionary'; readonly entries: ReadonlyMap<string, PdfValue> }
  | { readonly kind: 'other' }

/** Deeper nesting than this is no file of ours. */
const deepest = 20

/** Reads a value at a place of a file as single-byte text; gives where it ends too. Nothing where it is damaged. */
export const valueAt = (
  text: string,
  start: number,
  depth = 0,
): { readonly value: PdfValue; readonly end: number } | undefined => {
  const at = afterSpace(text, start)
  if (deepest < depth) return undefined
  if (text.startsWith('<<', at)) return dictionaryAt(text, at + 2, depth)
  switch (text[at]) {
    case '[':
      return listAt(text, at + 1, depth)
    case '/':
      return nameAt(text, at)
    case '(':
      return stringAt(text, at + 1)
    case '<':
      return hexAt(text, at)
    default:
      return plainAt(text, at)
  }
}

type Read = ReturnType<typeof valueAt>

const afterSpace = (text: string, start: number): number => {
  space.lastIndex = start
  return start + (space.exec(text)?.[0].length ?? 0)
}

const space = /[\0\t\n\f\r ]*/y

const dictionaryAt = (text: string, start: number, depth: number): Read => {
  const entries = new Map<string, PdfValue>()
  for (let at = afterSpace(text, start); ; at = afterSpace(text, at)) {
    if (text.startsWith('>>', at)) return { value: { kind: 'dictionary', entries }, end: at + 2 }
    const key = text[at] === '/' ? nameAt(text, at) : undefined
    const held = key && valueAt(text, key.end, depth + 1)
    if (key?.value.kind !== 'name' || held === undefined) return undefined
    entries.set(key.value.value, held.value)
    at = held.end
  }
}

const listAt = (text: string, start: number, depth: number): Read => {
  const items: PdfValue[] = []
  for (let at = afterSpace(text, start); ; at = afterSpace(text, at)) {
    if (text[at] === ']') return { value: { kind: 'list', items }, end: at + 1 }
    const item = valueAt(text, at, depth + 1)
    if (item === undefined) return undefined
    items.push(item.value)
    at = item.end
  }
}

const name = /\/[^\0\t\n\f\r ()<>[\]{}/%]*/y

const nameAt = (text: string, at: number): Read => {
  name.lastIndex = at
  const found = name.exec(text)?.[0]
  return found === undefined
    ? undefined
    : { value: { kind: 'name', value: found.slice(1) }, end: at + found.length }
}

/** A string in brackets; escaped signs are kept as they are written. */
const stringAt = (text: string, start: number): Read => {
  let open = 1
  for (let at = start; at < text.length; at++) {
    if (text[at] === '\\') at++
    else if (text[at] === '(') open++
    else if (text[at] === ')' && --open === 0)
      return { value: { kind: 'string', value: text.slice(start, at) }, end: at + 1 }
  }
  return undefined
}

const hex = /<[0-9A-Fa-f\s]*>/y

const hexAt = (text: string, at: number): Read => {
  hex.lastIndex = at
  const found = hex.exec(text)?.[0]
  return found === undefined ? undefined : { value: { kind: 'other' }, end: at + found.length }
}

const reference = /(\d{1,9})[\0\t\n\f\r ]+\d{1,5}[\0\t\n\f\r ]+R(?![A-Za-z])/y
const number = /[+-]?(?:\d{1,12}\.?\d*|\.\d+)/y
const word = /true|false|null/y

const plainAt = (text: string, at: number): Read => {
  for (const rule of [reference, number, word]) rule.lastIndex = at
  const found = reference.exec(text)
  if (found) return { value: { kind: 'reference', id: Number(found[1]) }, end: at + found[0].length }
  const digits = number.exec(text)?.[0]
  if (digits !== undefined)
    return { value: { kind: 'number', value: Number(digits) }, end: at + digits.length }
  const said = word.exec(text)?.[0]
  return said === undefined ? undefined : { value: { kind: 'other' }, end: at + said.length }
}
