import { writeNumber } from '../../units'
import type { Language } from '../../words'
import { heights, textWidth_mm } from '../text/lettering'
import type { NamedLevel } from './picture'

/** A named line with its temperature. */
export const levelWords = ({ level_C, name }: NamedLevel, language: Language): string =>
  `${name[language]} ${writeNumber(Number(level_C.toFixed(1)), language, 1)}`

/** Room for words beside or over a field: the letters of a screen and of a drawing program are wider than the sheet's. Ours. */
export const roomFor_mm = (words: string, isBold = false): number =>
  wider * textWidth_mm(words, heights.note_mm, isBold)
const wider = 1.13
