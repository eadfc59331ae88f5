import { describe, expect, it } from 'vitest'
import type { Drawing } from '../../core/drawing'
import { formats, svgOf } from '../../core/export'
import { aHatchSheet } from '../given/a-hatch-sheet'
import { paintedByPoppler } from '../given/a-reader-of-pdf'
import { type Picture, shareThatDiffers } from '../given/a-reader-of-png'
import { paintedByChromium, paintedByRsvg } from '../given/a-renderer'
import { sampleSheets, sheetFonts, sheetsOf } from '../given/sample-sheets'

/** A page and a picture of one drawing, by two programs that know nothing of each other. */
const most = 0.01

const pageOf = async (drawing: Drawing): Promise<Picture> => {
  const pdf = formats.find(it => it.id === 'pdf')
  if (pdf === undefined) throw new Error('there is no PDF')
  return paintedByPoppler(await pdf.write(sheetsOf(drawing), sheetFonts), drawing.size_mm)
}

/** Painters of pictures kern words whatever they are told: pairs such as Te and Ta of one line add up to half a millimetre. */
const clear_px = 4

/** How many blocks of 5 × 5 pixels have ink in one picture while the other is white there and around. */
const missing = (inked: Picture, other: Picture): number => {
  let count = 0
  for (let y = 5; y + 10 < Math.min(inked.height, other.height); y += 5)
    for (let x = 5; x + 10 < Math.min(inked.width, other.width); x += 5)
      if (darkest(inked, x, y, 5) < 191 && darkest(other, x - clear_px, y - clear_px, 5 + 2 * clear_px) > 250)
        count++
  return count
}

const darkest = ({ width, rgb }: Picture, left: number, top: number, size: number): number => {
  let least = 255
  for (let y = top; y < top + size; y++)
    for (let at = (y * width + left) * 3; at < (y * width + left + size) * 3; at++)
      least = Math.min(least, rgb[at] ?? 255)
  return least
}

const sheets: readonly (readonly [string, Drawing])[] = [
  ['every hatch', aHatchSheet('de', 'colour')],
  ...sampleSheets({ language: 'de', palette: 'colour' })
    .slice(0, 2)
    .map(it => [it.name, it.drawing] as const),
  ...sampleSheets({ language: 'en', palette: 'black' })
    .slice(-1)
    .map(it => [it.name, it.drawing] as const),
]

describe('a PDF page shows what the SVG shows', () => {
  it.each(sheets)('%s', async (_, drawing) => {
    const page = await pageOf(drawing)
    const picture = paintedByRsvg(svgOf(drawing))
    expect(shareThatDiffers(page, picture)).toBeLessThanOrEqual(most)
    expect(missing(page, picture)).toBe(0)
    expect(missing(picture, page)).toBe(0)
  })

  it('in a browser too', async () => {
    const drawing = aHatchSheet('de', 'colour')
    const picture = await paintedByChromium(svgOf(drawing), drawing.size_mm)
    expect(shareThatDiffers(await pageOf(drawing), picture)).toBeLessThanOrEqual(most)
  })

  it('and a line that one of them lacks would be seen', async () => {
    const drawing = aHatchSheet('de', 'colour')
    const spoiled = svgOf(drawing).replace(/<text [^>]*>Stahlbeton<\/text>/, '')
    expect(missing(await pageOf(drawing), paintedByRsvg(spoiled))).toBeGreaterThan(0)
  })

  it('and a picture whose lines start 0.4 mm aside would be seen', async () => {
    const drawing = aHatchSheet('de', 'colour')
    const spoiled = svgOf(drawing).replaceAll(/ d="M[^"]*"/g, it =>
      it.replaceAll(/M([\d.]+)/g, (_, x: string) => `M${Number(x) + 0.4}`),
    )
    expect(shareThatDiffers(await pageOf(drawing), paintedByRsvg(spoiled))).toBeGreaterThan(most)
  })
})
