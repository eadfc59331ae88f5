import { describe, expect, it } from 'vitest'
import { type Sample, samples, zonesOf } from '../../core/detail'
import { cutsSheet, detailSheets, type Drawing, sheetScales } from '../../core/drawing'
import { formats, svgOf } from '../../core/export'
import { jointBand } from '../../core/movement'
import { cutSection } from '../../core/section'
import { aHatchSheet } from '../given/a-hatch-sheet'
import { paintedByPoppler } from '../given/a-reader-of-pdf'
import { type Picture, shareThatDiffers } from '../given/a-reader-of-png'
import { allPaintedByChromium, paintedByRsvg } from '../given/a-renderer'
import { cutsOf } from '../given/sample-cuts'
import { sheetFonts, sheetsOf } from '../given/sample-sheets'

/** Pages and pictures of one drawing, by three programs that know nothing of each other. */
const most = 0.01
const pixels_mm = 5

const pageOf = async (drawing: Drawing, painter: 'splash' | 'cairo'): Promise<Picture> => {
  const pdf = formats.find(it => it.id === 'pdf')
  if (pdf === undefined) throw new Error('there is no PDF')
  return paintedByPoppler(await pdf.write(sheetsOf(drawing), sheetFonts), drawing.size_mm, {
    pixels_mm,
    painter,
  })
}

/** Painters of pictures kern words whatever they are told: pairs such as Te and Ta of one line add up to half a millimetre. */
const clear_px = Math.ceil(0.5 * pixels_mm)

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

/** What two pictures of one drawing differ by. */
const differences = (page: Picture, picture: Picture): readonly string[] => {
  const share = shareThatDiffers(page, picture)
  const [lacks, more] = [missing(page, picture), missing(picture, page)]
  return [
    ...(share <= most ? [] : [`${(100 * share).toFixed(2)} % differ`]),
    ...(lacks === 0 ? [] : [`${lacks} blocks are empty`]),
    ...(more === 0 ? [] : [`${more} blocks are empty on the page`]),
  ]
}

const nth = <const T>(of: readonly [T, T], at: number): T => of[at % 2 === 0 ? 0 : 1]

/**
 * A sheet of every sample, with sides, languages, inks and sheets spread over them; of every eighth its three cuts too. Three
 * in four are on the small sheet, of every side: a picture costs as much as it is large.
 */
const sheetsOfSample = ({ file, project }: Sample, at: number): readonly (readonly [string, Drawing])[] => {
  const how = {
    language: nth(['de', 'en'], at),
    palette: nth(['colour', 'black'], Math.floor(at / 2)),
  } as const
  const places = zonesOf(project)
  const place = places[(at + Math.floor(at / 4)) % places.length]
  if (place === undefined) throw new Error('an opening has sides')
  const { planned_mm } = jointBand(project, place.opening, place.side, place.zone.id)
  const section = cutSection(project, place, { state: 'planned', width_mm: planned_mm })
  const isSmall = at % 4 !== 2
  const fits = isSmall && sheetScales(project, place, section, { ...how, paper: 'A4' }).length > 0
  const [first] = detailSheets(project, place, section, { ...how, ...(fits && { paper: 'A4' }) })
  return [
    [`${file}, ${place.side}, ${first.size_mm[0]} mm wide`, first],
    ...(at % 8 === 1 ? [[`${file}, three cuts`, cutsSheet(project, cutsOf(project), how)] as const] : []),
  ]
}

describe('a PDF page shows what the SVG shows', () => {
  const sheets = [['every hatch', aHatchSheet('de', 'colour')] as const, ...samples.flatMap(sheetsOfSample)]
  const pages = Promise.all(
    // a browser leaves lines where they are, so it is held against the painter that does
    sheets.map(([, drawing], at) => pageOf(drawing, at % 2 === 0 ? 'splash' : 'cairo')),
  )
  const compared = async (paint: (it: Drawing, at: number) => Picture | undefined, turn: 0 | 1) => {
    const painted = await pages
    return sheets.flatMap(([name, drawing], at) => {
      if (at % 2 !== turn) return []
      const [page, picture] = [painted[at], paint(drawing, at)]
      const found = page && picture ? differences(page, picture) : ['no picture']
      return found.map(it => `${name}: ${it}`)
    })
  }

  it('is tried on every sample, and on the small sheet at every side', () => {
    expect(samples.filter(it => !sheets.some(([name]) => name.startsWith(it.file)))).toEqual([])
    const small = new Set(sheets.flatMap(([name]) => /, (\w+), 210 mm wide/.exec(name)?.[1] ?? []))
    expect([...small].toSorted()).toEqual(['head', 'left', 'right', 'sill'])
  })

  // By turns: that both paint alike is held beside it, and every sample is seen by one of them.
  it('as librsvg paints it', { timeout: 240_000 }, async () => {
    expect(await compared(it => paintedByRsvg(svgOf(it), pixels_mm), 0)).toEqual([])
  })

  it('as a browser paints it', { timeout: 240_000 }, async () => {
    const own = sheets.filter((_, at) => at % 2 === 1)
    const svgs = own.map(([, drawing]) => ({ svg: svgOf(drawing), size_mm: drawing.size_mm }))
    const pictures = await allPaintedByChromium(svgs, pixels_mm)
    expect(await compared((_, at) => pictures[(at - 1) / 2], 1)).toEqual([])
  })

  it('and a word that one of them lacks would be seen', async () => {
    const spoiled = svgOf(sheets[0]?.[1] ?? aHatchSheet('de', 'colour')).replace(
      /<text [^>]*>Stahlbeton<\/text>/,
      '',
    )
    const [page] = await pages
    if (page === undefined) throw new Error('no page')
    expect(missing(page, paintedByRsvg(spoiled, pixels_mm))).toBeGreaterThan(0)
  })

  it.each([0, 1])('and a picture that lies 0.4 mm aside would be seen: sheet %d', async at => {
    const page = (await pages)[at]
    const drawing = sheets[at]?.[1]
    if (page === undefined || drawing === undefined) throw new Error('no page')
    const [width, height] = drawing.size_mm
    const spoiled = svgOf(drawing).replace(
      `viewBox="0 0 ${width} ${height}"`,
      `viewBox="-0.4 0 ${width} ${height}"`,
    )
    expect(differences(page, paintedByRsvg(spoiled, pixels_mm))).not.toEqual([])
  })
})
