/** A graph in compressed rows: the neighbours of row i are `columns[starts[i] … starts[i+1])`, itself left out. */
export type Graph = { readonly rows: number; readonly starts: Int32Array; readonly columns: Int32Array }

/** Parts this small are numbered as they come. Ours, measured: smaller or larger leaves fill and time alike. */
const leaf = 12

/**
 * An elimination order by nested dissection of the plane (George 1973): each half first, the vertices of one half
 * that touch the other last. Gives `order[new] = old`. Works on any graph; coordinates only make it good.
 */
export const nestedDissection = (graph: Graph, x: Float64Array, y: Float64Array): Int32Array => {
  const n = graph.rows
  const order = new Int32Array(n)
  const part = new Int32Array(n)
  const set = new Int32Array(n)
  for (let i = 0; i < n; i++) set[i] = i
  const scratch: Dissection = { graph, x, y, set, part, order, next: n, marks: 1 }
  dissect(scratch, 0, n)
  return order
}

type Dissection = {
  readonly graph: Graph
  readonly x: Float64Array
  readonly y: Float64Array
  /** Vertices, permuted so that each part is a run. */
  readonly set: Int32Array
  /** The part a vertex is in, while it is being looked at. */
  readonly part: Int32Array
  readonly order: Int32Array
  next: number
  marks: number
}

/** Numbers the run [begin, end) from the back: separator first, then both halves. */
const dissect = (scratch: Dissection, begin: number, end: number): void => {
  const { graph, set, part, order } = scratch
  if (end - begin <= leaf) {
    for (let i = begin; i < end; i++) order[--scratch.next] = set[i]!
    return
  }
  const middle = halve(scratch, begin, end)
  const mark = (scratch.marks += 2)
  for (let i = begin; i < middle; i++) part[set[i]!] = mark
  for (let i = middle; i < end; i++) part[set[i]!] = mark + 1
  // The vertices of the lower half that touch the upper one move to the end of the lower run.
  let last = middle
  for (let i = middle - 1; i >= begin; i--) {
    const v = set[i]!
    let touches = false
    for (let k = graph.starts[v]!; k < graph.starts[v + 1]! && !touches; k++)
      touches = part[graph.columns[k]!] === mark + 1
    if (!touches) continue
    last--
    set[i] = set[last]!
    set[last] = v
  }
  for (let i = last; i < middle; i++) order[--scratch.next] = set[i]!
  dissect(scratch, middle, end)
  if (last === begin || last === middle) {
    if (last > begin) dissect(scratch, begin, last)
    return
  }
  dissect(scratch, begin, last)
}

/** Quick-selects the median along the longer side of the box, so that the lower half comes first. Gives the middle. */
const halve = ({ x, y, set }: Dissection, begin: number, end: number): number => {
  let [left, right, bottom, top] = [Infinity, -Infinity, Infinity, -Infinity]
  for (let i = begin; i < end; i++) {
    const v = set[i]!
    left = Math.min(left, x[v]!)
    right = Math.max(right, x[v]!)
    bottom = Math.min(bottom, y[v]!)
    top = Math.max(top, y[v]!)
  }
  const along = right - left >= top - bottom ? x : y
  const middle = (begin + end) >> 1
  let [low, high] = [begin, end - 1]
  while (low < high) {
    const pivot = along[set[(low + high) >> 1]!]!
    let [i, j] = [low, high]
    while (i <= j) {
      while (along[set[i]!]! < pivot) i++
      while (along[set[j]!]! > pivot) j--
      if (i > j) break
      const swap = set[i]!
      set[i] = set[j]!
      set[j] = swap
      i++
      j--
    }
    if (middle <= j) high = j
    else if (middle >= i) low = i
    else break
  }
  return middle
}
