import { colourIndex, trueColour } from './colour-index'
import { application, type Draft, type LayerRow, type Linetype, type SizeStyle } from './draft'
import { styles } from './figures'
import type { Handle, Tags } from './tags'

/** All tables, in the order that readers expect. Every block and sheet has a record. */
export const tablesOf = (draft: Draft, dot: Handle): Tags => {
  const wordsHandle = draft.handle()
  return [
    [0, 'SECTION'],
    [2, 'TABLES'],
    ...table(draft, 'VPORT', row => [row('*Active', activeView)]),
    ...table(draft, 'LTYPE', row =>
      [
        ...['ByBlock', 'ByLayer', 'Continuous'].map(name => ({ name, dashes_mm: [] })),
        ...draft.linetypes.values(),
      ].map(it => row(it.name, linetypeTags(it))),
    ),
    ...table(draft, 'LAYER', row =>
      [plainLayer(draft, '0', true), plainLayer(draft, 'Defpoints', false), ...draft.layers.values()].map(
        it => row(it.name, layerTags(draft, it), it.handle),
      ),
    ),
    ...table(draft, 'STYLE', row => [
      row('Standard', wordStyle('arial.ttf', 1)),
      row(styles.regular, wordStyle('arial.ttf'), wordsHandle),
      row(styles.bold, wordStyle('arialbd.ttf')),
    ]),
    ...table(draft, 'VIEW', () => []),
    ...table(draft, 'UCS', () => []),
    ...table(draft, 'APPID', row => ['ACAD', application].map(it => row(it, []))),
    ...table(draft, 'DIMSTYLE', row =>
      [{ name: 'Standard', scale: 1, end: 'dot' as const }, ...draft.styles.values()].map(it =>
        row(it.name, sizeStyle(draft, it, wordsHandle, dot)),
      ),
    ),
    ...table(draft, 'BLOCK_RECORD', row => draft.blocks.map(it => row(it.name, [], it.record))),
    [0, 'ENDSEC'],
  ]
}

const table = (draft: Draft, kind: Kind, of: (row: Row) => readonly Tags[]): Tags => {
  const own = draft.handle()
  const all = of(rowOf(draft, kind, own))
  return [
    [0, 'TABLE'],
    [2, kind],
    [5, own],
    [330, '0'],
    [100, 'AcDbSymbolTable'],
    [70, all.length],
    ...(kind === 'DIMSTYLE' ? ([[100, 'AcDbDimStyleTable']] as const) : []),
    ...all.flat(),
    [0, 'ENDTAB'],
  ]
}

type Kind = keyof typeof subclasses

const subclasses = {
  VPORT: 'AcDbViewportTableRecord',
  LTYPE: 'AcDbLinetypeTableRecord',
  LAYER: 'AcDbLayerTableRecord',
  STYLE: 'AcDbTextStyleTableRecord',
  VIEW: 'AcDbViewTableRecord',
  UCS: 'AcDbUCSTableRecord',
  APPID: 'AcDbRegAppTableRecord',
  DIMSTYLE: 'AcDbDimStyleTableRecord',
  BLOCK_RECORD: 'AcDbBlockTableRecord',
} as const

/** A row of a table; rows of one table share their table's handle and kind. */
type Row = (name: string, tags: Tags, handle?: Handle) => Tags

const rowOf =
  (draft: Draft, kind: Kind, own: Handle): Row =>
  (name, tags, handle = draft.handle()) => [
    [0, kind],
    // Sizes have their handle at 105: at 5 they hold something else.
    [kind === 'DIMSTYLE' ? 105 : 5, handle],
    [330, own],
    [100, 'AcDbSymbolTableRecord'],
    [100, subclasses[kind]],
    [2, name],
    ...(kind === 'BLOCK_RECORD' ? [] : ([[70, 0]] as const)),
    ...tags,
  ]

const linetypeTags = ({ dashes_mm }: Linetype): Tags => [
  [3, ''],
  [72, 65],
  [73, dashes_mm.length],
  [40, dashes_mm.reduce((sum, it) => sum + Math.abs(it), 0)],
  ...dashes_mm.flatMap((it): Tags => [
    [49, it],
    [74, 0],
  ]),
]

const plainLayer = (draft: Draft, name: string, plots: boolean): LayerRow => ({
  handle: draft.handle(),
  name,
  colour: '#000000',
  weight: 25,
  linetype: 'Continuous',
  run_mm: 0,
  plots,
  isOff: false,
})

/** A colour below zero is a layer that is off. */
const layerTags = (draft: Draft, { colour, weight, linetype, plots, isOff }: LayerRow): Tags => {
  const index = colourIndex(colour)
  return [
    [62, isOff ? -index : index],
    ...(draft.version === 'AC1021' && index !== 7 ? ([[420, trueColour(colour)]] as const) : []),
    [6, linetype],
    ...(plots ? [] : ([[290, 0]] as const)),
    [370, weight],
  ]
}

/** Letters that nearly every machine has; their width brings them to that of the sheet. */
const wordStyle = (file: string, width = 0.85): Tags => [
  [40, 0],
  [41, width],
  [50, 0],
  [71, 0],
  [42, 2.5],
  [3, file],
  [4, ''],
]

/** Sizes as on the sheet: oblique strokes, words above the line, a comma, no zeros that say nothing. */
const sizeStyle = (draft: Draft, style: SizeStyle, words: Handle, dot: Handle): Tags => [
  [40, 1 / style.scale],
  [41, style.end === 'arrow' ? 2.5 : 1],
  [42, 1.5],
  [43, 7],
  [44, 1.5],
  [46, 1.5],
  [73, 0],
  [74, 0],
  [77, 1],
  [78, 8],
  [140, 2.5],
  [142, strokeShare_mm],
  [144, style.times ?? 1],
  [147, 1.15],
  [172, 0],
  [176, 256],
  [177, 256],
  [178, 256],
  [271, 1],
  [277, 2],
  [278, draft.look.language === 'de' ? 44 : 46],
  [279, 2],
  [340, words],
  ...(style.end === 'dot' ? ([[341, dot]] as const) : []),
  [371, -1],
  [372, -1],
]

/** A stroke of 2.8 mm at 45° reaches this far along and across its line. */
const strokeShare_mm = 2.8 / 2 / Math.SQRT2

const activeView: Tags = [
  ...twoOf(10, 0, 0),
  ...twoOf(11, 1, 1),
  ...twoOf(12, 0, 0),
  ...twoOf(13, 0, 0),
  ...twoOf(14, 10, 10),
  ...twoOf(15, 10, 10),
  [16, 0],
  [26, 0],
  [36, 1],
  [17, 0],
  [27, 0],
  [37, 0],
  [40, 800],
  [41, 1.5],
  [42, 50],
  [43, 0],
  [44, 0],
  [50, 0],
  [51, 0],
  [71, 0],
  [72, 1000],
  [73, 1],
  [74, 3],
  [75, 0],
  [76, 0],
  [77, 0],
  [78, 0],
]

function twoOf(code: number, x: number, y: number): Tags {
  return [
    [code, x],
    [code + 10, y],
  ]
}
