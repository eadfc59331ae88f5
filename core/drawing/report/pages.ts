import type { Point } from '../../geometry'
import type { Mark } from '../mark'

/** What stands on a page as one piece, from its upper left corner. Pieces that belong together are not parted. */
export type Piece = {
  readonly height_mm: number
  readonly draw: (at: Point) => readonly Mark[]
  /** how many of the pieces behind it must stand on the same page */
  readonly keeps?: number
  /** room above it, dropped at the head of a page */
  readonly above_mm?: number
}

/** The room of a page for pieces. */
export type PageRoom = { readonly x: number; readonly top: number; readonly low: number }

/** Pieces one below the other on as many pages as they need. A piece taller than a page stands on one of its own. */
export const paginate = (
  pieces: readonly Piece[],
  { x, top, low }: PageRoom,
): readonly (readonly Mark[])[] => {
  const pages: Mark[][] = [[]]
  let y = top
  pieces.forEach((piece, at) => {
    const above = y === top ? 0 : (piece.above_mm ?? 0)
    const together = pieces
      .slice(at, at + 1 + (piece.keeps ?? 0))
      .reduce((sum, it, index) => sum + it.height_mm + (index === 0 ? above : (it.above_mm ?? 0)), 0)
    if (y !== top && y - Math.min(together, top - low) < low) {
      pages.push([])
      y = top
    } else y -= above
    pages[pages.length - 1]?.push(...piece.draw([x, y]))
    y -= piece.height_mm
  })
  return pages
}
