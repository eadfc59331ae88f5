import { conflictOf, crossing, type Leader } from './leaders'

/** What a conflict costs against a length of leader. Ours: more than any leader on a sheet. */
export const conflictCost = 1000

/** So many rounds of exchanges are enough on any sheet tried; each lowers the total, so they end anyway. Ours. */
const mostRounds = 6

/**
 * Exchanges slots between parts, moves parts between others, and takes other dots, as long as the total falls.
 * `cheapest[part * count + slot]` is the cheapest leader of a part to a slot; `options` gives all of them, that one first.
 */
export const settle = (
  cheapest: readonly Leader[],
  start: Int32Array,
  options: (part: number, slot: number) => readonly Leader[],
): { readonly slots: Int32Array; readonly leaders: readonly Leader[]; readonly total: number } => {
  const count = start.length
  const all: (readonly Leader[] | undefined)[] = []
  const leader = (cell: number, option: number): Leader | undefined =>
    option === 0 ? cheapest[cell] : all[cell]?.[option]
  const conflict = conflictsIn(cheapest, leader)
  const slots = Int32Array.from(start)
  const pick = new Int32Array(count)
  const cell = (part: number, slot: number) => part * count + slot
  const own = (part: number, slot: number, option: number) =>
    leader(cell(part, slot), option)?.cost ?? Infinity
  const against = (part: number, slot: number, option: number, skip: number) => {
    let hits = 0
    for (let other = 0; other < count; other++)
      if (other !== part && other !== skip)
        hits += conflict(cell(part, slot), option, cell(other, slots[other]!), pick[other]!)
    return hits * conflictCost
  }
  const costOf = (part: number, skip = -1) =>
    own(part, slots[part]!, pick[part]!) + against(part, slots[part]!, pick[part]!, skip)
  const exchange = (a: number, b: number): boolean => {
    const between = (slotA: number, optionA: number, slotB: number, optionB: number) =>
      conflict(cell(a, slotA), optionA, cell(b, slotB), optionB) * conflictCost
    const [slotA, slotB] = [slots[a]!, slots[b]!]
    const before = costOf(a, b) + costOf(b, a) + between(slotA, pick[a]!, slotB, pick[b]!)
    const least = own(a, slotB, 0) + own(b, slotA, 0)
    if (!(least < before - 1e-9)) return false
    const after = least + against(a, slotB, 0, b) + against(b, slotA, 0, a) + between(slotB, 0, slotA, 0)
    if (!(after < before - 1e-9)) return false
    slots[a] = slotB
    slots[b] = slotA
    pick[a] = 0
    pick[b] = 0
    return true
  }
  const repick = (part: number): boolean => {
    let [best, least] = [pick[part]!, costOf(part)]
    // nothing is cheaper than the cheapest that meets nothing
    if (best === 0 && least < conflictCost) return false
    const here = cell(part, slots[part]!)
    const ways = (all[here] ??= options(part, slots[part]!)).length
    for (let option = 0; option < ways; option++) {
      const cost = own(part, slots[part]!, option) + against(part, slots[part]!, option, -1)
      if (cost < least - 1e-9) [best, least] = [option, cost]
    }
    const changed = best !== pick[part]
    pick[part] = best
    return changed
  }
  const total = () => {
    let sum = 0
    for (let part = 0; part < count; part++)
      sum += own(part, slots[part]!, pick[part]!) + against(part, slots[part]!, pick[part]!, -1) / 2
    return sum
  }
  const state = () => ({ sum: total(), slots: Int32Array.from(slots), pick: Int32Array.from(pick) })
  const restore = (before: ReturnType<typeof state>) => {
    slots.set(before.slots)
    pick.set(before.pick)
  }
  // to another slot, those between one up or down
  const shift = (part: number, to: number): void => {
    const from = slots[part]!
    const step = to > from ? 1 : -1
    for (let other = 0; other < count; other++) {
      const slot = slots[other]!
      if (slot !== from && (slot - from) * step > 0 && (to - slot) * step >= 0) slots[other] = slot - step
    }
    slots[part] = to
    pick.fill(0)
  }
  const move = (part: number, to: number, sum: number): boolean => {
    const before = state()
    shift(part, to)
    const least = slots.reduce((so, slot, at) => so + own(at, slot, 0), 0)
    if (least < sum && total() < sum - 1e-9) return true
    restore(before)
    return false
  }
  // a move that only other dots than the cheapest make good
  const moveAfresh = (part: number, to: number): boolean => {
    const before = state()
    shift(part, to)
    for (let turn = 0; turn < 2; turn++) for (let other = 0; other < count; other++) repick(other)
    if (total() < before.sum - 1e-9) return true
    restore(before)
    return false
  }
  const isInConflict = (part: number) => against(part, slots[part]!, pick[part]!, -1) > 0
  // an exchange that only other dots than the cheapest make good
  const exchangeAfresh = (a: number, b: number): boolean => {
    const before = state()
    slots[a] = before.slots[b]!
    slots[b] = before.slots[a]!
    pick[a] = 0
    pick[b] = 0
    for (const part of [a, b, a]) repick(part)
    if (total() < before.sum - 1e-9) return true
    restore(before)
    return false
  }
  const hasConflict = () => total() >= conflictCost
  for (let round = 0; round < mostRounds; round++) {
    let changed = false
    for (let a = 0; a < count; a++) for (let b = a + 1; b < count; b++) changed = exchange(a, b) || changed
    for (let part = 0; part < count; part++) changed = repick(part) || changed
    if (hasConflict())
      for (let part = 0; part < count; part++)
        if (isInConflict(part))
          for (let to = 0, sum = total(); to < count; to++)
            if (to !== slots[part] && move(part, to, sum)) {
              changed = true
              sum = total()
            }
    if (!changed && hasConflict())
      for (let a = 0; a < count; a++)
        for (let b = 0; b < count && isInConflict(a); b++)
          if (b !== a) changed = exchangeAfresh(a, b) || changed
    if (!changed && total() >= crossing * conflictCost)
      for (let part = 0; part < count; part++)
        for (let to = 0; to < count && isInConflict(part); to++)
          if (to !== slots[part]) changed = moveAfresh(part, to) || changed
    if (!changed) break
  }
  const leaders = Array.from(slots, (slot, part) => leader(cell(part, slot), pick[part]!))
  return { slots, leaders: leaders.filter(it => it !== undefined), total: total() }
}

/** How bad two leaders of the table are for each other: asked often, so each answer between first choices is kept. */
const conflictsIn = (
  cheapest: readonly Leader[],
  leader: (cell: number, option: number) => Leader | undefined,
) => {
  const size = cheapest.length
  const known = new Uint8Array(size * size)
  const look = (cellA: number, optionA: number, cellB: number, optionB: number): number => {
    const [a, b] = [leader(cellA, optionA), leader(cellB, optionB)]
    return a !== undefined && b !== undefined ? conflictOf(a, b) : 0
  }
  return (cellA: number, optionA: number, cellB: number, optionB: number): number => {
    if (optionA + optionB > 0) return look(cellA, optionA, cellB, optionB)
    const at = cellA < cellB ? cellA * size + cellB : cellB * size + cellA
    if (known[at] === 0) known[at] = look(cellA, 0, cellB, 0) + 1
    return known[at]! - 1
  }
}
