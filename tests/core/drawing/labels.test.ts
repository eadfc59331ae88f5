import { describe, expect, it } from 'vitest'
import { type Sample, samples, zonesOf } from '../../../core/detail'
import {
  detailSheet,
  type Drawing,
  hatches,
  inkOf,
  layOut,
  placeView,
  type View,
} from '../../../core/drawing'
import type { Point } from '../../../core/geometry'
import { jointBand } from '../../../core/movement'
import { cutSection } from '../../../core/section'
import type { Language } from '../../../core/words'
import { crossings } from '../../given/a-measure-of-words'

const sampleNamed = (file: string): Sample => {
  const found = samples.find(it => it.file === file)
  if (found === undefined) throw new Error(`there is no sample ${file}`)
  return found
}

const smallSheet = (file: string, side: string, language: Language): Drawing => {
  const { project } = sampleNamed(file)
  const place = zonesOf(project).find(it => it.side === side)
  if (place === undefined) throw new Error(`nothing is at the ${side}`)
  const { planned_mm } = jointBand(project, place.opening, place.side, place.zone.id)
  const section = cutSection(project, place, { state: 'planned', width_mm: planned_mm })
  return detailSheet(project, place, section, { language, palette: 'black', paper: 'A4', enlarged: 'none' })
}

const viewOn = (drawing: Drawing): View => {
  const view = drawing.marks.find(it => it.kind === 'view')
  if (view === undefined) throw new Error('no view')
  return view
}

/** The leaders of a view as they lie on the sheet. */
const leadersOn = (drawing: Drawing): readonly (readonly Point[])[] => {
  const view = viewOn(drawing)
  const { toPaper } = placeView(view)
  return view.marks.flatMap(it => (it.kind === 'leader' ? [it.path.map(toPaper)] : []))
}

const slopeOf_deg = ([a, b]: readonly Point[]): number =>
  a && b ? (Math.atan2(Math.abs(b[1] - a[1]), Math.abs(b[0] - a[0])) * 180) / Math.PI : 0

const cases = [
  ['right-jamb', 'head', 'en'],
  ['right-jamb', 'sill', 'de'],
  ['timber-wall', 'head', 'de'],
  ['timber-wall', 'sill', 'en'],
  ['facing-leaf', 'head', 'en'],
  ['flush-in-sand-lime', 'sill', 'en'],
] as const

describe.each(cases)('the labels of %s, %s, %s, on the small sheet', (file, side, language) => {
  const drawing = smallSheet(file, side, language)
  const leaders = leadersOn(drawing)

  it('stand on both sides', () => {
    const [left, right] = [-1, 1].map(way => leaders.filter(it => Math.sign(endOf(it) - startOf(it)) === way))
    expect(left?.length).toBeGreaterThanOrEqual(3)
    expect(right?.length).toBeGreaterThanOrEqual(3)
  })

  it('have short leaders that do not cross and bend once at the most', () => {
    expect(crossings(leaders)).toBe(0)
    for (const path of leaders) {
      expect(path.length).toBeLessThanOrEqual(3)
      const [from, knee] = path
      // as far as half the height of the room for a section
      if (from && knee) expect(Math.abs(knee[1] - from[1])).toBeLessThan(85)
    }
  })

  it('stand one pitch apart in each column', () => {
    const ends = leaders.map(it => it[it.length - 1] ?? [0, 0])
    for (const x of new Set(ends.map(it => it[0].toFixed(2)))) {
      const ys = ends.filter(it => it[0].toFixed(2) === x).map(it => it[1])
      const steps = ys.toSorted((a, b) => b - a).map((y, at, all) => y - (all[at + 1] ?? y))
      for (const step of steps.slice(0, -1)) expect(step).toBeCloseTo(steps[0] ?? 0, 2)
    }
  })
})

const startOf = (path: readonly Point[]): number => path[0]?.[0] ?? 0
const endOf = (path: readonly Point[]): number => path[path.length - 1]?.[0] ?? 0

describe('the slope of leaders', () => {
  it('is 60° over masonry, and 75° over rigid foam that lies turned in a head', () => {
    const usual = leadersOn(smallSheet('right-jamb', 'head', 'en')).filter(it => it.length > 2)
    const turned = leadersOn(smallSheet('flush-in-sand-lime', 'head', 'en')).filter(it => it.length > 2)
    expect(usual.filter(it => Math.abs(slopeOf_deg(it) - 60) < 0.1).length).toBeGreaterThan(usual.length / 2)
    expect(turned.map(it => Math.round(slopeOf_deg(it)))).toEqual(turned.map(() => 75))
  })

  it('keeps 10° off every straight hatch of the picture', () => {
    const drawing = smallSheet('flush-in-sand-lime', 'sill', 'en')
    const view = viewOn(drawing)
    const { toPaper } = placeView(view)
    const keys = new Set(view.marks.flatMap(it => (it.kind === 'area' && it.hatch ? [it.hatch.key] : [])))
    const straight = new Set(hatches.filter(it => (it.families ?? []).length > 0).map(it => it.key))
    expect([...keys].some(it => straight.has(it))).toBe(true)
    const lines = inkOf({ ...drawing, marks: [{ ...view, marks: view.marks.filter(isHatched(straight)) }] })
      .flatMap(it => it.inks)
      .flatMap(it => (it.kind === 'stroke' && it.pen === 'hatch' ? it.lines : []))
    expect(lines.length).toBeGreaterThan(20)
    const slopes = leadersOn(drawing)
      .filter(it => it.length > 2)
      .map(([a, b]) => directionOf_deg(a ?? [0, 0], b ?? [0, 0]))
    const hatched = lines.map(it =>
      directionOf_deg(toPaper([it[0] ?? 0, it[1] ?? 0]), toPaper([it[2] ?? 0, it[3] ?? 0])),
    )
    for (const slope of slopes)
      for (const it of hatched) {
        const apart = Math.abs(slope - it)
        expect(Math.min(apart, 180 - apart)).toBeGreaterThan(9.9)
      }
  })
})

const isHatched =
  (keys: ReadonlySet<string>) =>
  (it: View['marks'][number]): boolean =>
    it.kind === 'area' && it.hatch !== undefined && keys.has(it.hatch.key)

const directionOf_deg = (a: Point, b: Point): number =>
  ((Math.atan2(b[1] - a[1], b[0] - a[0]) * 180) / Math.PI + 180) % 180

describe('thirty items in one column', () => {
  it('are numbered without a conflict, and always alike', () => {
    const sites = Array.from({ length: 30 }, (_, at) => {
      const [x, y] = [(at % 5) * 18, Math.floor(at / 5) * 30]
      const loop: Point[] = [[x, y], [x + 14, y], [x + 14, y + 24], [x, y + 24]] // prettier-ignore
      return { id: `${at}`, shapes: [{ loops: [loop] }], places: [] }
    })
    const column = { side: 'right', x: 110, low: 0, high: 200, pitch_mm: 6.5 } as const
    const picture = { bodies: sites.flatMap(it => it.shapes), words: [] }
    const laid = layOut(sites, picture, column)
    expect(laid.conflicts).toBe(0)
    expect(layOut(sites, picture, column)).toEqual(laid)
  })
})
