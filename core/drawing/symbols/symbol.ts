import type { Language } from '../../words'
import type { ViewMark } from '../mark'

type SymbolMark = Extract<ViewMark, { kind: 'symbol' }>

/** A figure that stands at a place and may carry words: a DXF makes a block with attributes of it. */
export type DrawnSymbol = {
  readonly name: string
  /** its marks in paper mm */
  readonly marks: (mark: SymbolMark, language: Language) => readonly ViewMark[]
}
