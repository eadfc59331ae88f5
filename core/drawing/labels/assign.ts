/**
 * The cheapest way to give each row a column of its own, by the Hungarian method with potentials (n³).
 * `cost[row * count + column]` is finite; the answer names the column of each row.
 */
export const assign = (cost: Float64Array, count: number): Int32Array => {
  const rowPotential = new Float64Array(count + 1)
  const columnPotential = new Float64Array(count + 1)
  const rowOf = new Int32Array(count + 1)
  const from = new Int32Array(count + 1)
  for (let row = 1; row <= count; row++) {
    rowOf[0] = row
    let column = 0
    const least = new Float64Array(count + 1).fill(Infinity)
    const used = new Uint8Array(count + 1)
    while (rowOf[column] !== 0) {
      used[column] = 1
      const at = rowOf[column]!
      let [step, next] = [Infinity, 0]
      for (let to = 1; to <= count; to++) {
        if (used[to] === 1) continue
        const reduced = cost[(at - 1) * count + to - 1]! - rowPotential[at]! - columnPotential[to]!
        if (reduced < least[to]!) {
          least[to] = reduced
          from[to] = column
        }
        if (least[to]! < step) {
          step = least[to]!
          next = to
        }
      }
      for (let to = 0; to <= count; to++) {
        if (used[to] === 1) {
          const owner = rowOf[to]!
          rowPotential[owner] = rowPotential[owner]! + step
          columnPotential[to] = columnPotential[to]! - step
        } else least[to] = least[to]! - step
      }
      column = next
    }
    while (column !== 0) {
      const before = from[column]!
      rowOf[column] = rowOf[before]!
      column = before
    }
  }
  const columnOf = new Int32Array(count)
  for (let column = 1; column <= count; column++) columnOf[rowOf[column]! - 1] = column - 1
  return columnOf
}
