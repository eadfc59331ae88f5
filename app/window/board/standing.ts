import type { InkGroup } from '../../../core/drawing'
import type { Point } from '../../../core/geometry'
import { type Box, contains, grown, within } from './box'

/** A group of ink, and how far its part has moved since it was inked, in paper mm. */
export type Piece = { readonly group: InkGroup; readonly shift: Point }

/** Pieces that follow each other when the paper is painted; where they stand still, the picture that takes their place. */
export type Run<Picture> = { readonly pieces: readonly Piece[]; readonly picture?: Picture }

/**
 * What stands still while something moves over it and beside it. Pieces that are as they were in the frame before, and in
 * the one before that, are painted into a picture of their own, which is laid down from then on in one go: a frame of a
 * drag costs what moves, however full the board is.
 */
export type Standing<Picture> = {
  /** the part of the canvas that pictures are made of: it holds the box, and stays the same as long as it does */
  readonly areaRound: (box: Box, whole: Box) => Box
  /** the pieces of that area as runs, in their order */
  readonly runsOf: (
    pieces: readonly Piece[],
    pictureOf: (pieces: readonly Piece[]) => Picture,
  ) => readonly Run<Picture>[]
  /** nothing is where it was */
  readonly forget: () => void
}

/** How far an area goes beyond the box that it was made for, in pixels of the canvas: what moves comes round there soon. *Ours*. */
const beyond_px = 64
/** Fewer pieces are painted as quickly as a picture of them. *Ours*. */
const least = 32

export const newStanding = <Picture>(): Standing<Picture> => {
  let area: Box | undefined
  let last: ReadonlyMap<InkGroup, Point> = new Map()
  let runs: readonly Run<Picture>[] = []
  const forget = (): void => {
    area = undefined
    last = new Map()
    runs = []
  }
  return {
    areaRound: (box, whole) => {
      if (area && contains(area, box)) return area
      forget()
      area = within(grown(box, beyond_px), whole) ?? box
      return area
    },
    runsOf: (pieces, pictureOf) => {
      const now = partedWhere(pieces, ({ group, shift }) => last.get(group) === shift)
      runs = now.map(run => {
        const known = run.length < least ? undefined : runs.find(it => isSameRun(it.pieces, run))
        return known ? { pieces: run, picture: known.picture ?? pictureOf(run) } : { pieces: run }
      })
      last = new Map(pieces.map(it => [it.group, it.shift]))
      return runs
    },
    forget,
  }
}

/** Parts a list wherever what holds of one does not hold of the next. */
const partedWhere = (
  pieces: readonly Piece[],
  holds: (it: Piece) => boolean,
): readonly (readonly Piece[])[] => {
  const runs: Piece[][] = []
  let before: boolean | undefined
  for (const piece of pieces) {
    const now = holds(piece)
    if (now === before) runs.at(-1)?.push(piece)
    else runs.push([piece])
    before = now
  }
  return runs
}

const isSameRun = (a: readonly Piece[], b: readonly Piece[]): boolean =>
  a.length === b.length && a.every(({ group, shift }, at) => group === b[at]?.group && shift === b[at].shift)
