import type { FieldAt } from '../../detail'
import type { Point } from '../../geometry'
import { writeNumber } from '../../units'
import type { Language } from '../../words'
import { readingAngle_deg } from '../ink/ink-dimension'
import type { ViewMark } from '../mark'
import type { Placement } from '../place-view'
import { sizing } from '../style/spacing'
import { heights, textWidth_mm } from '../text/lettering'
import { chainValues_mm, chainValuesOf } from './chain-values'
import type { LengthUnit } from './lengths'
import { placeWords } from './place-words'

/** One link of a chain in model mm; `words` stands for its length when the model holds a range. */
export type Link = { readonly to_mm: number; readonly words?: string; readonly field?: FieldAt }

/** Links end to end along an axis of the model. */
export type Chain = { readonly start_mm: number; readonly links: readonly Link[] }

/** Where chains of one side go: along an axis, outwards from a place across it. */
export type ChainSide = { readonly axis: 0 | 1; readonly edge_mm: number; readonly outwards: 1 | -1 }

type Drawn = {
  readonly placement: Placement
  readonly scale: number
  readonly language: Language
  readonly unit: LengthUnit
}

/** Draws the chains of one side, the first nearest to the drawing. */
export const drawChains = (chains: readonly Chain[], side: ChainSide, on: Drawn): readonly ViewMark[] => {
  let off_mm: number = sizing.first_mm
  return chains.flatMap((chain, at) => {
    const outer = chains.slice(at + 1).flatMap(placesOf)
    const { marks, raised } = drawChain(chain, outer, side, off_mm, on)
    off_mm += sizing.pitch_mm + (raised ? raisedTakes_mm : 0)
    return marks
  })
}

/** What raised words take from the next line; and how far they stand off their own. Ours. */
const raisedTakes_mm = 3.5
const raisedGap_mm = 2.1
/** Raised words stand over those on the line where that is their side. */
const raisedOver_mm = sizing.textGap_mm + heights.size_mm + 1.5

/** Their leader lands under them, clear of commas, and else ends this far off them. Ours. */
const underRaised_mm = 0.95
const offWords_mm = 0.5
const landing_mm = raisedOver_mm - underRaised_mm

const placesOf = (chain: Chain): readonly number[] => [chain.start_mm, ...chain.links.map(it => it.to_mm)]

const drawChain = (
  chain: Chain,
  outer_mm: readonly number[],
  side: ChainSide,
  off_mm: number,
  on: Drawn,
): { readonly marks: readonly ViewMark[]; readonly raised: boolean } => {
  const places = placesOf(chain)
  const values = on.unit === 'mm' ? chainValues_mm(places) : chainValuesOf(places, on.unit)
  const words = chain.links.map((link, at) => link.words ?? writeNumber(values[at] ?? 0, on.language))
  const line_mm = side.edge_mm + (side.outwards * off_mm) / on.scale
  const at = (along: number, across: number): Point => (side.axis === 0 ? [along, across] : [across, along])
  const frame = frameOf(side, line_mm, on)
  const spans = words.map((word, index) => ({
    from: frame.along(places[index] ?? 0),
    to: frame.along(places[index + 1] ?? 0),
    width: textWidth_mm(word, heights.size_mm),
    passing: outer_mm.map(frame.along),
  }))
  const stands = frame.inOrder(placeWords(frame.inOrder(spans.map(ordered))))
  const marks = words.flatMap((word, index): ViewMark[] => {
    const stand = stands[index]
    const span = spans[index]
    if (stand === undefined || span === undefined) return []
    const field = chain.links[index]?.field
    return [
      {
        kind: 'dimension',
        layer: 'sizes',
        ...(field && { part: field.part, field }),
        pen: 'size',
        from: at(places[index] ?? 0, side.edge_mm),
        to: at(places[index + 1] ?? 0, side.edge_mm),
        line: at(places[index] ?? 0, line_mm),
        words: word,
        text: frame.textAt(stand.at, stand.raised),
      },
      ...joining(stand, index, ordered(span), spans.length, frame),
    ]
  })
  return { marks, raised: stands.some(it => it.raised) }
}

const ordered = <S extends { from: number; to: number }>(span: S): S => ({
  ...span,
  from: Math.min(span.from, span.to),
  to: Math.max(span.from, span.to),
})

/**
 * What joins words to their link when they do not stand over it: beyond the end of a chain the line carries on below
 * them; raised words that moved aside have a short leader.
 */
const joining = (
  stand: { readonly at: number; readonly raised: boolean },
  index: number,
  span: { readonly from: number; readonly to: number; readonly width: number },
  count: number,
  frame: Frame,
): ViewMark[] => {
  const draw = (...points: readonly Point[]): ViewMark[] => [
    { kind: 'path', layer: 'sizes', pen: 'size', closed: false, points },
  ]
  const middle = (span.from + span.to) / 2
  const [low, high] = [stand.at - span.width / 2, stand.at + span.width / 2]
  if (stand.raised) return low <= middle && middle <= high ? [] : draw(...frame.leaderTo(middle, low, high))
  const isEnd = index === 0 || index === count - 1
  if (!isEnd || (span.from <= stand.at && stand.at <= span.to)) return []
  return stand.at < span.from
    ? draw(frame.lineAt(span.from), frame.lineAt(low))
    : draw(frame.lineAt(span.to), frame.lineAt(high))
}

/** A chain as it lies on paper, along the direction in which its words are read. */
type Frame = {
  readonly along: (model_mm: number) => number
  readonly inOrder: <T>(items: readonly T[]) => readonly T[]
  readonly lineAt: (along: number) => Point
  readonly textAt: (along: number, raised: boolean) => Point
  /** from the middle of a link to its raised words, clear of words on the line and in the row */
  readonly leaderTo: (middle: number, low: number, high: number) => readonly Point[]
}

const frameOf = (
  side: ChainSide,
  line_mm: number,
  { placement, scale }: { readonly placement: Placement; readonly scale: number },
): Frame => {
  const model = (along: number, across: number): Point =>
    side.axis === 0 ? [along, across] : [across, along]
  const origin = placement.toPaper(model(0, line_mm))
  const one = placement.toPaper(model(1, line_mm))
  const out = placement.toPaper(model(0, line_mm + side.outwards))
  const reading = (readingAngle_deg([one[0] - origin[0], one[1] - origin[1]]) * Math.PI) / 180
  const [cos, sin] = [Math.cos(reading), Math.sin(reading)]
  const step = (one[0] - origin[0]) * cos + (one[1] - origin[1]) * sin
  const outIsUp = -(out[0] - origin[0]) * sin + (out[1] - origin[1]) * cos > 0
  const paperAt = (along: number, up: number): Point =>
    placement.toModel([origin[0] + along * cos - up * sin, origin[1] + along * sin + up * cos])
  const raised = outIsUp ? raisedOver_mm : -raisedGap_mm - heights.size_mm
  return {
    along: model_mm => model_mm * Math.sign(step) * scale,
    inOrder: items => (step < 0 ? items.toReversed() : items),
    lineAt: along => paperAt(along, 0),
    textAt: (along, isRaised) => paperAt(along, isRaised ? raised : sizing.textGap_mm),
    leaderTo: (middle, low, high) =>
      outIsUp
        ? [paperAt(middle, 0), paperAt(middle, landing_mm), paperAt(middle < low ? high : low, landing_mm)]
        : [paperAt(middle, 0), paperAt(middle < low ? low : high, -raisedGap_mm + offWords_mm)],
  }
}
