import type { Problem } from '../../units'
import { filled, words } from '../../words'

/** A file of ours is never longer or nested deeper than this: ours. */
const mostCharacters = 32 * 1024 * 1024
const deepest = 40

/**
 * What would make reading a text costly: its length, or brackets nested too deep. Looked at before anything is parsed.
 */
export const overCaps = (text: string): Problem | undefined => {
  if (text.length > mostCharacters) {
    return {
      at: 'file',
      say: filled(words('the file is longer than {0} MB', 'die Datei ist länger als {0} MB'), '32'),
    }
  }
  let depth = 0
  let quoted = false
  for (let i = 0; i < text.length; i++) {
    const at = text.charCodeAt(i)
    if (quoted) {
      if (at === backslash) i++
      else if (at === quote) quoted = false
    } else if (at === quote) quoted = true
    else if (at === openBrace || at === openBracket) depth++
    else if (at === closeBrace || at === closeBracket) depth--
    if (depth > deepest) {
      return { at: `character ${i + 1}`, say: filled(words('brackets are nested deeper than {0}', 'Klammern sind tiefer als {0} verschachtelt'), `${deepest}`) } // prettier-ignore
    }
  }
  return undefined
}

const quote = 34
const backslash = 92
const openBracket = 91
const closeBracket = 93
const openBrace = 123
const closeBrace = 125
