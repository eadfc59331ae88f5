import type { Point } from '../../core/geometry'

/** What a page paints at once, in mm of the page, y upwards: lines or areas of one colour on one layer. */
export type Painted = {
  readonly kind: 'stroke' | 'fill'
  readonly layer: string
  /** red, green and blue from 0 to 1 */
  readonly colour: string
  readonly width_mm: number
  readonly paths: readonly (readonly Point[])[]
}

type Matrix = readonly [number, number, number, number, number, number]
type State = { readonly matrix: Matrix; readonly width: number; readonly line: string; readonly area: string }

/** Millimetres in a point. */
export const mm_pt = 25.4 / 72

/** What the content of a page paints, by following its operators as a reader must. Bows become nine short lines. */
export const paintedOn = (content: string): readonly Painted[] => {
  const painted: Painted[] = []
  let state: State = { matrix: [1, 0, 0, 1, 0, 0], width: 1, line: '0 0 0', area: '0 0 0' }
  const kept: State[] = []
  let paths: Point[][] = []
  let operands: number[] = []
  let names: string[] = []
  let layer = ''
  const place = (x: number, y: number): Point => {
    const [a, b, c, d, e, f] = state.matrix
    return [(a * x + c * y + e) * mm_pt, (b * x + d * y + f) * mm_pt]
  }
  const at = (from: number): Point => place(operands[from] ?? 0, operands[from + 1] ?? 0)
  const paint = (kind: Painted['kind'], colour: string) => {
    const width_mm = state.width * Math.abs(state.matrix[0]) * mm_pt
    if (paths.length > 0) painted.push({ kind, layer, colour, width_mm, paths })
    paths = []
  }
  const operators: Readonly<Record<string, () => void>> = {
    q: () => kept.push(state),
    Q: () => (state = kept.pop() ?? state),
    cm: () => (state = { ...state, matrix: product(operands, state.matrix) }),
    w: () => (state = { ...state, width: operands[0] ?? 0 }),
    RG: () => (state = { ...state, line: operands.join(' ') }),
    rg: () => (state = { ...state, area: operands.join(' ') }),
    BDC: () => (layer = names[0] === 'OC' ? (names[1] ?? '') : layer),
    m: () => paths.push([at(0)]),
    l: () => paths.at(-1)?.push(at(0)),
    c: () => paths.at(-1)?.push(...bow(paths.at(-1)?.at(-1) ?? at(0), at(0), at(2), at(4))),
    h: () => paths.at(-1)?.push(...(paths.at(-1)?.slice(0, 1) ?? [])),
    S: () => paint('stroke', state.line),
    f: () => paint('fill', state.area),
    'f*': () => paint('fill', state.area),
    n: () => (paths = []),
  }
  // A reader need not know words or colours of other kinds: operators that are not listed only end their operands.
  for (const token of content.split(/\s+/)) {
    const value = Number(token)
    if (token !== '' && !Number.isNaN(value)) operands.push(value)
    else if (token.startsWith('/')) names.push(token.slice(1))
    else {
      if (Object.hasOwn(operators, token)) operators[token]?.()
      if (/^[A-Za-z*'"]/.test(token)) [operands, names] = [[], []]
    }
  }
  return painted
}

const product = (of: readonly number[], [A, B, C, D, E, F]: Matrix): Matrix => {
  const [a = 1, b = 0, c = 0, d = 1, e = 0, f = 0] = of
  return [a * A + b * C, a * B + b * D, c * A + d * C, c * B + d * D, e * A + f * C + E, e * B + f * D + F]
}

const bow = (from: Point, a: Point, b: Point, to: Point): readonly Point[] =>
  Array.from({ length: 9 }, (_, at): Point => {
    const t = (at + 1) / 9
    const s = 1 - t
    const on = (axis: 0 | 1) =>
      s ** 3 * from[axis] + 3 * s * s * t * a[axis] + 3 * s * t * t * b[axis] + t ** 3 * to[axis]
    return [on(0), on(1)]
  })
