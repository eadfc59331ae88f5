import { describe, expect, it } from 'vitest'
import { type Drawing, inkOf, type Mark, sizeOnPaper_mm, type ViewMark } from '../../../core/drawing'
import { formats } from '../../../core/export'
import type { Point } from '../../../core/geometry'
import type { Some } from '../../../core/words'
import { dxfFaults, secondExtent } from '../../given/a-measure-of-dxf'
import { crossings, overlapping, struckThrough } from '../../given/a-measure-of-words'
import type { Painted } from '../../given/a-painted-page'
import { nothing, readAllByEzdxf } from '../../given/a-reader-of-dxf'
import { type IssuedPdf, type Page, readPdf } from '../../given/a-reader-of-issued-pdf'
import { issuedSheets, pairsMissing } from '../../given/issued-sheets'
import { sheetFonts, sheetsOf } from '../../given/sample-sheets'

const issued = issuedSheets()

/** Sheets of one language and one ink are written into one file: each is a page of it. */
const bundles = (['en', 'de'] as const).flatMap(language =>
  (['colour', 'black'] as const).map(palette => {
    const own = issued.filter(it => it.language === language && it.palette === palette)
    const pages = own.flatMap(sheet =>
      sheet.drawings.map((drawing, at) => ({ sheet, drawing, name: `${sheet.name} ${at + 1}` })),
    )
    return { name: `${language}, ${palette}`, pages }
  }),
)

const writtenAs = async (id: string, ...[drawing, ...more]: Some<Drawing>): Promise<Uint8Array> => {
  const format = formats.find(it => it.id === id)
  if (format === undefined) throw new Error(`there is no ${id}`)
  return format.write(sheetsOf(drawing, ...more), sheetFonts)
}

describe('the sheets that are tried', () => {
  it.each(['zone', 'cuts', 'report'] as const)('have every choice and every pair of choices: %s', of => {
    const own = issued.filter(it => it.of === of)
    expect(pairsMissing(own, ['sample', 'language', 'palette', 'unit'])).toEqual([])
    const sides = own.filter(it => it.of === 'zone')
    expect(pairsMissing(sides, ['side', 'language', 'palette', 'paper', 'unit'])).toEqual([])
  })

  it('are seen to lack what they lack', () => {
    const some = issued.filter(it => !(it.sample === 'right-jamb' && it.language === 'de'))
    expect(pairsMissing(some, ['sample', 'language'])).toEqual(['sample right-jamb with language de'])
  })
})

describe.each(bundles)('sheets issued as PDF, $name', ({ pages }) => {
  const [first, ...more] = pages.map(it => it.drawing)
  const file: Promise<IssuedPdf> = first
    ? writtenAs('pdf', first, ...more).then(readPdf)
    : Promise.reject(new Error('no sheets'))
  /** What is wrong on each page, with the name of its sheet. */
  const faults = async (read: (page: Page, drawing: Drawing) => readonly string[]) => {
    const { pages: found } = await file
    expect(found).toHaveLength(pages.length)
    return pages.flatMap(({ name, drawing }, at) => {
      const page = found[at]
      return page ? read(page, drawing).map(it => `${name}: ${it}`) : [`${name}: not there`]
    })
  }

  it('are a sound file with both of its fonts embedded', { timeout: 240_000 }, async () => {
    const { isSound, fonts } = await file
    expect(isSound).toBe(true)
    expect(fonts).toEqual(['yes yes yes', 'yes yes yes'])
  })

  it('have no words over words, and none off the paper', async () => {
    expect(await faults(page => overlapping(page.words))).toEqual([])
    expect(await faults((page, { size_mm }) => offPaper(page, size_mm))).toEqual([])
  })

  it('have no words that a line runs through or an area lies under', async () => {
    expect(await faults(page => struckThrough(page.words, page.painted))).toEqual([])
  })

  it('have leaders that do not cross', async () => {
    expect(await faults(page => crossed(page))).toEqual([])
  })

  it('say what their marks say, letter by letter', async () => {
    expect(await faults((page, drawing) => (page.letters === lettersOf(drawing) ? [] : ['letters']))).toEqual(
      [],
    )
  })

  it('are true to scale: frames, rulers, and every size as long as it says', async () => {
    expect(await faults((page, drawing) => untrue(page, drawing))).toEqual([])
  })
})

