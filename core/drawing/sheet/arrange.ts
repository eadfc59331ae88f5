import type { Point } from '../../geometry'
import type { View } from '../mark'
import type { Window } from '../section/clip'
import { sizing } from '../style/spacing'
import { a3, a4, type Paper, titleBlock_mm } from './paper'

/** A sheet, a scale, and where the parts of the sheet go. Paper mm. */
export type Arrangement = {
  readonly paper: Paper
  readonly scale: number
  /** lower left corner of the view's window */
  readonly viewAt: Point
  readonly viewSize: Point
  /** the column of circles, and the width of the words beside them */
  readonly column: {
    readonly side: 'left' | 'right'
    readonly x: number
    readonly low: number
    readonly high: number
    readonly width_mm: number
  }
  /** upper left corner and width of what stands below the view */
  readonly below: { readonly at: Point; readonly width_mm: number }
  readonly headingAt: Point
}

/** What must find room. */
export type Wanted = {
  readonly window: Window
  readonly stand: Pick<View, 'turn_deg' | 'mirrored'>
  /** chains through the wall and across the joint */
  readonly chains: { readonly through: number; readonly across: number }
  /** height of legend and notes at a width */
  readonly belowHeight_mm: (width_mm: number) => number
}

/** Preferred scales (ISO 5455, reported), with the sheet: a larger sheet before a scale that hides the joint. Ours. */
const attempts: readonly { readonly paper: Paper; readonly scale: number }[] = [
  { paper: a4, scale: 1 },
  { paper: a4, scale: 0.5 },
  { paper: a3, scale: 0.5 },
  { paper: a4, scale: 0.2 },
  { paper: a3, scale: 0.2 },
  { paper: a4, scale: 0.1 },
]

/** The first sheet and scale that everything fits on; a wall too large for all of them gets the last. */
export const arrange = (wanted: Wanted): Arrangement => {
  const all = attempts.map(it => arrangedOn(it.paper, it.scale, wanted))
  const fitting = all.find(it => it.fits) ?? all[all.length - 1]
  if (fitting === undefined) throw new Error('no sheet to choose from')
  return fitting.arrangement
}

const pad_mm = 3
const headingHeight_mm = 17
/** Least and most width of the words of a label, and the way from the picture to the circles. Ours. */
const labels_mm = { least: 31, most: 44, way: 7, circle: 6.3 }

/** What chains take beside a view. */
const chainsTake_mm = (count: number): number =>
  count === 0 ? 2 : sizing.first_mm + (count - 1) * sizing.pitch_mm + 5

const arrangedOn = (
  paper: Paper,
  scale: number,
  wanted: Wanted,
): { readonly fits: boolean; readonly arrangement: Arrangement } => {
  const [[x0, y0], [x1, y1]] = paper.frame
  const beside = paper.name === 'A3' ? titleBlock_mm[0] : 0
  const belowWidth = x1 - x0 - beside - 2 * pad_mm
  const below = wanted.belowHeight_mm(belowWidth) + 2 * pad_mm
  const foot = y0 + (beside > 0 ? Math.max(titleBlock_mm[1], below) : titleBlock_mm[1] + below)
  const { left, right, top, bottom } = margins(wanted)
  const [width, height] = onPaper(wanted, scale)
  const labelsAt = wanted.stand.mirrored && wanted.stand.turn_deg === 0 ? 'left' : 'right'
  const across = x1 - x0 - 2 * pad_mm
  const spare = across - left - right - width - labels_mm.way - labels_mm.circle - labels_mm.least
  const words = Math.min(labels_mm.most, labels_mm.least + Math.max(0, spare))
  const free = Math.max(0, spare - (words - labels_mm.least)) / 2
  const tall = y1 - foot - headingHeight_mm - top - bottom - height
  const viewX = labelsAt === 'right' ? x0 + pad_mm + free + left : x1 - pad_mm - free - right - width
  const viewY = foot + bottom + Math.max(0, tall) / 2
  const columnX = labelsAt === 'right' ? viewX + width + right + labels_mm.way : viewX - left - labels_mm.way
  return {
    fits: spare >= 0 && tall >= 0,
    arrangement: {
      paper,
      scale,
      viewAt: [viewX, viewY],
      viewSize: [width, height],
      column: {
        side: labelsAt,
        x: columnX,
        low: Math.max(foot + 5, viewY - bottom + 4),
        high: Math.min(y1 - headingHeight_mm - 3, viewY + height + top - 2),
        width_mm: words,
      },
      below: {
        at: [x0 + pad_mm, beside > 0 ? foot - pad_mm : y0 + titleBlock_mm[1] + below - pad_mm],
        width_mm: belowWidth,
      },
      headingAt: [x0 + pad_mm + 1, y1 - 10],
    },
  }
}

const onPaper = ({ window: [low, high], stand }: Wanted, scale: number): Point => {
  const [across, through] = [(high[0] - low[0]) * scale, (high[1] - low[1]) * scale]
  return stand.turn_deg === 0 || stand.turn_deg === 180 ? [across, through] : [through, across]
}

/** Room round a view: chains through the wall stand at its cut end, chains across the joint outside. */
const margins = ({ stand, chains }: Wanted) => {
  const [through, across] = [chainsTake_mm(chains.through), chainsTake_mm(chains.across) + 3]
  const word_mm = 6
  if (stand.turn_deg === 270)
    return stand.mirrored
      ? { left: across, right: 2, top: word_mm, bottom: through }
      : { left: across, right: 2, top: through, bottom: word_mm }
  return stand.mirrored
    ? { left: 2, right: through, top: word_mm, bottom: across }
    : { left: through, right: 2, top: word_mm, bottom: across }
}
