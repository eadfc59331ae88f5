import { describe, expect, it } from 'vitest'
import { jointOf, type Project, samples, starters, type ZonePlace, zonesOf } from '../../../core/detail'
import {
  detailSheet,
  type Drawing,
  flatten,
  inkOf,
  type Letters,
  partNumbers,
  textWidth_mm,
  type ViewMark,
} from '../../../core/drawing'
import type { Point } from '../../../core/geometry'
import { cutSection } from '../../../core/section'
import type { Language } from '../../../core/words'
import { aWalledProject } from '../../given/a-walled-project'

const sheetOf = (project: Project, place: ZonePlace, language: Language): Drawing => {
  const width_mm = jointOf(project, place.zone).planned_mm.value
  const section = cutSection(project, place, { state: 'planned', width_mm })
  return detailSheet(project, place, section, { language, palette: language === 'en' ? 'colour' : 'black' })
}

const ofSamples = samples.flatMap((sample, at) => {
  const places = zonesOf(sample.project)
  // all sheets of all samples are held as the files that they are written to; here one of each is drawn
  const place = places[at % places.length]
  const language = at % 2 === 0 ? ('en' as const) : ('de' as const)
  return place ? [{ name: `${sample.file}, ${place.side}`, project: sample.project, place, language }] : []
})

const ofWalls = starters.flatMap(({ id }) => {
  const project = aWalledProject(id)
  return zonesOf(project)
    .filter(it => it.side !== 'right')
    .map(place => ({ name: `${id}, ${place.side}`, project, place, language: 'en' as const }))
})

const cases = [...ofSamples, ...ofWalls]

const lettersOn = (drawing: Drawing): readonly Letters[] =>
  inkOf(drawing).flatMap(group => group.inks.flatMap(it => (it.kind === 'letters' ? [it] : [])))

type Box = { readonly words: string; readonly low: Point; readonly high: Point }

/** The box of a line of words: letters may reach a quarter of their height below the line. */
const boxOf = (it: Letters): Box => {
  const width = textWidth_mm(it.words, it.height_mm, it.bold)
  const start = it.anchor === 'start' ? 0 : it.anchor === 'middle' ? -width / 2 : -width
  const [x, y] = it.at
  const below = it.height_mm * 0.25
  return it.turn_deg === 90
    ? { words: it.words, low: [x - it.height_mm, y + start], high: [x + below, y + start + width] }
    : { words: it.words, low: [x + start, y - below], high: [x + start + width, y + it.height_mm] }
}

const overlaps = (a: Box, b: Box): boolean =>
  a.low[0] < b.high[0] && b.low[0] < a.high[0] && a.low[1] < b.high[1] && b.low[1] < a.high[1]

const marksOn = (drawing: Drawing): readonly ViewMark[] =>
  drawing.marks.flatMap(it => (it.kind === 'view' ? flatten(it) : [it]))

const crosses = ([ax, ay]: Point, [bx, by]: Point, { low, high }: Box): boolean => {
  for (let step = 0; step <= 200; step++) {
    const [x, y] = [ax + ((bx - ax) * step) / 200, ay + ((by - ay) * step) / 200]
    if (low[0] < x && x < high[0] && low[1] < y && y < high[1]) return true
  }
  return false
}

