import type { Point } from '../../geometry'
import type { View } from '../mark'
import { placeView } from '../place-view'
import type { Window } from '../section/clip'
import { sizing } from '../style/spacing'
import { a3, a4, type Paper, titleBlock_mm } from './paper'

/** A column of circles, and the width of the words beside them. Paper mm. */
export type LabelColumn = {
  readonly side: 'left' | 'right'
  readonly x: number
  readonly low: number
  readonly high: number
  readonly width_mm: number
}

/** An upper left corner and a width. */
export type Place = { readonly at: Point; readonly width_mm: number }

/** A sheet, a scale, and where the parts of the sheet go. Paper mm. */
export type Arrangement = {
  readonly paper: Paper
  readonly scale: number
  /** lower left corner of the view's window */
  readonly viewAt: Point
  readonly columns: readonly LabelColumn[]
  readonly legend: Place
  readonly notes: Place & { readonly beside: boolean }
  readonly headingAt: Point
}

/** What must find room. */
export type Wanted = {
  readonly window: Window
  readonly stand: Pick<View, 'turn_deg' | 'mirrored'>
  /** chains through the wall and across the joint */
  readonly chains: { readonly through: number; readonly across: number }
  readonly legendHeight_mm: (width_mm: number) => number
  readonly notesHeight_mm: (width_mm: number, beside: boolean) => number
  /** how far the wall reaches across before the frame: beyond it is room outside (model mm) */
  readonly coverTo_mm: number
  /** how many labels there are, and how far apart their circles must be at a width of the words */
  readonly labels: number
  readonly labelPitch_mm: (width_mm: number) => number
}

type Attempt = { readonly paper: Paper; readonly scale: number; readonly notes: 'below' | 'column' }

/** Preferred scales (ISO 5455, reported), with the sheet: a larger sheet before a scale that hides the joint. Ours. */
const attempts: readonly Attempt[] = [
  { paper: a4, scale: 1, notes: 'below' },
  { paper: a4, scale: 0.5, notes: 'below' },
  { paper: a4, scale: 0.5, notes: 'column' },
  { paper: a3, scale: 0.5, notes: 'below' },
  { paper: a4, scale: 0.2, notes: 'below' },
  { paper: a3, scale: 0.2, notes: 'below' },
  { paper: a4, scale: 0.1, notes: 'below' },
]

/** Further sheets that are tried only where their scale is asked for. */
const onlyAsked: readonly Attempt[] = [
  { paper: a3, scale: 1, notes: 'below' },
  { paper: a3, scale: 1, notes: 'column' },
  { paper: a3, scale: 0.1, notes: 'below' },
]

/**
 * The first sheet and scale that everything fits on, among those of a scale where one is asked for; a wall too large
 * for all of them gets the last.
 */
export const arrange = (wanted: Wanted, scale?: number): Arrangement => {
  const tried = scale === undefined ? attempts : [...attempts, ...onlyAsked].filter(it => it.scale === scale)
  const all = (tried.length === 0 ? attempts : tried).map(it => arrangedOn(it, wanted))
  const fitting = all.find(it => it.fits) ?? all[all.length - 1]
  if (fitting === undefined) throw new Error('no sheet to choose from')
  return fitting.arrangement
}

/** The scales at which everything fits on some sheet, the largest first. */
export const fittingScales = (wanted: Wanted): readonly number[] => {
  const fitting = [...attempts, ...onlyAsked].filter(it => arrangedOn(it, wanted).fits)
  return [...new Set(fitting.map(it => it.scale))].toSorted((a, b) => b - a)
}

const pad_mm = 3
/** Between the frame and the outermost chain or label. */
const side_mm = 2
const heading_mm = 18
/** Labels may stand as high as this: at the right below the scale bar, at the left below the heading. Ours. */
const labelsBelowTop_mm = { right: 15.5, left: 19.5 }
/** Least and most width of the words of a label, the way from the picture to the circles, a circle with its gap. Ours. */
const labels_mm = { least: 31, most: 46, way: 5.5, circle: 6.3 }
/** Height of the words inside and outside, off the drawing. */
const sideWord_mm = 6

/** What chains take beside a view. */
const chainsTake_mm = (count: number): number =>
  count === 0 ? 2 : sizing.first_mm + (count - 1) * sizing.pitch_mm + 4.2

