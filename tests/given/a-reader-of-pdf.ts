import { execFileSync, spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { mm_pt, paintedOn } from './a-painted-page'
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

/** The strokes of a page, without what it fills. */
export const strokesOf = (content: string): readonly Stroked[] =>
  paintedOn(content).flatMap(({ kind, width_mm, paths }) =>
    kind === 'stroke'
      ? [
          {
            width_pt: width_mm / mm_pt,
            points: paths.flat().map(([x, y]) => [x / mm_pt, y / mm_pt] as const),
          },
        ]
      : [],
  )

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