const offPaper = ({ words }: Page, [width, height]: Point): readonly string[] =>
  words
    .filter(({ low, high }) => low[0] < 3 || low[1] < 3 || width - 3 < high[0] || height - 3 < high[1])
    .map(it => it.words)

const leadersOn = ({ painted }: Page): readonly (readonly Point[])[] =>
  painted
    .filter(it => it.kind === 'stroke' && it.layer === 'numbers' && it.colour !== '1 1 1')
    .flatMap(it => it.paths)
    .filter(it => it.length < 4)

const crossed = (page: Page): readonly string[] => {
  const count = crossings(leadersOn(page))
  return count === 0 ? [] : [`${count} crossings`]
}

/** The letters of a drawing in the order in which they are painted. */
const lettersOf = (drawing: Drawing): string =>
  inkOf(drawing)
    .flatMap(it => it.inks)
    .flatMap(it => (it.kind === 'letters' ? [it.words] : []))
    .join('')
    .replaceAll(/\s/g, '')

/** So far a length on paper may be off: a thousandth of it, and what rounding to tenths or hundredths leaves. */
const share = 0.001

const untrue = (page: Page, drawing: Drawing): readonly string[] => {
  const lines = page.painted.filter(it => it.kind === 'stroke')
  const isSheet = drawing.marks.some(it => it.kind === 'view')
  if (!isSheet) return []
  const [width, height] = drawing.size_mm
  const frame = extentOf(
    lines.filter(
      it =>
        it.layer === 'sheet' && Math.abs(it.width_mm - 0.7) < 0.01 && it.paths.some(path => path.length > 4),
    ),
  )
  const off = Math.max(Math.abs(frame[0] / (width - 30) - 1), Math.abs(frame[1] / (height - 20) - 1))
  const ruler = drawing.marks.some(it => it.kind === 'text' && it.words.startsWith('4 in')) ? 101.6 : 100
  const measured = lines
    .filter(it => it.layer === 'sheet')
    .flatMap(it => it.paths.map(([a, b]) => (a && b ? Math.hypot(a[0] - b[0], a[1] - b[1]) : 0)))
  return [
    ...(off < share ? [] : [`frame ${off}`]),
    ...(measured.some(it => Math.abs(it / ruler - 1) < share) ? [] : ['ruler']),
    ...sizesOff(lines, drawing),
    ...enlargedOff(lines, drawing),
  ]
}

/** Enlarged views whose frame is not as large on the page as their part of the model at their scale. */
const enlargedOff = (lines: readonly Painted[], drawing: Drawing): readonly string[] =>
  drawing.marks.flatMap(view => {
    if (view.kind !== 'view' || !view.enlarged) return []
    const words = drawing.marks.flatMap(it => (it.kind === 'text' ? [it.words] : []))
    const scale = view.scale > 1 ? `${view.scale}:1` : `1:${1 / view.scale}`
    const wanted = sizeOnPaper_mm(view)
    const [x, y] = view.at
    const frames = lines
      .filter(it => it.layer === 'sheet' && it.paths.length === 1 && it.paths[0]?.length === 5)
      .filter(it => it.paths[0]?.some(at => Math.hypot(at[0] - x, at[1] - y) < 0.02))
      .map(it => extentOf([it]))
    return [
      ...(words.some(it => it.endsWith(`  ${scale}`)) ? [] : [`no heading says ${scale}`]),
      ...(frames.some(it => it.every((size, axis) => Math.abs(size / (wanted[axis as 0 | 1]) - 1) < share)) // both axes
        ? []
        : [`enlarged ${scale}`]),
    ]
  }) // prettier-ignore

const extentOf = (all: readonly Painted[]): Point => {
  const points = all.flatMap(it => it.paths.flat())
  const along = (axis: 0 | 1) => points.map(it => it[axis])
  return [Math.max(...along(0)) - Math.min(...along(0)), Math.max(...along(1)) - Math.min(...along(1))]
}

