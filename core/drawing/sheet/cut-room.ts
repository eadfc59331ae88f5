import type { Point } from '../../geometry'
import type { Column } from '../labels/columns'
import type { View, ViewMark } from '../mark'
import { placeView } from '../place-view'
import { callout } from '../style/spacing'
import { heights, textWidth_mm } from '../text/lettering'
import { margins, marginsWith, onPaper, type Reach } from './room'

/** What words for inside and outside take above a cut where they have no room beside it. */
const sideWord_mm = 10
/** Numbers without words stand this far apart, and this far off a break line. Ours. */
const pitch_mm = 6.4
const offEnd_mm = 3

/** How far numbers stand off the picture, and how much higher their column is than it must be. */
type Try = { readonly way_mm: number; readonly more_mm: number }

/** At small scales leaders need room for their slopes: tried in this order until none crosses another. Ours. */
export const tries: readonly Try[] = [
  { way_mm: 5.5, more_mm: 0 },
  { way_mm: 14, more_mm: 0 },
  { way_mm: 14, more_mm: 14 },
  { way_mm: 20, more_mm: 14 },
  { way_mm: 20, more_mm: 28 },
]

/** How large a cut is with the room of a try, where its view stands in that, and its column of numbers from the view. */
export type Room = {
  readonly size_mm: Point
  readonly viewAt: Point
  readonly column: Column
  /** how far chains reach to the left of the view */
  readonly chains_mm: number
}

export const noColumn: Column = { side: 'right', x: 0, low: 0, high: 0, pitch_mm }
export const noRoom: Room = { size_mm: [0, 0], viewAt: [0, 0], column: noColumn, chains_mm: 0 }

/** What a cut at a scale wants room for. */
type Wanting = Pick<View, 'turn_deg' | 'mirrored' | 'window' | 'scale'> & {
  readonly chains: { readonly through: number; readonly across: number }
  readonly reach: Reach
  readonly count: number
  readonly title_mm: number
}

/** The rooms of a cut with each of the tries. */
export const roomsOf = (of: Wanting): readonly Room[] => tries.map(it => roomOf(it, of))

/** A column starts at the end where no chains stand and grows past the other only where it must. */
const roomOf = ({ way_mm, more_mm }: Try, of: Wanting): Room => {
  const stand = { turn_deg: of.turn_deg, mirrored: of.mirrored }
  const usual = margins({ stand, chains: of.chains })
  const [width, height] = onPaper({ window: of.window, stand }, of.scale)
  const margin = marginsWith(usual, of.reach, [width, height])
  const level = of.turn_deg === 0
  const extra = Math.max(0, (of.count - 1) * pitch_mm + more_mm + 2 * offEnd_mm - height)
  const [up, down] = level || of.mirrored ? [extra, 0] : [0, extra]
  const above = Math.max(margin.top, up) + (level ? sideWord_mm : 0)
  const below = Math.max(margin.bottom, down)
  // chains through the wall stand at its cut end: numbers at the other
  const atLeft = level && of.mirrored
  const column: Column = {
    side: atLeft ? 'left' : 'right',
    x: atLeft ? -margin.left - way_mm : width + margin.right + way_mm,
    low: offEnd_mm - down,
    high: height - offEnd_mm + up,
    pitch_mm,
  }
  const beside = way_mm + callout.balloon_mm
  return {
    chains_mm: margin.left,
    size_mm: [margin.left + width + margin.right + beside, below + height + above + of.title_mm],
    viewAt: [margin.left + (atLeft ? beside : 0), below],
    column,
  }
}

/** Chains that are not laid out yet reach nowhere: a cut takes at least what it takes with these. */
export const noReach: Reach = [
  [0, 0],
  [0, 0],
]

/** How far chains reach, raised words included: lower left and upper right corner, from the corner of the view. */
export const reachOf = (sizes: readonly ViewMark[], on: Parameters<typeof placeView>[0]): Reach => {
  const { toPaper } = placeView(on)
  const places = sizes.flatMap((mark): readonly Point[] =>
    mark.kind === 'dimension'
      ? [mark.line, mark.text].map(toPaper)
      : mark.kind === 'path'
        ? mark.points.map(toPaper)
        : [],
  )
  const off = heights.size_mm + 0.8
  return [
    [Math.min(0, ...places.map(it => it[0] - off)), Math.min(0, ...places.map(it => it[1] - off))],
    [Math.max(0, ...places.map(it => it[0])), Math.max(0, ...places.map(it => it[1] + off))],
  ]
}

/** Between which heights chains stand beside a head or sill, from the corner of the view; 0 and 0 where there are none. */
export const besideOf = (
  sizes: readonly ViewMark[],
  on: Parameters<typeof placeView>[0],
): readonly [low: number, high: number] => {
  const { toPaper } = placeView(on)
  const heights_mm = sizes.flatMap(mark => {
    if (mark.kind !== 'dimension') return []
    const [from, to, words] = [toPaper(mark.from), toPaper(mark.to), toPaper(mark.text)]
    if (Math.abs(from[0] - to[0]) > Math.abs(from[1] - to[1])) return []
    const half = textWidth_mm(mark.words, heights.size_mm) / 2
    return [from[1], to[1], words[1] - half, words[1] + half]
  })
  return heights_mm.length === 0 ? [0, 0] : [Math.min(...heights_mm), Math.max(...heights_mm)]
}
