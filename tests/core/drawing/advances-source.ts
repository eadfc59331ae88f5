import { create } from 'fontkit'

const blocks = [
  [0x20, 0x7e],
  [0xa0, 0x17f],
  [0x370, 0x3ff],
  [0x400, 0x45f],
  [0x2010, 0x2044],
  [0x2070, 0x209c],
  [0x20ac, 0x20ac],
  [0x2122, 0x2122],
  [0x2202, 0x2265],
] as const

/** The text of the metrics table that belongs to the two fonts. */
export const advancesSource = (
  regular: Uint8Array,
  bold: Uint8Array,
): string => `import { type Block, tableOf } from './table-of'

/*
 * Advance widths in 2048ths of the font size, by blocks of code points: made from assets/fonts, never edited.
 * A test holds the table and the fonts equal; run it with WRITE_ADVANCES=1 after a change of font.
 */

// prettier-ignore
const regular: readonly Block[] = [
${blocksOf(regular)}]

// prettier-ignore
const bold: readonly Block[] = [
${blocksOf(bold)}]

/** Widths of the letters of both fonts; a letter that a font lacks has no entry. */
export const advances = { regular: tableOf(regular), bold: tableOf(bold) }

/** What a letter without an entry is taken for: a square as high as the font size, as other fonts draw it. */
export const unknownAdvance = 2048
`

const blocksOf = (bytes: Uint8Array): string => {
  const font = create(Buffer.from(bytes))
  const known = new Set(font.characterSet)
  const lineOf = ([first, last]: readonly [number, number]) => {
    const widths = Array.from({ length: last - first + 1 }, (_, at) =>
      known.has(first + at) ? font.glyphForCodePoint(first + at).advanceWidth : 0,
    )
    return `  [0x${first.toString(16)}, [${widths.join(',')}]],\n`
  }
  return blocks.map(lineOf).join('')
}
