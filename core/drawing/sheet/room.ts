import type { Point } from '../../geometry'
import type { View } from '../mark'
import type { Window } from '../section/clip'
import { sizing } from '../style/spacing'
import { pad_mm, type Paper, titleBlock_mm } from './paper'

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
  /** at a head or sill, between which heights the chains beside the view stand, from its lower left corner */
  readonly beside: (scale: number) => readonly [low: number, high: number]
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
  /** beside a head or sill: labels on both sides, or all of them inside */
  readonly sides?: 'both' | 'one'
}

/** Between the frame and the outermost chain or label. */
const side_mm = 2
/** What the heading takes of the height. */
export const heading_mm = 18
/**
 * Least and most width of the words of a label (the narrowest of all only where it breaks no word, the widest only where it
 * saves lines), the way from the picture to the circles, a circle with its gap. Ours.
 */
export const labels_mm = { narrowest: 28, least: 31, usual: 31, most: 46, widest: 64, way: 5.5, circle: 6.3 }
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
export const acrossOf = (attempt: Attempt, wanted: Wanted): Across => {
  const { paper, scale, notes, sides = 'both' } = attempt
  const left = paper.frame[0][0]
  const right = paper.frame[1][0] - (notes === 'aside' ? titleBlock_mm[0] : 0)
  const margin = marginsAt(wanted, scale)
  const [viewWidth] = onPaper(wanted, scale)
  const room = right - left - 2 * side_mm - viewWidth
  const chains = { left: wanted.level_mm + margin.left, right: margin.right }
  const shared =
    isUpright(wanted) && sides === 'both'
      ? onBothSides(room, chains, wanted)
      : onOneSide(room, chains, !isUpright(wanted) && wanted.stand.mirrored ? 'left' : 'right', wanted)
  const viewX = left + side_mm + shared.free + shared.beforeView
  return {
    left,
    right,
    viewX,
    viewWidth,
    labels: shared.labels,
    rightX: viewX + viewWidth + margin.right + labels_mm.way,
    // of both columns the left one stands past the chains, so it need not stand beside them
    leftX: viewX - (shared.aside ?? margin.left) - labels_mm.way,
    words: shared.words,
  }
}

/**
 * A left column past the chains moves off its view where words keep their usual width, so that slopes reach it from the
 * outermost layer; beside a thick wall it moves under the view. Ours.
 */
const aside_mm = { least: -12, most: 11 }

type Shared = Pick<Across, 'labels' | 'words'> & {
  /** what stands left of the view, and what is left over on each side */
  readonly beforeView: number
  readonly free: number
  /** of two columns, how far the left one stands aside of its way */
  readonly aside?: number
}

/** What a column takes beside its words. */
const beside_mm = labels_mm.way + labels_mm.circle

const onOneSide = (
  room: number,
  chains: { readonly left: number; readonly right: number },
  side: 'left' | 'right',
  wanted: Wanted,
): Shared => {
  const spare = room - chains.left - chains.right - beside_mm
  const words = wordsIn(spare, wanted)
  const beforeView = chains.left + (side === 'left' ? words + beside_mm : 0)
  return { labels: side, words, beforeView, free: Math.max(0, spare - words) / 2 }
}

/** Words of the left column stand past the chains: the wider of the two counts. */
const onBothSides = (
  room: number,
  chains: { readonly left: number; readonly right: number },
  wanted: Wanted,
): Shared => {
  const spare = room - chains.right - 2 * beside_mm
  const roomy = Math.min(aside_mm.most, Math.max(aside_mm.least, spare - 2 * labels_mm.usual))
  const even = (spare - roomy) / 2
  const words = wordsIn(
    chains.left <= even + beside_mm + roomy ? even : spare + beside_mm - chains.left,
    wanted,
  )
  const left = spare + beside_mm - words
  const aside = Math.min(aside_mm.most, Math.max(aside_mm.least, left - words - beside_mm))
  const beforeView = Math.max(chains.left, words + beside_mm + aside)
  return { labels: 'both', words, beforeView, aside, free: Math.max(0, left - beforeView) / 2 }
}

/** As wide as usual in a room; wider where labels then break into fewer lines and stand closer. */
const wordsIn = (room: number, { labelPitch_mm }: Wanted): number => {
  const usual = Math.min(labels_mm.most, room)
  if (usual < labels_mm.most) return usual
  const widest = Math.min(room, labels_mm.widest)
  const least = labelPitch_mm(widest)
  if (labelPitch_mm(usual) - least < 0.5) return usual
  for (let width = usual; width < widest; width++) if (labelPitch_mm(width) - least < 0.5) return width
  return widest
}

export const isUpright = ({ stand }: Pick<Wanted, 'stand'>): boolean => stand.turn_deg === 270

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
