import type { Point } from '../../geometry'
import type { View } from '../mark'
import { placeView } from '../place-view'
import type { Window } from '../section/clip'
import { sizing } from '../style/spacing'
import { type Paper, titleBlock_mm } from './paper'

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
  /** where the line of a level ends; absent where none has room */
  readonly levelX?: number
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
  readonly legendHeight_mm: (width_mm: number, scale: number) => number
  readonly notesHeight_mm: (width_mm: number, beside: boolean) => number
  /** how far the wall reaches across before the frame: beyond it is room outside (model mm) */
  readonly coverTo_mm: number
  /** how many labels there are, and how far apart their circles must be at a width of the words */
  readonly labels: number
  readonly labelPitch_mm: (width_mm: number) => number
  /** how wide the longest of their words is */
  readonly longestWord_mm: number
  /** title block with the revisions over it */
  readonly blockHeight_mm: number
  /** what a level takes at the left of the view; 0 where there is none, or none has room */
  readonly level_mm: number
  /** how far chains reach at a scale, raised words included: lower left and upper right corner, from that of the view */
  readonly reach: (scale: number) => Reach
}

/** Lower left and upper right corner. */
export type Reach = readonly [low: Point, high: Point]

/** Room round a view that is wide enough for what chains reach. */
export const marginsWith = (
  usual: ReturnType<typeof margins>,
  [low, high]: Reach,
  [width, height]: Point,
): ReturnType<typeof margins> => ({
  left: Math.max(usual.left, -low[0]),
  right: Math.max(usual.right, high[0] - width),
  top: Math.max(usual.top, high[1] - height),
  bottom: Math.max(usual.bottom, -low[1]),
})

/** Room round a view at a scale. */
export const marginsAt = (wanted: Wanted, scale: number): ReturnType<typeof margins> =>
  marginsWith(margins(wanted), wanted.reach(scale), onPaper(wanted, scale))

/** A sheet, a scale, and where its notes go: below the view, in its column of labels, or above the title block. */
export type Attempt = {
  readonly paper: Paper
  readonly scale: number
  readonly notes: 'below' | 'column' | 'aside'
}

/** Between the frame and what stands in it. */
export const pad_mm = 3
/** Between the frame and the outermost chain or label. */
const side_mm = 2
/** What the heading takes of the height. */
export const heading_mm = 18
/**
 * Labels may stand as high as this: at the right below the scale bar; at the left, and where leaders come from far to the
 * left, below the heading. Ours.
 */
const labelsBelowTop_mm = { right: 15.5, left: 19.5 }
const highestLabel = (paper: Paper, wanted: Wanted, { labels }: Across): number =>
  paper.frame[1][1] - labelsBelowTop_mm[labels === 'left' || isUpright(wanted) ? 'left' : 'right']
/**
 * Least and most width of the words of a label (the narrowest of all only where it breaks no word), the way from the picture to the circles, a circle with
 * its gap. Ours.
 */
export const labels_mm = { narrowest: 28, least: 31, most: 46, way: 5.5, circle: 6.3 }
/** Height of the words inside and outside, off the drawing. */
const sideWord_mm = 6

/** What chains take beside a view. */
const chainsTake_mm = (count: number): number =>
  count === 0 ? 2 : sizing.first_mm + (count - 1) * sizing.pitch_mm + 4.2

/** How the width of a sheet is shared: chains, picture, circles, words. */
export type Across = {
  /** the frame's sides, or what of them is left beside legend and notes */
  readonly left: number
  readonly right: number
  readonly viewX: number
  readonly viewWidth: number
  readonly labels: 'left' | 'right' | 'both'
  readonly rightX: number
  readonly leftX: number
  /** width of the words of a label */
  readonly words: number
}

/** Shares the width of a sheet. */
export const acrossOf = ({ paper, scale, notes }: Attempt, wanted: Wanted): Across => {
  const left = paper.frame[0][0]
  const right = paper.frame[1][0] - (notes === 'aside' ? titleBlock_mm[0] : 0)
  const upright = isUpright(wanted)
  const labels =
    upright && paper.name === 'A3' ? 'both' : !upright && wanted.stand.mirrored ? 'left' : 'right'
  const count = labels === 'both' ? 2 : 1
  const margin = marginsAt(wanted, scale)
  const [viewWidth] = onPaper(wanted, scale)
  const beside_mm = labels_mm.way + labels_mm.circle
  const taken = margin.left + margin.right + wanted.level_mm + viewWidth + count * beside_mm
  const spare = right - left - 2 * side_mm - taken
  const words = Math.min(labels_mm.most, spare / count)
  const free = Math.max(0, spare - count * words) / 2
  const beforeView = wanted.level_mm + margin.left
  const viewX = left + side_mm + free + (labels === 'right' ? 0 : words + beside_mm) + beforeView
  return {
    left,
    right,
    viewX,
    viewWidth,
    labels,
    rightX: viewX + viewWidth + margin.right + labels_mm.way,
    leftX: viewX - margin.left - labels_mm.way,
    words,
  }
}

const isUpright = ({ stand }: Wanted): boolean => stand.turn_deg === 270

/** Words beyond the end of a chain reach this far. Ours. */
const beyondChain_mm = 5

