import { execFileSync, spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type Picture, pictureOf } from './a-reader-of-png'

/** Runs a program on a file with these bytes; `FILE` in its arguments stands for the file. */
export const judged = (
  bytes: Uint8Array,
  program: string,
  ...args: readonly string[]
): { readonly code: number; readonly said: string } => {
  const path = join(mkdtempSync(join(tmpdir(), 'judged-')), 'sheet.pdf')
  writeFileSync(path, bytes)
  const { status, stdout, stderr } = spawnSync(
    program,
    args.map(it => it.replace('FILE', path)),
    {
      encoding: 'utf8',
      maxBuffer: 1 << 28,
    },
  )
  return { code: status ?? -1, said: `${stdout}${stderr}` }
}

/** A PDF as qpdf writes it anew. */
export const rewritten = (bytes: Uint8Array, ...how: readonly string[]): Uint8Array => {
  const path = join(mkdtempSync(join(tmpdir(), 'rewritten-')), 'sheet.pdf')
  writeFileSync(path, bytes)
  return execFileSync('qpdf', [...how, path, '-'], { maxBuffer: 1 << 28 })
}

/** A PDF with every stream unpacked, each byte a letter: what can be searched. */
export const unpacked = (bytes: Uint8Array): string =>
  Buffer.from(rewritten(bytes, '--qdf', '--object-streams=disable')).toString('latin1')

/** The content of each page, from an unpacked PDF. */
export const contentsOf = (pdf: string): readonly string[] =>
  pdf
    .split(/%% Contents for page \d+\n/)
    .slice(1)
    .map(it => it.slice(it.indexOf('stream\n') + 7, it.indexOf('\nendstream')))

/** A stroked path in points of the page: the widths of its pen and the places it passes. */
export type Stroked = { readonly width_pt: number; readonly points: readonly (readonly [number, number])[] }

type Matrix = readonly [number, number, number, number, number, number]

/** The strokes of a page, by reading its operators as any reader does. */
export const strokesOf = (content: string): readonly Stroked[] => {
  const strokes: Stroked[] = []
  let state: { matrix: Matrix; width: number } = { matrix: [1, 0, 0, 1, 0, 0], width: 1 }
  const kept: (typeof state)[] = []
  let path: [number, number][] = []
  let operands: string[] = []
  const at = (from: number): [number, number] => {
    const [x, y] = [Number(operands[from]), Number(operands[from + 1])]
    const [a, b, c, d, e, f] = state.matrix
    return [a * x + c * y + e, b * x + d * y + f]
  }
  const operators: Record<string, () => void> = {
    q: () => kept.push(state),
    Q: () => (state = kept.pop() ?? state),
    cm: () => {
      const [a = 1, b = 0, c = 0, d = 1, e = 0, f = 0] = operands.map(Number)
      const [A, B, C, D, E, F] = state.matrix
      state = {
        ...state,
        matrix: [
          a * A + b * C,
          a * B + b * D,
          c * A + d * C,
          c * B + d * D,
          e * A + f * C + E,
          e * B + f * D + F,
        ],
      }
    },
    w: () => (state = { ...state, width: Number(operands[0]) }),
    m: () => path.push(at(0)),
    l: () => path.push(at(0)),
    c: () => path.push(at(4)),
    S: () => {
      strokes.push({ width_pt: state.width * Math.abs(state.matrix[0]), points: path })
      path = []
    },
    f: () => (path = []),
    'f*': () => (path = []),
  }
  for (const token of content.split(/\s+/)) {
    if (/^[+-]?[\d.]+$/.test(token)) {
      operands.push(token)
      continue
    }
    if (Object.hasOwn(operators, token)) operators[token]?.()
    operands = []
  }
  return strokes
}

/** The extent of places: width and height. */
export const extentOf = (points: readonly (readonly [number, number])[]): readonly [number, number] => {
  let [left, low, right, high] = [Infinity, Infinity, -Infinity, -Infinity]
  for (const [x, y] of points) {
    left = Math.min(left, x)
    low = Math.min(low, y)
    right = Math.max(right, x)
    high = Math.max(high, y)
  }
  return [right - left, high - low]
}

/**
 * The first page as poppler paints it, at so many pixels a millimetre of its size; else it rounds sizes up and moves all.
 * It has two painters: `splash` draws thin lines onto whole pixels as a printer would, `cairo` leaves them where they are.
 */
export const paintedByPoppler = (
  bytes: Uint8Array,
  size_mm: readonly [number, number],
  {
    pixels_mm = 8,
    painter = 'splash',
  }: { readonly pixels_mm?: number; readonly painter?: 'splash' | 'cairo' } = {},
): Picture => {
  const folder = mkdtempSync(join(tmpdir(), 'poppler-'))
  const path = join(folder, 'sheet.pdf')
  writeFileSync(path, bytes)
  const [width = '', height = ''] = size_mm.map(it => `${Math.round(it * pixels_mm)}`)
  const asked = ['-scale-to-x', width, '-scale-to-y', height, '-f', '1', '-l', '1', '-singlefile', '-png']
  execFileSync(painter === 'cairo' ? 'pdftocairo' : 'pdftoppm', [...asked, path, join(folder, 'page')])
  return pictureOf(readFileSync(join(folder, 'page.png')))
}
