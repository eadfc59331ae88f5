import type { Point } from '../../geometry'
import type { Draft, Space } from './draft'
import type { Handle, Tags } from './tags'

/** A sheet of the file: its space, its size, and what its tab says. Model space has no size. */
export type Tab = { readonly space: Space; readonly name: string; readonly size_mm?: Point }

/** The objects behind the tables: dictionaries, and for model space and each sheet a layout that is tied to its record. */
export const objectsOf = (draft: Draft, tabs: readonly Tab[]): Tags => {
  const [root, groups, layouts] = [draft.handle(), draft.handle(), draft.handle()]
  const all = tabs.map(tab => ({ tab, handle: draft.handle() }))
  return [
    [0, 'SECTION'],
    [2, 'OBJECTS'],
    ...dictionary(root, '0', [
      ['ACAD_GROUP', groups],
      ['ACAD_LAYOUT', layouts],
    ]),
    ...dictionary(groups, root, []),
    ...dictionary(
      layouts,
      root,
      all.map(it => [it.tab.name, it.handle] as const),
    ),
    ...all.flatMap(({ tab, handle }, at) => layoutTags(tab, { handle, own: layouts, order: at })),
    [0, 'ENDSEC'],
  ]
}

const dictionary = (
  handle: Handle,
  own: Handle,
  entries: readonly (readonly [name: string, of: Handle])[],
): Tags => [
  [0, 'DICTIONARY'],
  [5, handle],
  [330, own],
  [100, 'AcDbDictionary'],
  [281, 1],
  ...entries.flatMap(([name, of]): Tags => [
    [3, name],
    [350, of],
  ]),
]

/** Plots in millimetres, one to one, on paper without margins of its own: the sheet has its frame. */
const layoutTags = (
  { space, name, size_mm = [0, 0] }: Tab,
  on: { readonly handle: Handle; readonly own: Handle; readonly order: number },
): Tags => [
  [0, 'LAYOUT'],
  [5, on.handle],
  [330, on.own],
  [100, 'AcDbPlotSettings'],
  [1, ''],
  [2, 'none_device'],
  [4, ''],
  [6, ''],
  ...[40, 41, 42, 43].map(code => [code, 0] as const),
  [44, size_mm[0]],
  [45, size_mm[1]],
  ...[46, 47, 48, 49, 140, 141].map(code => [code, 0] as const),
  [142, 1],
  [143, 1],
  [70, space.kind === 'model' ? 1024 | 128 : 128 | 32 | 16],
  [72, 1],
  [73, 0],
  [74, 5],
  [7, ''],
  [75, 16],
  [147, 1],
  [148, 0],
  [149, 0],
  [100, 'AcDbLayout'],
  [1, name],
  [70, 1],
  [71, on.order],
  [10, 0],
  [20, 0],
  [11, size_mm[0]],
  [21, size_mm[1]],
  ...three(12, 0, 0, 0),
  ...three(14, 0, 0, 0),
  ...three(15, size_mm[0], size_mm[1], 0),
  [146, 0],
  ...three(13, 0, 0, 0),
  ...three(16, 1, 0, 0),
  ...three(17, 0, 1, 0),
  [76, 0],
  [330, space.record],
]

const three = (code: number, x: number, y: number, z: number): Tags => [
  [code, x],
  [code + 10, y],
  [code + 20, z],
]
