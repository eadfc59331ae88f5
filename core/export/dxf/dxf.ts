import type { Drawing } from '../../drawing'
import type { Id, Point } from '../../geometry'
import { type Language, type Some, type Words, words } from '../../words'
import type { Format } from '../format'
import { utf8 } from '../utf-8'
import type { Box } from './bounds'
import { addSpace, type Draft, type Space } from './draft'
import { disc } from './figures'
import { codePageBytes, escapedForCodePage, type Version } from './lettering'
import { objectsOf, type Tab } from './objects'
import { tablesOf } from './tables'
import { type Handle, linesOf, point, type Tag, type Tags } from './tags'
import { drawSheet, sheetViewport } from './views'

/**
 * Drawing exchange format: model space in true millimetres, layers by function, own hatches, dimensions that measure,
 * and each sheet as a layout with its viewports.
 */
export const dxf: Format = {
  id: 'dxf',
  name: words('DXF 2007', 'DXF 2007'),
  extension: 'dxf',
  fonts: [],
  holds: 'sheets',
  write: ({ drawings }) => Promise.resolve(dxfOf(drawings, 'AC1021')),
}

/** The same in the older version, for programs that do not read the newer one: the palette's colours, Windows letters. */
export const dxf2000: Format = {
  ...dxf,
  id: 'dxf-2000',
  name: words('DXF 2000', 'DXF 2000'),
  write: ({ drawings }) => Promise.resolve(dxfOf(drawings, 'AC1015')),
}

/** The bytes of a DXF file. Lines end in CR LF; the same drawings give the same bytes. */
export const dxfOf = (drawings: Some<Drawing>, version: Version): Uint8Array => {
  const draft = freshDraft(drawings, version)
  const model = addSpace(draft, '*Model_Space', 'model')
  const tabs: Tab[] = [{ space: model, name: 'Model' }]
  let extent: Box | undefined
  drawings.forEach((drawing, at) => {
    const paper = addSpace(draft, at === 0 ? '*Paper_Space' : `*Paper_Space${at - 1}`, 'paper')
    tabs.push({ space: paper, name: `${sheetWord[drawing.language]} ${at + 1}`, size_mm: drawing.size_mm })
    sheetViewport({ draft, space: paper, scale: 1, at: it => it }, drawing.size_mm)
    extent = drawSheet({ ...draft, look: drawing }, drawing, {
      paper,
      model,
      ...(extent && { taken: extent }),
    })
  })
  const dot = dotBlock(draft)
  const body = [
    [0, 'SECTION'],
    [2, 'CLASSES'],
    [0, 'ENDSEC'],
    ...tablesOf(draft, dot),
    ...blocksOf(draft),
    ...entitiesOf(draft),
    ...objectsOf(draft, tabs),
    [0, 'EOF'],
  ] satisfies Tag[]
  const head = headerOf(version, draft.handle(), { extent, size_mm: drawings[0].size_mm })
  const encode = version === 'AC1015' ? escapedForCodePage : (it: string) => it
  const text = linesOf([...head, ...body], encode)
  return version === 'AC1015' ? codePageBytes(text) : utf8(text)
}

const sheetWord: Readonly<Record<Language, string>> = words('Sheet', 'Blatt') satisfies Words

const freshDraft = (drawings: Some<Drawing>, version: Version): Draft => {
  let last = 0
  return {
    version,
    look: drawings[0],
    materials: new Map<Id, Id>(drawings.flatMap(it => [...it.materials])),
    handle: () => (++last).toString(16).toUpperCase(),
    layers: new Map(),
    linetypes: new Map(),
    blocks: [],
    styles: new Map(),
  }
}

/** The dot at the end of a leader, 1 mm wide at size 1. */
const dotBlock = (draft: Draft): Handle => {
  const space = addSpace(draft, 'JW-DOT', 'block')
  disc({ draft, space, scale: 1, at: it => it }, [0, 0], 0.5, { layer: '0', rank: 0, own: {} })
  return space.record
}

const sorted = (space: Space): Tags =>
  space.entities.toSorted((a, b) => a.rank - b.rank).flatMap(it => it.tags)

/** Every space has a block; the entities of model space and of the first sheet stand in a section of their own. */
const blocksOf = (draft: Draft): Tags => [
  [0, 'SECTION'],
  [2, 'BLOCKS'],
  ...draft.blocks.flatMap((space): Tags => [
    ...blockHead(draft, space),
    ...(isInEntities(space) ? [] : sorted(space)),
    [0, 'ENDBLK'],
    [5, draft.handle()],
    [330, space.record],
    [100, 'AcDbEntity'],
    [8, '0'],
    [100, 'AcDbBlockEnd'],
  ]),
  [0, 'ENDSEC'],
]

const isInEntities = ({ name }: Space): boolean => name === '*Model_Space' || name === '*Paper_Space'

const blockHead = (draft: Draft, { record, name, kind, entities }: Space): Tags => [
  [0, 'BLOCK'],
  [5, draft.handle()],
  [330, record],
  [100, 'AcDbEntity'],
  ...(kind === 'paper' ? ([[67, 1]] as const) : []),
  [8, '0'],
  [100, 'AcDbBlockBegin'],
  [2, name],
  [70, (name.startsWith('*D') ? 1 : 0) | (entities.some(it => it.tags[0]?.[1] === 'ATTDEF') ? 2 : 0)],
  ...point(10, [0, 0]),
  [3, name],
  [1, ''],
]

const entitiesOf = (draft: Draft): Tags => [
  [0, 'SECTION'],
  [2, 'ENTITIES'],
  ...draft.blocks.filter(isInEntities).flatMap(sorted),
  [0, 'ENDSEC'],
]

/** The header is written last: its seed must be above every handle. */
const headerOf = (
  version: Version,
  seed: Handle,
  { extent, size_mm }: { readonly extent: Box | undefined; readonly size_mm: Point },
): Tags => {
  const [low, high] = extent ?? [[0, 0], size_mm]
  const variable = (name: string, ...tags: Tags): Tags => [[9, name], ...tags]
  return [
    [0, 'SECTION'],
    [2, 'HEADER'],
    ...variable('$ACADVER', [1, version]),
    ...variable('$DWGCODEPAGE', [3, 'ANSI_1252']),
    ...variable('$HANDSEED', [5, seed]),
    ...variable('$INSUNITS', [70, 4]),
    ...variable('$MEASUREMENT', [70, 1]),
    ...variable('$LUNITS', [70, 2]),
    ...variable('$LUPREC', [70, 1]),
    ...variable('$LTSCALE', [40, 1]),
    ...variable('$PSLTSCALE', [70, 1]),
    ...variable('$LWDISPLAY', [290, 1]),
    ...variable('$TILEMODE', [70, 1]),
    ...variable('$CLAYER', [8, '0']),
    ...variable('$EXTMIN', ...point(10, low)),
    ...variable('$EXTMAX', ...point(10, high)),
    ...variable('$PEXTMIN', ...point(10, [0, 0])),
    ...variable('$PEXTMAX', ...point(10, size_mm)),
    [0, 'ENDSEC'],
  ]
}
