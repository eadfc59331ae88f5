import type { Language } from '../../words'
import type { ViewMark } from '../mark'
import { titleBlock } from '../sheet/title-block'
import { coldestPlace } from './coldest-place'
import { firstAngle } from './first-angle'
import { statusSymbols } from './statuses'
import type { DrawnSymbol } from './symbol'

/** Every symbol that a mark may name. */
export const symbols: readonly DrawnSymbol[] = [...statusSymbols, coldestPlace, firstAngle, titleBlock]

const byName: ReadonlyMap<string, DrawnSymbol> = new Map(symbols.map(it => [it.name, it]))

/** The marks of a symbol on paper; a name that nobody knows is a fault of ours. */
export const symbolMarks = (
  mark: Extract<ViewMark, { kind: 'symbol' }>,
  language: Language,
): readonly ViewMark[] => {
  const symbol = byName.get(mark.name)
  if (symbol === undefined) throw new Error(`no symbol is named "${mark.name}"`)
  return symbol.marks(mark, language)
}