/** Sizes whose words are no distance between two strokes of a line on the page. */
const sizesOff = (lines: readonly Painted[], drawing: Drawing): readonly string[] => {
  const strokes = lines
    .filter(it => it.layer === 'sizes' && Math.abs(it.width_mm - 0.35) < 0.01)
    .flatMap(it =>
      it.paths.flatMap(([a, b]): Point[] => (a && b ? [[(a[0] + b[0]) / 2, (a[1] + b[1]) / 2]] : [])),
    )
  const found = strokes.flatMap(a =>
    strokes.flatMap(b => {
      const [x, y] = [Math.abs(a[0] - b[0]), Math.abs(a[1] - b[1])]
      return x < 0.01 ? [y] : y < 0.01 ? [x] : []
    }),
  )
  return drawing.marks.flatMap(view =>
    view.kind !== 'view'
      ? []
      : view.marks.flatMap(mark => {
          const length_mm = mark.kind === 'dimension' ? lengthIn(mark) : undefined
          if (length_mm === undefined) return []
          const paper = length_mm.value * view.scale
          const slack = paper * share + length_mm.step * view.scale + 0.002
          return found.some(it => Math.abs(it - paper) <= slack) ? [] : [`size ${paper}`]
        }),
  )
}

/** What the words of a size say in mm, and to which step; nothing where they say a range. */
const lengthIn = (mark: Extract<ViewMark, { kind: 'dimension' }>) => {
  if (/[±…]/.test(mark.words)) return undefined
  const value = Number(mark.words.replace(',', '.'))
  const true_mm = Math.hypot(mark.to[0] - mark.from[0], mark.to[1] - mark.from[1])
  // which unit a sheet has is not said with each size
  return Math.abs(value * 25.4 - true_mm) < Math.abs(value - true_mm)
    ? { value: value * 25.4, step: 0.254 * 0.99 }
    : { value, step: 0.051 }
}

describe('sheets issued as DXF', () => {
  const cases = issued.filter(it => it.of !== 'report').map((it, at) => ({ ...it, older: at % 2 === 1 }))
  const files = Promise.all(cases.map(it => writtenAs(it.older ? 'dxf-2000' : 'dxf', ...it.drawings)))
  const read = files.then(readAllByEzdxf)

  it(
    'are read by another library without an error or a fix, with all that is drawn',
    { timeout: 240_000 },
    async () => {
      const all = await read
      expect(all).toHaveLength(cases.length)
      const faults = cases.flatMap(({ name, drawings: [drawing] }, at) =>
        dxfFaults(all[at] ?? nothing, drawing).map(it => `${name}: ${it}`),
      )
      expect(faults).toEqual([])
      expect(all.map(it => it.version)).toEqual(cases.map(it => (it.older ? 'AC1015' : 'AC1021')))
    },
  )

  it('have one extent for both of two readers', async () => {
    const [bytes, all] = [await files, await read]
    // one in three of them: the second reader is slow, and what it could misread is in every sheet
    const off = cases.flatMap(({ name }, at) => {
      const { lowest = [], highest = [] } = all[at] ?? {}
      if (at % 3 !== 0) return []
      const { low, high } = secondExtent(Buffer.from(bytes[at] ?? new Uint8Array()).toString('utf8'))
      const apart = [...low, ...high].map((it, axis) => Math.abs(it - ([...lowest, ...highest][axis] ?? 0)))
      return apart.every(it => it < 0.002) ? [] : [name]
    })
    expect(off).toEqual([])
  })

  it('would be seen with a size less, and with an area that is 1 mm² larger', async () => {
    const [one] = await read
    const drawing = cases[0]?.drawings[0]
    if (one === undefined || drawing === undefined) throw new Error('no sheet')
    expect(
      dxfFaults({ ...one, sizes: one.sizes.slice(1), sizeWords: one.sizeWords.slice(1) }, drawing),
    ).not.toEqual([])
    const [[part, area] = ['', 0]] = Object.entries(one.areas)
    expect(dxfFaults({ ...one, areas: { ...one.areas, [part]: area + 1 } }, drawing)).toEqual(['areas'])
    expect(dxfFaults({ ...one, fixes: ['a handle'] }, drawing)).not.toEqual([])
  })

  it('would be seen with an enlarged joint that shows another place, hatches of the other scale, or a size in paper mm', async () => {
    const at = cases.findIndex(it => it.drawings[0].marks.some(isEnlarged))
    const [one, drawing] = [(await read)[at], cases[at]?.drawings[0]]
    if (one === undefined || drawing === undefined) throw new Error('no joint is enlarged')
    expect(dxfFaults(one, drawing)).toEqual([])
    const moved = one.viewports.map((it, view) => (view === 1 ? [...it.slice(0, 5), 0, 0] : it))
    expect(dxfFaults({ ...one, viewports: moved }, drawing)).not.toEqual([])
    expect(dxfFaults({ ...one, frozen: [[], []] }, drawing)).not.toEqual([])
    const onPaper = one.onPaper.map(it => ({ ...it, times: it.times * 2 }))
    expect(dxfFaults({ ...one, onPaper }, drawing)).not.toEqual([])
  })
})

