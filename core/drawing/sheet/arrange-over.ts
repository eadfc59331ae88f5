import type { Point } from '../../geometry'
import {
  acrossOf,
  type Arrangement,
  belowOf,
  heading_mm,
  type LabelColumn,
  marginsAt,
  onPaper,
  type Wanted,
} from './room'
import { pad_mm } from './paper'

/** Between the frame and what stands outermost; from the top of the frame to the highest circle, below the heading. Ours. */
const side_mm = 2
const belowTop_mm = 20.5
/** Notes stand on the line over the legend, and this far below the lowest label. Ours. */
const onFoot_mm = 2
const offLabels_mm = 7
/** A view stands this far below the heading: the word for inside has its place there. Ours. */
const belowHeading_mm = 7
/** Notes in a narrower column would break too often. Ours. */
const leastNotes_mm = 48

/**
 * A jamb in the upper corner of its sheet with its labels beside it and its notes under them, so that the other corner
 * below it stays free; nothing where that has no room.
 */
export const arrangedOver = (on: Arrangement, all: Wanted): Arrangement | undefined => {
  const wanted = on.levelX === undefined ? { ...all, level_mm: 0 } : all
  const { paper, scale } = on
  const attempt = { paper, scale, notes: 'column' } as const
  const across = acrossOf(attempt, wanted)
  const margin = marginsAt(wanted, scale)
  const [[x0], [x1, y1]] = paper.frame
  const [, height] = onPaper(wanted, scale)
  // all that is left of the width goes to the side of the notes
  const atLeft = across.labels === 'left'
  const least = x0 + side_mm + wanted.level_mm + margin.left
  const most = x1 - side_mm - margin.right - across.viewWidth
  const shift = (atLeft ? most : least) - across.viewX
  const circles = (atLeft ? across.leftX : across.rightX) + shift
  const notes = atLeft
    ? { x: x0 + pad_mm, width_mm: circles - x0 - pad_mm }
    : { x: circles, width_mm: x1 - pad_mm - circles }
  const below = belowOf(attempt, wanted, notes)
  const labels = (wanted.labels - 1) * wanted.labelPitch_mm(across.words)
  // the column grows up past the view, clear of the chains below it
  const viewY = Math.min(y1 - heading_mm - belowHeading_mm - margin.top - height, y1 - belowTop_mm - labels)
  const viewAt: Point = [across.viewX + shift, viewY]
  const [low, high] = [viewY, Math.max(viewY + Math.min(height, y1 - belowTop_mm - viewY), viewY + labels)]
  const notesTop = below.foot + below.notes_mm + onFoot_mm
  const fits =
    viewAt[1] - margin.bottom > below.foot && low - offLabels_mm > notesTop && notes.width_mm >= leastNotes_mm
  if (!fits) return undefined
  const column: LabelColumn = {
    side: atLeft ? 'left' : 'right',
    x: circles,
    width_mm: across.words,
    low,
    high,
  }
  return {
    paper,
    scale,
    viewAt,
    columns: [column],
    ...(wanted.level_mm > 0 && { levelX: viewAt[0] - margin.left }),
    legend: { at: [below.x, below.top], width_mm: below.width_mm },
    notes: { at: [notes.x, notesTop], width_mm: notes.width_mm, beside: true },
    headingAt: on.headingAt,
  }
}

/**
 * A head as far up as its sheet reaches, a sill as far down, with its labels: what is free is in one piece then. Nothing
 * where that moves it by less than it is worth.
 */
export const arrangedAtEnd = (on: Arrangement, all: Wanted): Arrangement | undefined => {
  const wanted = on.levelX === undefined ? { ...all, level_mm: 0 } : all
  const margin = marginsAt(wanted, on.scale)
  const [, height] = onPaper(wanted, on.scale)
  const [x, y] = on.viewAt
  const end = wanted.stand.mirrored
    ? on.legend.at[1] + pad_mm + side_mm + margin.bottom
    : on.paper.frame[1][1] - heading_mm - margin.top - height
  const moved = end - y
  if (Math.abs(moved) < leastMove_mm) return undefined
  return {
    ...on,
    viewAt: [x, end],
    columns: on.columns.map(it => ({ ...it, low: it.low + moved, high: it.high + moved })),
  }
}

const leastMove_mm = 3
