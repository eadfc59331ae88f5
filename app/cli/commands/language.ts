import { type Language, languages } from '../../../core/words'
import type { Chosen, Option } from './command'

/** The language of what a command says. */
export const languageOption: Option = {
  flags: '--language <language>',
  says: 'language of the text',
  choices: languages,
  usually: 'en',
}

/** The language that was chosen; the command line has refused any other. */
export const languageOf = (chosen: Chosen): Language =>
  languages.find(it => it === chosen['language']) ?? 'en'
