import { assign } from './assign'
import type { Column } from './columns'
import { type Seen, wayTo, type Way } from './seen'

/** A height in one of the columns. */
export type Slot = { readonly at: number; readonly y: number }

/** Slots for all parts, who is assigned to which, and the sum of what their cheapest leaders cost. */
export type Try = { readonly slots: readonly Slot[]; readonly start: Int32Array; readonly sum: number }

/** The ways to a height of a column, looked for once however many rows of slots have it. */
export type Ways = (slot: Slot) => Way

export const waysOf = (seen: readonly Seen[]): Ways => {
  const known = seen.map(() => new Map<number, Way>())
  return ({ at, y }) => {
    const [own, of] = [seen[at], known[at]]
    if (own === undefined || of === undefined) throw new Error(`there is no column ${at}`)
    const there = of.get(y) ?? wayTo(own, y)
    of.set(y, there)
    return there
  }
}

/** Rows of slots that are worth settling, the cheapest first. `middle` is the height of the middle of what is numbered. */
export const rowsToTry = (
  columns: readonly Column[],
  { count, middle }: { readonly count: number; readonly middle: number },
  ways: Ways,
): readonly Try[] => {
  const [first, second] = columns
  if (first === undefined || count === 0) return []
  const assigned = (slots: readonly Slot[]): Try => assignedTo(slots, count, ways)
  const tries = second
    ? sharedOut([first, second], { count, middle }, assigned)
    : rowsIn(first, count).map(heights => assigned(heights.map(y => ({ at: 0, y }))))
  const sorted = tries.toSorted((a, b) => a.sum - b.sum)
  // rows that have no room to be spread come up more than once
  return sorted.filter((it, at) => it.sum !== sorted[at - 1]?.sum)
}

const assignedTo = (slots: readonly Slot[], count: number, ways: Ways): Try => {
  const cost = new Float64Array(count * count)
  slots.forEach((it, slot) => {
    const way = ways(it).cost
    for (let part = 0; part < count; part++) cost[part * count + slot] = way[part]!
  })
  const start = assign(cost, count)
  return { slots, start, sum: start.reduce((sum, slot, part) => sum + cost[part * count + slot]!, 0) }
}

/** Heights of one column from top to bottom: close, wide, and between; at the top, in the middle, at the foot. */
const rowsIn = ({ low, high, pitch_mm }: Column, count: number): readonly number[][] => {
  if (count === 1) return [0.25, 0.5, 0.75].map(share => [low + share * (high - low)])
  const widest = Math.max(pitch_mm, (high - low) / (count - 1))
  const pitches = [...new Set([pitch_mm, (pitch_mm + widest) / 2, widest])]
  return pitches.flatMap(pitch => {
    const spare = Math.max(0, high - low - pitch * (count - 1))
    const tops = spare < 1 ? [high] : [0, 0.5, 1].map(share => high - share * spare)
    return tops.map(top => Array.from({ length: count }, (_, at) => top - at * pitch))
  })
}

/** So many ways to share parts out between two columns are looked at closely. Ours. */
const mostShares = 6

/**
 * Parts shared out between two columns, in every number that has room. Roughly first; then, of the cheapest, the rows of
 * one column after the other are moved and spread as long as that helps.
 */
const sharedOut = (
  [first, second]: readonly [Column, Column],
  { count, middle }: { readonly count: number; readonly middle: number },
  assigned: (slots: readonly Slot[]) => Try,
): readonly Try[] => {
  const room = Math.min(count, roomIn(second))
  const least = Math.min(room, Math.max(0, count - roomIn(first)))
  const bestOf = (share: number, [here, there]: readonly [number, number], places: number): Try =>
    bestRows(
      [
        latticeRows(first, { count: count - share, pitch: here, places, middle }),
        latticeRows(second, { count: share, pitch: there, places, middle }),
      ],
      assigned,
    )
  return Array.from({ length: room - least + 1 }, (_, at) => least + at)
    .map(share => ({ share, sum: bestOf(share, [close, close], 3).sum }))
    .toSorted((a, b) => a.sum - b.sum)
    .slice(0, mostShares)
    .flatMap(({ share }) => spreads.map(it => bestOf(share, it, 8)))
}

const roomIn = ({ low, high, pitch_mm }: Column): number =>
  Math.max(0, Math.floor((high - low) / pitch_mm + 1e-6) + 1)

type Rows = readonly (readonly number[])[]

/** The best of some rows in each of two columns, one column after the other. */
const bestRows = (rows: readonly [Rows, Rows], assigned: (slots: readonly Slot[]) => Try): Try => {
  const picked: [readonly number[], readonly number[]] = [rows[0][0] ?? [], rows[1][0] ?? []]
  // round the picture: down one column and up the other, so that what is moved on moves to a neighbour
  const of = ([here, there]: typeof picked): Try =>
    assigned([...here.map(y => ({ at: 0, y })), ...there.toReversed().map(y => ({ at: 1, y }))])
  let best = of(picked)
  for (const at of [0, 1] as const)
    for (const row of rows[at]) {
      const next = of(at === 0 ? [row, picked[1]] : [picked[0], row])
      if (next.sum < best.sum - 1e-9) {
        best = next
        picked[at] = row
      }
    }
  return best
}

/** Rows are moved by quarters of the pitch of their column, so that they have heights in common; close, or spread by a half. */
const close = 4
const spreads = [[4, 4], [4, 6], [6, 4], [6, 6]] as const // prettier-ignore

/** Rows of a column from top to bottom, in so many places of it at most, from its end that is nearer to a middle. */
const latticeRows = (
  { low, high, pitch_mm }: Column,
  of: { readonly count: number; readonly pitch: number; readonly places: number; readonly middle: number },
): Rows => {
  const step = pitch_mm / close
  const steps = Math.floor((high - low) / step + 1e-6)
  const pitch = of.pitch * (of.count - 1) <= steps ? of.pitch : close
  const fromTop = Math.abs(high - of.middle) <= Math.abs(low - of.middle)
  return spread(Math.max(0, steps - pitch * (of.count - 1)), of.places).map(off => {
    const row = Array.from({ length: of.count }, (_, at) => (off + at * pitch) * step)
    return fromTop ? row.map(it => high - it) : row.map(it => low + it).toReversed()
  })
}

/** So many whole numbers at most from 0 to some, evenly spread. */
const spread = (most: number, count: number): readonly number[] => [
  ...new Set(Array.from({ length: count }, (_, at) => Math.round((most * at) / (count - 1)))),
]
