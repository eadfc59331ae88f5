import { execFileSync, spawnSync } from 'node:child_process'
import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type Box, letterBox } from './a-measure-of-words'
import { paintedOn, type Painted } from './a-painted-page'
import { contentsOf } from './a-reader-of-pdf'

/** A page as programs see it that know nothing of this project: its words in boxes, all its letters, what it paints. */
export type Page = {
  readonly words: readonly Box[]
  readonly letters: string
  readonly painted: readonly Painted[]
}

/** A file of many pages: what qpdf says of it, its fonts as pdffonts names them (embedded, subset, readable), its pages. */
export type IssuedPdf = {
  readonly isSound: boolean
  readonly fonts: readonly string[]
  readonly pages: readonly Page[]
}

/** Reads a PDF of any number of pages with four programs that are each started once. */
export const readPdf = (bytes: Uint8Array): IssuedPdf => {
  const folder = mkdtempSync(join(tmpdir(), 'issued-'))
  const path = join(folder, 'sheets.pdf')
  writeFileSync(path, bytes)
  const said = (program: string, ...args: readonly string[]): string =>
    execFileSync(program, args, { encoding: 'utf8', maxBuffer: 1 << 30 })
  const isSound = spawnSync('qpdf', ['--check', path]).status === 0
  const fonts = said('pdffonts', path)
    .split('\n')
    .slice(2)
    .filter(it => it !== '')
    .map(it => /(yes|no) +(yes|no) +(yes|no)/.exec(it)?.slice(1).join(' ') ?? it)
  const letters = said('pdftotext', '-raw', '-enc', 'UTF-8', path, '-').split('\f')
  const boxes = said('pdftotext', '-bbox', path, '-').split('<page ').slice(1)
  const unpacked = execFileSync('qpdf', ['--qdf', '--object-streams=disable', path, '-'], {
    maxBuffer: 1 << 30,
  })
  const contents = contentsOf(unpacked.toString('latin1'))
  return {
    isSound,
    fonts,
    pages: contents.map((content, at) => ({
      words: wordsIn(boxes[at] ?? ''),
      letters: (letters[at] ?? '').replaceAll(/\s/g, ''),
      painted: paintedOn(content),
    })),
  }
}

const mm_pt = 25.4 / 72

/** Words with the boxes of their ink in mm, y upwards, from what pdftotext says of a page. */
const wordsIn = (page: string): readonly Box[] => {
  const height = Number(/height="([\d.]+)"/.exec(page)?.[1]) * mm_pt
  return [
    ...page.matchAll(
      /<word xMin="([\d.-]+)" yMin="([\d.-]+)" xMax="([\d.-]+)" yMax="([\d.-]+)">(.*?)<\/word>/g,
    ),
  ].map(([, x0, y0, x1, y1, words = '']) => {
    const [left, top, right, low] = [x0, y0, x1, y1].map(it => Number(it) * mm_pt)
    return letterBox(plain(words), {
      low: [left ?? 0, height - (low ?? 0)],
      high: [right ?? 0, height - (top ?? 0)],
    })
  })
}

const plain = (words: string): string =>
  words.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&quot;', '"').replaceAll('&amp;', '&')