describe.each(cases)('the sheet of $name', ({ project, place, language }) => {
  const drawing = sheetOf(project, place, language)
  const boxes = lettersOn(drawing).map(boxOf)

  it('has no words over other words, and none off the paper', () => {
    const met = boxes.flatMap((a, at) =>
      boxes.slice(at + 1).flatMap(b => (overlaps(a, b) ? [`${a.words} | ${b.words}`] : [])),
    )
    expect(met).toEqual([])
    const [width, height] = drawing.size_mm
    const off = boxes.filter(
      it => it.low[0] < 3 || it.low[1] < 3 || width - 3 < it.high[0] || height - 3 < it.high[1],
    )
    expect(off.map(it => it.words)).toEqual([])
  })

  it('has no words on what is cut', () => {
    const areas = marksOn(drawing).flatMap(it =>
      it.kind === 'area' && it.hatch && it.layer !== 'sheet' ? [it] : [],
    )
    const isIn = ([x, y]: Point, loops: readonly (readonly Point[])[]) => {
      let inside = false
      for (const loop of loops)
        loop.forEach(([bx, by], at) => {
          const [ax, ay] = loop[(at + loop.length - 1) % loop.length] ?? [bx, by]
          if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) inside = !inside
        })
      return inside
    }
    const on = boxes.filter(({ low, high }) => {
      const places: Point[] = [low, [high[0], low[1]], high, [low[0], high[1]], [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2]] // prettier-ignore
      return areas.some(it => places.some(place => isIn(place, [it.outline, ...it.holes])))
    })
    expect(on.map(it => it.words)).toEqual([])
  })

  it('has no words smaller than they may be', () => {
    for (const it of lettersOn(drawing)) expect(it.height_mm).toBeGreaterThanOrEqual(1.8)
    const small = lettersOn(drawing).filter(it => it.height_mm < 2.5)
    // captions of the title block and of the revisions over it only
    for (const it of small) expect(it.at[1]).toBeLessThan(65)
  })

  it('has leaders that neither cross nor run through words', () => {
    const leaders = marksOn(drawing).flatMap(it => (it.kind === 'leader' ? [it.path] : []))
    expect(leaders.length).toBeGreaterThan(5)
    const foreign = boxes.filter(it => !/^\d+$/.test(it.words))
    const through = leaders.flatMap(path =>
      path.slice(1).flatMap((to, at) => {
        const from = path[at]
        return from ? foreign.filter(box => crosses(from, to, box)).map(it => it.words) : []
      }),
    )
    expect(through).toEqual([])
    const segments = leaders.map(path => path.slice(1).map((to, at) => [path[at] ?? to, to] as const))
    const crossing = segments.flatMap((a, at) =>
      segments.slice(at + 1).filter(b => a.some(one => b.some(other => doCross(...one, ...other)))),
    )
    expect(crossing.length).toBe(0)
  })

  it('numbers every part that is drawn, outside to inside, as the parts list does', () => {
    const numbers = partNumbers(project, place)
    for (const mark of marksOn(drawing))
      if (mark.kind === 'leader') expect(mark.number).toBe(numbers.get(mark.part ?? ''))
  })

  it('has dimensions that measure what they say', () => {
    for (const mark of drawing.marks.flatMap(it => (it.kind === 'view' ? it.marks : []))) {
      // a range says where a joint was measured; it is cut at its planned width
      if (mark.kind !== 'dimension' || mark.words.includes('…')) continue
      const length = Math.hypot(mark.to[0] - mark.from[0], mark.to[1] - mark.from[1])
      expect(Math.abs(Number.parseFloat(mark.words.replace(',', '.')) - length), mark.words).toBeLessThan(
        0.05,
      )
    }
  })

  it('is the same when it is drawn again', () => {
    expect(inkOf(sheetOf(project, place, language))).toEqual(inkOf(drawing))
  })
})

const side = ([ax, ay]: Point, [bx, by]: Point, [x, y]: Point): number =>
  Math.sign((bx - ax) * (y - ay) - (by - ay) * (x - ax))
const doCross = (a: Point, b: Point, c: Point, d: Point): boolean =>
  side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0

describe('the black set', () => {
  it('is printed with black, greys of solid bodies, and paper', () => {
    const [first] = cases.filter(it => it.language === 'de')
    if (first === undefined) throw new Error('no sample')
    const colours = new Set(
      inkOf(sheetOf(first.project, first.place, 'de')).flatMap(group =>
        group.inks.flatMap(it => ('colour' in it ? [it.colour] : [])),
      ),
    )
    for (const colour of colours) {
      const [r, g, b] = [colour.slice(1, 3), colour.slice(3, 5), colour.slice(5, 7)]
      expect([r, g], colour).toEqual([g, b])
    }
  })
})
