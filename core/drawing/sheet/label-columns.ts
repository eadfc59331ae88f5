import type { Point } from '../../geometry'
import type { Paper } from './paper'
import {
  type Across,
  type Attempt,
  isUpright,
  type LabelColumn,
  marginsAt,
  onPaper,
  type Wanted,
} from './room'
import { pad_mm } from './paper'

/** The columns of circles, as high as they may reach. `notes_mm` is what notes take of the foot of a column. */
export const columnsOf = (
  { paper, scale }: Attempt,
  wanted: Wanted,
  across: Across,
  { viewAt, foot, notes_mm }: { readonly viewAt: Point; readonly foot: number; readonly notes_mm: number },
): readonly LabelColumn[] => {
  const [, height] = onPaper(wanted, scale)
  const [viewY, top] = [viewAt[1], highestLabel(paper, wanted, across)]
  const pitch = wanted.labelPitch_mm(across.words)
  const labels = (wanted.labels - 1) * pitch
  const on = { at: viewAt, height, foot: lowestLabel(foot), top }
  const ranges = isUpright(wanted)
    ? across.labels === 'both'
      ? bothRanges(wanted.stand, { ...on, beside: wanted.beside(scale), pitch })
      : insideRange(wanted.stand, { ...on, labels })
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

/**
 * Labels may stand as high as this: at the right below the scale bar; at the left, and where leaders come from far to the
 * left, below the heading. Ours.
 */
const labelsBelowTop_mm = { right: 15.5, left: 19.5 }
const highestLabel = (paper: Paper, wanted: Wanted, { labels }: Across): number =>
  paper.frame[1][1] - labelsBelowTop_mm[labels === 'left' || isUpright(wanted) ? 'left' : 'right']
/** A column as high as the view, higher where its labels need it. */
const besideRange = (low: number, high: number, top: number, labels_mm: number) => {
  const range = { low, high: Math.min(top, Math.max(high, low + labels_mm)) }
  return { right: range, left: range }
}

/** Where a view stands, how high it is, and between which heights labels may stand. */
type Standing = {
  readonly at: Point
  readonly height: number
  readonly foot: number
  readonly top: number
}

/** A column inside, beside a head or sill: it grows away from the chains through the wall, which stand at its cut end. */
const insideRange = (
  { mirrored }: Wanted['stand'],
  { at, height, foot, top, labels }: Standing & { readonly labels: number },
) => {
  const [low, high] = [at[1] + offBreak_mm, at[1] + height - offBreak_mm]
  const right = mirrored
    ? { low, high: Math.min(top, Math.max(high, low + labels)) }
    : { low: Math.max(foot, Math.min(low, high - labels)), high }
  return { right, left: right }
}

/**
 * Columns on both sides of a head or sill: inside beside all of it, outside past the chains across the joint; both as far as
 * the sheet reaches where the opening is.
 */
const bothRanges = (
  { mirrored }: Wanted['stand'],
  {
    at: [, y],
    height,
    foot,
    top,
    beside: [low, high],
    pitch,
  }: Standing & { readonly beside: readonly [low: number, high: number]; readonly pitch: number },
) =>
  mirrored
    ? {
        right: { low: y + offBreak_mm, high: top },
        left: { low: y + high + pastChains_mm(pitch), high: top },
      }
    : {
        right: { low: foot, high: y + height - offBreak_mm },
        left: { low: foot, high: y + low - pastChains_mm(pitch) },
      }

/** From the end of the chains across the joint to the first label past them: half of a label, and some white. Ours. */
const pastChains_mm = (pitch: number): number => pitch / 2 + 0.5

/** How far down a column of labels may reach, over what stands at the foot. */
const lowestLabel = (foot: number): number => foot + pad_mm + 5

/**
 * How far a view is lifted off the lowest place that it may have: by a share of what is left over of the height, clear of the
 * column of labels that grows away from its chains.
 */
export const liftOf = (
  { paper, scale }: Attempt,
  wanted: Wanted,
  across: Across,
  on: { readonly lowest: number; readonly foot: number; readonly tall: number; readonly share: number },
): number => {
  const { lowest, foot, tall, share } = on
  if (!isUpright(wanted)) return tall * share
  const pitch = wanted.labelPitch_mm(across.words)
  const [, height] = onPaper(wanted, scale)
  const { mirrored } = wanted.stand
  if (across.labels === 'both') {
    const [low, high] = wanted.beside(scale)
    const past = pastChains_mm(pitch) + (Math.floor(wanted.labels / 2) - 0.5) * pitch
    const margin = marginsAt(wanted, scale)
    const more = Math.max(0, past + (mirrored ? high - height - margin.top : -low - margin.bottom))
    return (mirrored ? 0 : Math.min(more, tall)) + Math.max(0, tall - more) * share
  }
  const labels = (wanted.labels - 1) * pitch
  if (mirrored)
    return Math.min(tall * share, highestLabel(paper, wanted, across) - labels - offBreak_mm - lowest)
  return Math.max(tall * share, lowestLabel(foot) + labels - height + offBreak_mm - lowest)
}

/** Leaders keep off the break lines at both ends. Ours. */
const offBreak_mm = 4
