import { type Block, membersAt, type Opening, sideLength_mm } from '../../detail'
import type { Side } from '../../kinds'
import { isSome, type Words, words } from '../../words'
import type { Compared } from '../finding'
import { placed, type Reading } from '../reading'

const blocksName = words('Support and distance blocks', 'Trag- und Distanzklötze')

/** A place that a block has to stand at, and how far off it the next one stands. */
export type Blocked = { readonly at: Words; readonly off_mm: number; readonly isMember: boolean }

/** How near a support stands to each load path: both lower corners, and every mullion. Missing where no block is stated. */
export const supports: Reading<readonly Blocked[]> = placed({
  id: 'opening.blocks',
  name: blocksName,
  compute: ({ opening }) => {
    const stands = standing(opening)
    if (!isSome(stands)) return undefined
    const length_mm = sideLength_mm(opening, 'sill')
    return [
      { at: leftCorner, off_mm: offEnd(stands, it => it.at_mm), isMember: false },
      { at: rightCorner, off_mm: offEnd(stands, it => length_mm - it.at_mm), isMember: false },
      ...membersAt(opening, 'sill').map(it => ({
        at: underMullion,
        // a block carries a mullion where it reaches under it
        off_mm: Math.min(
          ...stands.map(one =>
            Math.max(0, Math.abs(one.at_mm - it.at_mm.value) - (one.length_mm + it.face_mm.value) / 2),
          ),
        ),
        isMember: true,
      })),
    ]
  },
  beneath: notStated,
})

type Stand = { readonly at_mm: number; readonly length_mm: number }

/** What carries the frame: support blocks, and brackets below it. */
const standing = (opening: Opening): readonly Stand[] => [
  ...opening.blocks
    .filter(it => it.kind === 'support' && it.side === 'sill')
    .map(it => ({ at_mm: it.at_mm.value, length_mm: it.length_mm.value })),
  ...opening.fixings
    .filter(it => it.kind === 'bracket')
    .flatMap(it => (it.positions_mm?.sill ?? []).map(at_mm => ({ at_mm, length_mm: 0 }))),
]

const offEnd = (stands: readonly Stand[], of: (it: Stand) => number): number => Math.min(...stands.map(of))

/** How near distance blocks stand to both ends of both jambs. Missing where no block is stated. */
export const distances: Reading<readonly Blocked[]> = placed({
  id: 'opening.blocks',
  name: blocksName,
  compute: ({ opening }) => {
    if (!isSome(opening.blocks)) return undefined
    const length_mm = sideLength_mm(opening, 'left')
    const off = (side: Side, of: (it: Block) => number) =>
      Math.min(length_mm, ...opening.blocks.filter(it => it.kind === 'distance' && it.side === side).map(of))
    const low = (it: Block) => it.at_mm.value
    const high = (it: Block) => length_mm - it.at_mm.value
    return [
      { at: words('left jamb below', 'linke Leibung unten'), off_mm: off('left', low), isMember: false },
      { at: words('left jamb above', 'linke Leibung oben'), off_mm: off('left', high), isMember: false },
      { at: words('right jamb below', 'rechte Leibung unten'), off_mm: off('right', low), isMember: false },
      { at: words('right jamb above', 'rechte Leibung oben'), off_mm: off('right', high), isMember: false },
    ]
  },
  beneath: notStated,
})

function notStated({ opening }: { readonly opening: Opening }) {
  return isSome(opening.blocks) ? [] : [{ field: 'opening.blocks', part: opening.id, stated: undefined }]
}

const leftCorner = words('lower left corner', 'untere linke Ecke')
const rightCorner = words('lower right corner', 'untere rechte Ecke')
const underMullion = words('under a mullion', 'unter einem Pfosten')

/** Which places have a block near enough, and which have none. */
export const blockedWithin = (places: readonly Blocked[], corner_mm: number): Compared => {
  const has = (it: Blocked) => it.off_mm <= (it.isMember ? 0 : corner_mm)
  return {
    kind: 'presence',
    there: places.filter(has).map(it => it.at),
    missing: places.filter(it => !has(it)).map(it => it.at),
  }
}
