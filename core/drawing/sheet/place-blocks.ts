import type { Point } from '../../geometry'
import type { CutBlock } from './cut-block'
import { keySize_mm } from './key-elevation'

/** Where cuts may stand, and above which height they may also stand over the title block. */
export type Region = {
  readonly left: number
  readonly right: number
  readonly low: number
  readonly top: number
  /** left edge and top of the title block */
  readonly block: Point
}

/** Blocks where they stand, by their lower left corners; whether everything fits. */
export type PlacedBlocks = {
  readonly fits: boolean
  readonly cuts: readonly { readonly block: CutBlock; readonly at: Point }[]
  readonly keyAt: Point | undefined
}

/** Between two cuts side by side, and one above the other; and between the last and the edge of the region. Ours. */
const apart_mm: Point = [7, 2]
const edge_mm = 3
/** Cuts side by side stand no further apart than this. Ours. */
const farthest_mm = 18

const fromTop = 0.35

type Item = { readonly block: CutBlock | undefined; readonly size_mm: Point }

/** Blocks in rows from the upper left corner, with the key elevation behind them where it is wanted there. */
export const placeBlocks = (blocks: readonly CutBlock[], region: Region, withKey: boolean): PlacedBlocks => {
  const key: readonly Item[] = withKey ? [{ block: undefined, size_mm: keySize_mm }] : []
  const room = region.right - region.left - edge_mm
  const rows = rowsOf([...blocks.map((block): Item => ({ block, size_mm: block.size_mm })), ...key], room)
  const heights_mm = rows.map(row => Math.max(...row.map(it => it.size_mm[1])))
  const tall = heights_mm.reduce((sum, it) => sum + it, 0) + apart_mm[1] * (rows.length - 1)
  const spare = region.top - region.low - tall
  const down = apart_mm[1] + Math.max(0, spare) / rows.length
  // one cut alone hangs a little above the middle of its room
  let top = region.top - (blocks.length === 1 && rows.length === 1 ? Math.max(0, spare) * fromTop : 0)
  const placed = rows.flatMap((row, index) => {
    const gap = Math.min(farthest_mm, Math.max(apart_mm[0], (room - widthOf(row)) / row.length))
    // a single cut stands in the middle of its row, several begin at the left
    let x =
      region.left + (blocks.length === 1 ? Math.max(0, room - widthOf(row) - gap * (row.length - 1)) / 2 : 0)
    const own = row.map(it => {
      const at: Point = [x, top - it.size_mm[1]]
      x += it.size_mm[0] + gap
      return { ...it, at }
    })
    top -= (heights_mm[index] ?? 0) + down
    return own
  })
  const offBlock = placed.every(
    ({ at: [x, y], size_mm: [width] }) => region.block[1] <= y || x + width <= region.block[0] - edge_mm,
  )
  return {
    fits:
      spare >= 0 &&
      offBlock &&
      placed.every(({ at: [x], size_mm: [width] }) => x + width <= region.right - edge_mm + 0.01),
    cuts: placed.flatMap(({ block, at }) => (block ? [{ block, at }] : [])),
    keyAt: placed.find(it => it.block === undefined)?.at,
  }
}

/** Whether blocks of these sizes could stand in rows in a region, however they are parted: no is certain, yes is not. */
export const couldFit = (sizes_mm: readonly Point[], { left, right, low, top }: Region): boolean =>
  leastTall_mm(sizes_mm, right - left - edge_mm) <= top - low

const leastTall_mm = (sizes_mm: readonly Point[], room: number): number => {
  let [wide, tall, least] = [0, 0, Infinity]
  for (const [at, [width, height]] of sizes_mm.entries()) {
    wide += width + (at === 0 ? 0 : apart_mm[0])
    tall = Math.max(tall, height)
    if (wide > room) break
    const rest = sizes_mm.slice(at + 1)
    least = Math.min(least, tall + (rest.length === 0 ? 0 : apart_mm[1] + leastTall_mm(rest, room)))
  }
  return least
}

const widthOf = (row: readonly Item[]): number => row.reduce((sum, it) => sum + it.size_mm[0], 0)

const rowsOf = (items: readonly Item[], room: number): readonly (readonly Item[])[] =>
  items.reduce<readonly (readonly Item[])[]>((rows, it) => {
    const last = rows.at(-1)
    return last && widthOf([...last, it]) + apart_mm[0] * last.length <= room
      ? [...rows.slice(0, -1), [...last, it]]
      : [...rows, [it]]
  }, [])
