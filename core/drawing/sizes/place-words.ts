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
 * Where the words of a link stand along the chain: on the line, or `raised` on the side away from the drawing where
 * no extension line runs.
 */
export type Stand = { readonly at: number; readonly raised: boolean }

type Option = Stand & { readonly low: number; readonly high: number; readonly cost: number }
type Partial = { readonly options: readonly Option[]; readonly cost: number }

/**
 * Places the words of a chain: in the middle where they fit, else beyond the end of the chain or over a neighbour with
 * room, else raised. Words never meet, and never stand across a stroke on the line. Of the best partial answers the
 * cheapest fifty are carried on, so that one narrow link does not spoil the rest.
 */
export const placeWords = (spans: readonly Span[]): readonly Stand[] => {
  let partials: readonly Partial[] = [{ options: [], cost: 0 }]
  spans.forEach((_, at) => {
    const options = optionsOf(spans, at)
    const longer = partials.flatMap(partial =>
      options.flatMap(option =>
        partial.options.every(it => areApart(it, option))
          ? [{ options: [...partial.options, option], cost: partial.cost + option.cost }]
          : [],
      ),
    )
    const last = options[options.length - 1]
    partials =
      longer.length > 0
        ? longer.toSorted((a, b) => a.cost - b.cost).slice(0, 50)
        : partials.map(it => ({ options: last ? [...it.options, last] : it.options, cost: it.cost + 100 }))
  })
  return partials[0]?.options ?? []
}

const between_mm = 0.8

const areApart = (a: Option, b: Option): boolean =>
  a.raised !== b.raised || a.high + between_mm <= b.low || b.high + between_mm <= a.low

const optionsOf = (spans: readonly Span[], at: number): readonly Option[] => {
  const span = spans[at]
  if (span === undefined) return []
  const { from, to, width } = span
  const [before, after] = [spans[at - 1], spans[at + 1]]
  const middle = (from + to) / 2
  const stand = (centre: number, cost: number, raised = false): Option => ({
    at: centre,
    raised,
    low: centre - width / 2,
    high: centre + width / 2,
    cost,
  })
  const options = roomsOf(span).map(([low, high], index, all) =>
    stand(
      (low + high) / 2,
      all.length === 1 && width + sizing.textSlack_mm <= high - low ? 0 : 0.5 + index / 100,
    ),
  )
  if (options[0]?.cost === 0) return [...options, stand(middle, 6, true)]
  const left = from - offStroke_mm - width / 2
  if (before === undefined) options.push(stand(left, 2))
  else if (before.from + offStroke_mm <= left - width / 2) options.push(stand(left, 5))
  const right = to + offStroke_mm + width / 2
  if (after === undefined) options.push(stand(right, 2))
  else if (right + width / 2 <= after.to - offStroke_mm) options.push(stand(right, 5))
  return [
    ...options,
    ...raisedShifts.map(shift => stand(middle + shift * (width + between_mm), 6 + 3 * Math.abs(shift), true)),
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

/** Words may come this near to the extension lines on both sides together, and this near to a foreign stroke. Ours. */
const tight_mm = 0.7
const offStroke_mm = 1.2
