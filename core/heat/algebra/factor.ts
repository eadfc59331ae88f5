import type { Graph } from './ordering'

/**
 * A sparse Cholesky factor: its pattern, made once per mesh, and its numbers, renewed in place. Rows and columns are
 * in elimination order. L is kept by columns with the diagonal apart; `rowOf[k]` are ascending in each column.
 */
export type Factor = {
  readonly rows: number
  /** `order[new] = old`, `place[old] = new`. */
  readonly order: Int32Array
  readonly place: Int32Array
  readonly starts: Int32Array
  readonly rowOf: Int32Array
  readonly values: Float64Array
  /** 1 / L_jj. */
  readonly inverse: Float64Array
  /** Where the row of the factor starts: the columns that update row i, in ascending order. */
  readonly rowStarts: Int32Array
  readonly columnOf: Int32Array
  readonly work: Float64Array
  readonly front: Int32Array
}

/** The pattern of the factor of a symmetric matrix in a given order (elimination tree and row subtrees; Liu 1990). */
export const factorPattern = (graph: Graph, order: Int32Array): Factor => {
  const n = graph.rows
  const place = new Int32Array(n)
  for (let i = 0; i < n; i++) place[order[i]!] = i
  const parent = new Int32Array(n).fill(-1)
  const ancestor = new Int32Array(n).fill(-1)
  const counts = new Int32Array(n)
  const mark = new Int32Array(n).fill(-1)
  // Elimination tree with path compression.
  for (let i = 0; i < n; i++) {
    const old = order[i]!
    for (let k = graph.starts[old]!; k < graph.starts[old + 1]!; k++) {
      let j = place[graph.columns[k]!]!
      while (j < i && j >= 0) {
        const up = ancestor[j]!
        ancestor[j] = i
        if (up < 0) parent[j] = i
        j = up < 0 ? i : up
      }
    }
  }
  // Row i of L: the tree paths from its entries up to i.
  const rowStarts = new Int32Array(n + 1)
  for (let i = 0; i < n; i++) {
    mark[i] = i
    const old = order[i]!
    let length = 0
    for (let k = graph.starts[old]!; k < graph.starts[old + 1]!; k++)
      for (let j = place[graph.columns[k]!]!; j < i && mark[j] !== i; j = parent[j]!) {
        mark[j] = i
        counts[j] = counts[j]! + 1
        length++
      }
    rowStarts[i + 1] = rowStarts[i]! + length
  }
  const starts = new Int32Array(n + 1)
  for (let j = 0; j < n; j++) starts[j + 1] = starts[j]! + counts[j]!
  const size = starts[n]!
  const rowOf = new Int32Array(size)
  const columnOf = new Int32Array(size)
  const fill = starts.slice()
  mark.fill(-1)
  for (let i = 0; i < n; i++) {
    mark[i] = i
    const old = order[i]!
    for (let k = graph.starts[old]!; k < graph.starts[old + 1]!; k++)
      for (let j = place[graph.columns[k]!]!; j < i && mark[j] !== i; j = parent[j]!) {
        mark[j] = i
        rowOf[fill[j]!++] = i
      }
  }
  // The rows are the columns turned: read in ascending order of columns they come out sorted.
  const next = rowStarts.slice()
  for (let j = 0; j < n; j++)
    for (let k = starts[j]!; k < starts[j + 1]!; k++) columnOf[next[rowOf[k]!]!++] = j
  return {
    rows: n,
    order,
    place,
    starts,
    rowOf,
    rowStarts,
    columnOf, // prettier-ignore
    values: new Float64Array(size),
    inverse: new Float64Array(n),
    work: new Float64Array(n),
    front: new Int32Array(n),
  }
}

/**
 * Renews the factor's numbers, row by row (up-looking). `diagonal` and the entries of the graph are the matrix;
 * a pivot that rounding has eaten is replaced by the matrix's own diagonal, so the factor always exists: it then
 * preconditions a little less well, and the iteration corrects it. Gives how many pivots were replaced.
 */
export const factorise = (
  scratch: Factor,
  graph: Graph,
  entries: Float64Array,
  diagonal: Float64Array,
): number => {
  const { rows, order, place, starts, rowOf, values, inverse, rowStarts, columnOf, work, front } = scratch
  front.set(starts.subarray(0, rows))
  work.fill(0)
  let replaced = 0
  for (let i = 0; i < rows; i++) {
    const old = order[i]!
    for (let k = graph.starts[old]!; k < graph.starts[old + 1]!; k++) {
      const j = place[graph.columns[k]!]!
      if (j < i) work[j] = entries[k]!
    }
    let pivot = diagonal[old]!
    for (let k = rowStarts[i]!; k < rowStarts[i + 1]!; k++) {
      const j = columnOf[k]!
      const l = work[j]! * inverse[j]!
      work[j] = 0
      const end = front[j]!
      for (let m = starts[j]!; m < end; m++) {
        const row = rowOf[m]!
        work[row] = work[row]! - values[m]! * l
      }
      pivot -= l * l
      values[end] = l
      front[j] = end + 1
    }
    if (!(pivot > smallestPivot * diagonal[old]!)) {
      pivot = diagonal[old]! > 0 ? diagonal[old]! : 1
      replaced++
    }
    inverse[i] = 1 / Math.sqrt(pivot)
  }
  return replaced
}

/** Below this share of its diagonal a pivot is rounding. Ours: an island without film has a pivot of pure rounding. */
const smallestPivot = 1e-13

/** Solves L Lᵀ z = r in the vertex numbering of the matrix. `z` may be `r`. */
export const solveFactor = (
  { rows, order, starts, rowOf, values, inverse, work }: Factor,
  r: Float64Array,
  z: Float64Array,
): void => {
  for (let j = 0; j < rows; j++) work[j] = r[order[j]!]!
  for (let j = 0; j < rows; j++) {
    const value = work[j]! * inverse[j]!
    work[j] = value
    const end = starts[j + 1]!
    for (let m = starts[j]!; m < end; m++) {
      const row = rowOf[m]!
      work[row] = work[row]! - values[m]! * value
    }
  }
  for (let j = rows - 1; j >= 0; j--) {
    let value = work[j]!
    const end = starts[j + 1]!
    for (let m = starts[j]!; m < end; m++) value -= values[m]! * work[rowOf[m]!]!
    value *= inverse[j]!
    work[j] = value
    z[order[j]!] = value
  }
}