const arrangedOn = (
  { paper, scale, notes }: Attempt,
  wanted: Wanted,
): { readonly fits: boolean; readonly arrangement: Arrangement } => {
  const [[x0, y0], [x1, y1]] = paper.frame
  const isUpright = wanted.stand.turn_deg === 270
  const margin = margins(wanted)
  const [width, height] = onPaper(wanted, scale)
  const labelCount = isUpright && paper.name === 'A3' ? 2 : 1
  const beside_mm = labels_mm.way + labels_mm.circle
  const across = x1 - x0 - 2 * side_mm - margin.left - margin.right - width - labelCount * beside_mm
  const words = Math.min(labels_mm.most, across / labelCount)
  const free = Math.max(0, across - labelCount * words) / 2
  const labelsLeft = !isUpright && wanted.stand.mirrored
  const leftLabels = labelsLeft || labelCount === 2 ? words + beside_mm : 0
  const viewX = x0 + side_mm + free + leftLabels + margin.left

  const rightX = viewX + width + margin.right + labels_mm.way
  const leftX = viewX - margin.left - labels_mm.way
  const free_mm = (wanted.window[1][0] - wanted.coverTo_mm) * scale - 2 * pad_mm
  const noteColumn =
    notes === 'column' && !isUpright
      ? labelsLeft
        ? { x: x0 + pad_mm, width_mm: viewX + free_mm - x0 }
        : { x: viewX + width - free_mm, width_mm: x1 - pad_mm - (viewX + width - free_mm) }
      : undefined
  const belowWidth = x1 - x0 - (paper.name === 'A3' ? titleBlock_mm[0] : 0) - 2 * pad_mm
  const legend_mm = wanted.legendHeight_mm(belowWidth)
  const notes_mm = wanted.notesHeight_mm(noteColumn?.width_mm ?? belowWidth, noteColumn !== undefined)
  const below = legend_mm + (noteColumn ? 0 : notes_mm + gap_mm) + 2 * pad_mm
  const floor = paper.name === 'A3' ? y0 : y0 + titleBlock_mm[1]
  const foot = paper.name === 'A3' ? y0 + Math.max(below, titleBlock_mm[1]) : floor + below
  const tall = y1 - foot - heading_mm - margin.top - margin.bottom - height
  const viewY = foot + margin.bottom + Math.max(0, tall) * lift
  const top = y1 - labelsBelowTop_mm[labelsLeft ? 'left' : 'right']
  const low = noteColumn ? viewY + notes_mm + 6 : foot + pad_mm + 2
  const pitch_mm = wanted.labelPitch_mm(words)
  const ranges = isUpright
    ? uprightRanges(wanted, scale, [viewX, viewY], height)
    : besideRange(Math.max(low, viewY), Math.min(top, viewY + height), top, (wanted.labels - 1) * pitch_mm)
  const right: LabelColumn = { side: 'right', x: rightX, width_mm: words, ...ranges.right }
  const left: LabelColumn = { side: 'left', x: leftX, width_mm: words, ...ranges.left }
  const columns = labelsLeft ? [left] : labelCount === 2 ? [right, left] : [right]
  const room = columns.reduce((sum, it) => sum + Math.floor((it.high - it.low) / pitch_mm + 1e-6) + 1, 0)
  return {
    fits: words >= labels_mm.least && tall >= 0 && wanted.labels <= room,
    arrangement: {
      paper,
      scale,
      viewAt: [viewX, viewY],
      columns,
      legend: { at: [x0 + pad_mm, foot - pad_mm], width_mm: belowWidth },
      notes: noteColumn
        ? { at: [noteColumn.x, viewY + notes_mm + 1], width_mm: noteColumn.width_mm, beside: true }
        : { at: [x0 + pad_mm, foot - pad_mm - legend_mm - gap_mm], width_mm: belowWidth, beside: false },
      headingAt: [x0 + pad_mm + 1, y1 - 8],
    },
  }
}

/** A view stands a little below the middle of its room, clear of the heading. Ours. */
const lift = 0.4

/** Between legend and notes. */
const gap_mm = 4.4

const onPaper = ({ window: [low, high], stand }: Wanted, scale: number): Point => {
  const [across, through] = [(high[0] - low[0]) * scale, (high[1] - low[1]) * scale]
  return stand.turn_deg === 0 || stand.turn_deg === 180 ? [across, through] : [through, across]
}

/** Room round a view: chains through the wall stand at its cut end, chains across the joint outside. */
const margins = ({ stand, chains }: Wanted) => {
  const [through, across] = [chainsTake_mm(chains.through), chainsTake_mm(chains.across) + 1]
  if (stand.turn_deg === 270)
    return stand.mirrored
      ? { left: across, right: 2, top: sideWord_mm, bottom: through }
      : { left: across, right: 2, top: through, bottom: sideWord_mm }
  return stand.mirrored
    ? { left: 1, right: through, top: 0, bottom: across }
    : { left: through, right: 1, top: 0, bottom: across }
}

/** A column as high as the view, higher where its labels need it. */
const besideRange = (low: number, high: number, top: number, labels_mm: number) => {
  const range = { low, high: Math.min(top, Math.max(high, low + labels_mm)) }
  return { right: range, left: range }
}

/**
 * Where columns may reach beside a section with outside at its left: at the right beside all of it, at the left
 * beside the wall alone, clear of the chains across the joint.
 */
const uprightRanges = ({ window, stand }: Wanted, scale: number, at: Point, height: number) => {
  const reveal = placeView({ ...stand, window, at, scale }).toPaper([0, 0])[1]
  const [low, high] = [at[1] + offBreak_mm, at[1] + height - offBreak_mm]
  return {
    right: { low, high },
    left: stand.mirrored ? { low, high: reveal - offChain_mm } : { low: reveal + offChain_mm, high },
  }
}

/** Leaders keep off the break lines at both ends. Ours. */
const offBreak_mm = 4

/** The words of a narrow joint stand beyond the end of its chain. Ours. */
const offChain_mm = 14