const isEnlarged = (mark: Mark): boolean => mark.kind === 'view' && mark.enlarged === true

describe('a spoiled sheet is seen', () => {
  const sheet = issued.find(it => it.of === 'cuts' && it.unit === 'mm')?.drawings[0]
  if (sheet === undefined) throw new Error('no sheet')
  const read = async (drawing: Drawing): Promise<Page> => {
    const [page] = (await writtenAs('pdf', drawing).then(readPdf)).pages
    if (page === undefined) throw new Error('no page')
    return page
  }
  const spoiled = (spoil: (mark: ViewMark) => ViewMark): Drawing => ({
    ...sheet,
    marks: sheet.marks.map(it => (it.kind === 'view' ? { ...it, marks: it.marks.map(spoil) } : spoil(it))),
  })

  it('with words moved over others, and a line drawn through them', async () => {
    let places: Point[] = []
    const page = await read(
      spoiled(it => {
        if (it.kind !== 'text' || it.turn_deg !== 0) return it
        places = [...places, it.at]
        return places.length === 9 ? { ...it, at: places[7] ?? it.at } : it
      }),
    )
    expect(overlapping(page.words)).not.toEqual([])
    const [word] = page.words
    const [x, y] = word?.low ?? [0, 0]
    const through: Painted = { kind: 'stroke', layer: 'sizes', colour: '0 0 0', width_mm: 0.25, paths: [[[x, y + 1], [x + 9, y + 1]]] } // prettier-ignore
    expect(struckThrough(page.words, [through])).not.toEqual([])
    expect(struckThrough(page.words, [{ ...through, colour: '1 1 1' }])).toEqual([])
  })

  it('with a leader led across the others', async () => {
    let isFirst = true
    const page = await read(
      spoiled(it => {
        if (it.kind !== 'leader' || !isFirst) return it
        isFirst = false
        const [[x, y]] = it.path
        return { ...it, path: [[x - 400, y - 900], [x + 400, y + 900]] } // prettier-ignore
      }),
    )
    expect(crossed(page)).not.toEqual([])
  })

  it('with a word of its own, and with a size that says more than it is', async () => {
    const other = spoiled(it => (it.kind === 'dimension' ? { ...it, words: `${it.words}1` } : it))
    const page = await read(other)
    expect(page.letters).not.toBe(lettersOf(sheet))
    expect(sizesOff(page.painted, other)).not.toEqual([])
    expect(untrue(page, sheet)).toEqual([])
  })

  it('with an enlarged joint that is 0.2 % too large, or under the scale of another', async () => {
    const enlarged = issued.flatMap(it => it.drawings).find(it => it.marks.some(isEnlarged))
    if (enlarged === undefined) throw new Error('no joint is enlarged')
    const page = await read(enlarged)
    expect(untrue(page, enlarged)).toEqual([])
    const withScale = (times: number): Drawing => ({
      ...enlarged,
      marks: enlarged.marks.map(it =>
        isEnlarged(it) && it.kind === 'view' ? { ...it, scale: it.scale * times } : it,
      ),
    })
    expect(untrue(page, withScale(1.002))).not.toEqual([])
    expect(untrue(await read(withScale(1.002)), enlarged)).not.toEqual([])
    expect(untrue(page, withScale(2))).toEqual(expect.arrayContaining([expect.stringMatching(/^no heading/)]))
  })

  it('0.2 % too large', async () => {
    const page = await read(sheet)
    const large = page.painted.map(it => ({
      ...it,
      paths: it.paths.map(path => path.map(([x, y]): Point => [x * 1.002, y * 1.002])),
    }))
    expect(untrue({ ...page, painted: large }, sheet)).toEqual(
      expect.arrayContaining([expect.stringMatching(/^frame/), 'ruler']),
    )
  })
})
