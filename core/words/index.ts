export { decimalMark, filled, isSome, languages, listed, same, words } from './words'
export type { Language, Some, Words } from './words'
