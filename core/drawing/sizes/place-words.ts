import { sizing } from '../style/spacing'

/**
 * A link of a chain on paper: where it starts and ends along the chain, how wide its words are, and where extension
 * lines of outer chains pass through it.
 */
export type Span = {
  readonly from: number
  readonly to: number
  readonly width: number
  readonly passing: readonly number[]
}

/**
 * Where the words of a link stand along the chain: on the line, or `raised` to a row of their own on the side away from
 * the drawing.
 */
export type Stand = { readonly at: number; readonly raised: boolean }

type Option = Stand & { readonly low: number; readonly high: number; readonly cost: number }
/** An answer for the first links: the last of its options, and the answer before it. */
type Partial = { readonly option?: Option; readonly before?: Partial; readonly cost: number }

/**
 * Places the words of a chain: in the middle where they fit, else beyond the end of the chain, else raised. Words never meet, and never stand across a stroke of the line or across an extension line of an
 * outer chain. Of the best partial answers the cheapest fifty are carried on, so that one narrow link does not spoil
 * the rest.
 */
export const placeWords = (spans: readonly Span[]): readonly Stand[] => {
  const strokes = [...new Set(spans.flatMap(it => [it.from, it.to]))]
  const outer = [...new Set(spans.flatMap(it => it.passing))]
  let partials: readonly Partial[] = [{ cost: 0 }]
  spans.forEach((_, at) => {
    const options = optionsOf(spans, at, { strokes, outer })
    const longer = partials.flatMap(partial =>
      options.flatMap(option =>
        isApart(partial, option) ? [{ option, before: partial, cost: partial.cost + option.cost }] : [],
      ),
    )
    const last = options[options.length - 1]
    partials =
      longer.length > 0
        ? longer.toSorted((a, b) => a.cost - b.cost).slice(0, 50)
        : partials.map(it => (last ? { option: last, before: it, cost: it.cost + 100 } : it))
  })
  const best: Option[] = []
  for (let it = partials[0]; it?.option; it = it.before) best.push(it.option)
  return best.toReversed()
}

/** Whether an option keeps off all options of an answer. */
const isApart = (of: Partial, option: Option): boolean => {
  for (let it: Partial | undefined = of; it?.option; it = it.before)
    if (!areApart(it.option, option)) return false
  return true
}

const between_mm = 0.8

const areApart = (a: Option, b: Option): boolean =>
  a.raised !== b.raised || a.high + between_mm <= b.low || b.high + between_mm <= a.low

/** What words must keep off: strokes of their own line, and lines of outer chains that pass through it. */
type Lines = { readonly strokes: readonly number[]; readonly outer: readonly number[] }

const optionsOf = (spans: readonly Span[], at: number, { strokes, outer }: Lines): readonly Option[] => {
  const span = spans[at]
  if (span === undefined) return []
  const { from, to, width } = span
  const middle = (from + to) / 2
  const stand = (centre: number, cost: number, raised = false): Option => ({
    at: centre,
    raised,
    low: centre - width / 2,
    high: centre + width / 2,
    cost,
  })
  const isClear = ({ low, high, raised }: Option): boolean =>
    [...outer, ...(raised ? [] : strokes)].every(it => it <= low - offLine_mm || high + offLine_mm <= it)
  const over = roomsOf(span).map(([low, high], index, all) =>
    stand(
      (low + high) / 2,
      all.length === 1 && width + sizing.textSlack_mm <= high - low ? 0 : 0.5 + index / 100,
    ),
  )
  const plain = stand(middle, 6, true)
  if (over[0]?.cost === 0) return isClear(plain) ? [...over, plain] : over
  const aside = beyondOf(spans, at, outer).map(([centre, cost]) => stand(centre, cost))
  const besideOuter = outer.flatMap(it => [it - offLine_mm - width / 2, it + offLine_mm + width / 2])
  const raised = [...raisedShifts.map(shift => middle + shift * (width + between_mm)), ...besideOuter].map(
    centre => stand(centre, 6 + (3 * Math.abs(centre - middle)) / (width + between_mm), true),
  )
  const clear = [...aside, ...raised].filter(isClear)
  return [...over, ...(clear.length > 0 ? clear : [plain])]
}

/** Places beyond the ends of a chain, with what they cost. Over another link words would be taken for its length. */
const beyondOf = (
  spans: readonly Span[],
  at: number,
  outer: readonly number[],
): readonly (readonly [centre: number, cost: number])[] => {
  const { from = 0, to = 0, width = 0 } = spans[at] ?? {}
  const beyond = (end: number, sign: 1 | -1): readonly (readonly [number, number])[] => [
    [end, 2],
    ...outer
      .filter(it => (it - end) * sign > -width)
      .map(it => it + sign * (offLine_mm + width / 2))
      .map(it => [it, 2 + Math.abs(it - end) / 10] as const),
  ]
  return [
    ...(at === 0 ? beyond(from - offStroke_mm - width / 2, -1) : []),
    ...(at === spans.length - 1 ? beyond(to + offStroke_mm + width / 2, 1) : []),
  ]
}

/** Raised words may move aside by halves of their own width, to let others stand. Ours. */
const raisedShifts = [0, -0.5, 0.5, -1, 1, -1.5, 1.5, -2, 2, -3, 3, -4, 4, -5, 5, -6, 6, -7, 7, -8, 8]

/** The stretches of a link that its words fit in, the widest first. */
const roomsOf = ({ from, to, width, passing }: Span): readonly (readonly [number, number])[] => {
  const stops = [from, ...passing.filter(it => from < it && it < to).toSorted((a, b) => a - b), to]
  return stops
    .slice(1)
    .map((high, at) => [stops[at] ?? from, high] as const)
    .filter(([low, high]) => width + tight_mm <= high - low)
    .toSorted((a, b) => b[1] - b[0] - (a[1] - a[0]))
}

/**
 * Words may come this near to the extension lines on both sides together, this near to one of them, and this near to a
 * foreign stroke. Ours.
 */
const tight_mm = 0.7
const offLine_mm = 0.35
const offStroke_mm = 1.2