/** At a jamb there is room for notes outside, beside what covers the frame. */
export const noteColumnOf = (
  { left, right, viewX, viewWidth, labels }: Across,
  wanted: Wanted,
  scale: number,
): { readonly x: number; readonly width_mm: number } | undefined => {
  if (isUpright(wanted)) return undefined
  // words of a chain may stand beyond its end
  const free = (wanted.window[1][0] - wanted.coverTo_mm) * scale - 2 * pad_mm - beyondChain_mm
  if (labels === 'left') return { x: left + pad_mm, width_mm: viewX + free - left }
  const x = viewX + viewWidth - free
  return { x, width_mm: right - pad_mm - x }
}

/** Legend and notes below a view, or beside it above the title block; and the height that the view stands on. */
export const belowOf = (
  { paper, notes, scale }: Attempt,
  wanted: Wanted,
  noteColumn: { readonly width_mm: number } | undefined,
) => {
  const [[x0, y0], [x1]] = paper.frame
  const aside = notes === 'aside'
  const width_mm =
    (paper.name === 'A3' && !aside ? x1 - x0 - titleBlock_mm[0] : titleBlock_mm[0]) - 2 * pad_mm
  const legend_mm = wanted.legendHeight_mm(width_mm, scale)
  const notes_mm = wanted.notesHeight_mm(noteColumn?.width_mm ?? width_mm, noteColumn !== undefined)
  const height = legend_mm + (noteColumn ? 0 : notes_mm + gap_mm) + 2 * pad_mm
  const onBlock = paper.name === 'A4' || aside
  const block = wanted.blockHeight_mm
  const top = onBlock ? y0 + block + height : y0 + Math.max(height, block)
  const x = aside ? x1 - titleBlock_mm[0] + pad_mm : x0 + pad_mm
  return { x, top: top - pad_mm, width_mm, legend_mm, notes_mm, foot: aside ? y0 : top }
}

/** The columns of circles, as high as they may reach. `notes_mm` is what notes take of the foot of a column. */
export const columnsOf = (
  { paper, scale }: Attempt,
  wanted: Wanted,
  across: Across,
  { viewAt, foot, notes_mm }: { readonly viewAt: Point; readonly foot: number; readonly notes_mm: number },
): readonly LabelColumn[] => {
  const [, height] = onPaper(wanted, scale)
  const [viewY, top] = [viewAt[1], highestLabel(paper, wanted, across)]
  const labels = (wanted.labels - 1) * wanted.labelPitch_mm(across.words)
  const ranges = isUpright(wanted)
    ? uprightRanges(wanted, { scale, at: viewAt, height, foot: lowestLabel(foot), top, labels })
    : besideRange(
        notes_mm === 0 ? viewY : Math.max(viewY, foot + notes_mm),
        Math.min(top, viewY + height),
        top,
        labels,
      )
  const right: LabelColumn = { side: 'right', x: across.rightX, width_mm: across.words, ...ranges.right }
  const left: LabelColumn = { side: 'left', x: across.leftX, width_mm: across.words, ...ranges.left }
  return across.labels === 'left' ? [left] : across.labels === 'both' ? [right, left] : [right]
}

/** Between legend and notes. */
export const gap_mm = 4.4

/** Width and height of a view on paper. */
export const onPaper = (
  { window: [low, high], stand }: Pick<Wanted, 'window' | 'stand'>,
  scale: number,
): Point => {
  const [across, through] = [(high[0] - low[0]) * scale, (high[1] - low[1]) * scale]
  return stand.turn_deg === 0 || stand.turn_deg === 180 ? [across, through] : [through, across]
}

/** Room round a view: chains through the wall stand at its cut end, chains across the joint outside. */
export const margins = ({ stand, chains }: Pick<Wanted, 'stand' | 'chains'>) => {
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
const uprightRanges = (
  { window, stand }: Wanted,
  on: {
    readonly scale: number
    readonly at: Point
    readonly height: number
    readonly foot: number
    readonly top: number
    readonly labels: number
  },
) => {
  const reveal = placeView({ ...stand, window, at: on.at, scale: on.scale }).toPaper([0, 0])[1]
  const [low, high] = [on.at[1] + offBreak_mm, on.at[1] + on.height - offBreak_mm]
  // a column grows away from the chains through the wall, which stand at its cut end
  const right = stand.mirrored
    ? { low, high: Math.min(on.top, Math.max(high, low + on.labels)) }
    : { low: Math.max(on.foot, Math.min(low, high - on.labels)), high }
  return {
    right,
    left: stand.mirrored ? { low, high: reveal - offChain_mm } : { low: reveal + offChain_mm, high },
  }
}

/** How far down a column of labels may reach, over what stands at the foot. */
const lowestLabel = (foot: number): number => foot + pad_mm + 5

/**
 * How far a view may be lifted at the least and at the most so that the column beside a head has its room downwards,
 * beside a sill upwards: they grow away from the chains.
 */
export const liftsFor = (
  { paper, scale }: Attempt,
  wanted: Wanted,
  across: Across,
  { lowest, foot }: { readonly lowest: number; readonly foot: number },
): readonly [least: number, most: number] => {
  if (!isUpright(wanted) || across.labels === 'both') return [0, Infinity]
  const labels = (wanted.labels - 1) * wanted.labelPitch_mm(across.words)
  if (wanted.stand.mirrored) return [0, highestLabel(paper, wanted, across) - labels - offBreak_mm - lowest]
  const [, height] = onPaper(wanted, scale)
  return [lowestLabel(foot) + labels - height + offBreak_mm - lowest, Infinity]
}

/** Leaders keep off the break lines at both ends. Ours. */
const offBreak_mm = 4

/** The words of a narrow joint stand beyond the end of its chain. Ours. */
const offChain_mm = 14
