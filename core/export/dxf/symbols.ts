import { inkOfMarks, type Letters, printable, symbols, type ViewMark } from '../../drawing'
import { add, addSpace, type Place, type Space } from './draft'
import { drawInk, textTags } from './figures'
import { penLayer } from './layers'
import { point, type Tags } from './tags'

type SymbolMark = Extract<ViewMark, { kind: 'symbol' }>

/**
 * A symbol in paper mm as a block. Words of it that are one of its values become attributes at their place, so that they
 * can be filled in and read out; values that are shown in another way are kept as attributes out of sight.
 */
export const drawSymbol = (place: Place, mark: SymbolMark): void => {
  const { draft } = place
  const symbol = symbols.find(it => it.name === mark.name)
  if (symbol === undefined) throw new Error(`no symbol is named "${mark.name}"`)
  const alike = draft.blocks.filter(it => it.name === nameOf(mark) || it.name.startsWith(`${nameOf(mark)}-`))
  if (alike[0] && Object.keys(mark.values).length === 0) {
    insert(place, mark, { block: alike[0], attributes: [] })
    return
  }
  const block = addSpace(draft, `${nameOf(mark)}${alike.length === 0 ? '' : `-${alike.length + 1}`}`, 'block')
  const inside: Place = { draft, space: block, scale: 1, at: it => it }
  const left = new Map(Object.entries(mark.values).filter(([, value]) => printable(value).trim() !== ''))
  const shown: Attribute[] = []
  for (const part of symbol.marks({ ...mark, at: [0, 0] }, draft.look.language)) {
    const key = part.kind === 'text' ? [...left].find(([, value]) => value === part.words)?.[0] : undefined
    if (part.kind === 'text' && key !== undefined) {
      left.delete(key)
      shown.push({ key, hidden: false, pen: part.pen, layer: part.layer, letters: lettersOf(part) })
    } else if (part.kind === 'symbol') drawSymbol(inside, part)
    else
      for (const { layer, inks } of inkOfMarks([part], draft.look))
        for (const ink of inks) drawInk(inside, ink, layer, part.kind === 'text' ? part.pen : 'text')
  }
  const hidden = [...left].map(([key, words], at): Attribute => ({
    key,
    hidden: true,
    pen: 'text',
    layer: mark.layer,
    letters: lettersOf({ words, at: [0, -at * 4], height_mm: 2.5, turn_deg: 0, anchor: 'start' }),
  }))
  insert(place, mark, { block, attributes: [...shown, ...hidden] })
}

const nameOf = (mark: SymbolMark): string => `JW-${mark.layer}-${mark.name}`.toUpperCase()

type Attribute = {
  readonly key: string
  readonly hidden: boolean
  readonly pen: Extract<ViewMark, { kind: 'text' }>['pen']
  readonly layer: SymbolMark['layer']
  readonly letters: Letters
}

const lettersOf = (
  mark: Pick<
    Extract<ViewMark, { kind: 'text' }>,
    'at' | 'words' | 'height_mm' | 'turn_deg' | 'anchor' | 'bold'
  >,
): Letters => ({
  kind: 'letters',
  at: mark.at,
  words: mark.words,
  height_mm: mark.height_mm,
  turn_deg: mark.turn_deg,
  anchor: mark.anchor,
  bold: mark.bold === true,
  colour: '#111111',
})

const insert = (
  place: Place,
  mark: SymbolMark,
  of: { readonly block: Space; readonly attributes: readonly Attribute[] },
): void => {
  const { draft, scale } = place
  const inside: Place = { draft, space: of.block, scale: 1, at: it => it }
  for (const it of of.attributes) {
    const tag: Tags = [[3, it.key.toUpperCase()], ...tagOf(it)]
    const body: Tags = [...textTags(inside, it.letters), [100, 'AcDbAttributeDefinition'], ...tag]
    add(inside, 'ATTDEF', penLayer(draft, it.layer, it.pen, 1), body)
  }
  const on = penLayer(draft, mark.layer, 'stroke', scale)
  const handle = add(place, 'INSERT', { ...on, own: {} }, [
    [100, 'AcDbBlockReference'],
    ...(of.attributes.length > 0 ? ([[66, 1]] as const) : []),
    [2, of.block.name],
    ...point(10, place.at(mark.at)),
    [41, 1 / scale],
    [42, 1 / scale],
    [43, 1 / scale],
    [50, 0],
  ])
  if (of.attributes.length === 0) return
  const onMark: Place = {
    ...place,
    at: ([x, y]) => place.at([x + mark.at[0], y + mark.at[1]]),
    space: { ...place.space, record: handle },
  }
  for (const it of of.attributes) {
    const body: Tags = [...textTags(onMark, it.letters), [100, 'AcDbAttribute'], ...tagOf(it)]
    add(onMark, 'ATTRIB', { ...penLayer(draft, it.layer, it.pen, scale), rank: on.rank }, body)
  }
  add(onMark, 'SEQEND', { layer: on.layer, rank: on.rank }, [])
}

const tagOf = ({ key, hidden }: Attribute): Tags => [
  [2, key.toUpperCase()],
  [70, hidden ? 1 : 0],
  [74, 0],
]
