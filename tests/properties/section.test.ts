import { areaPaths, difference, FillRule, type Paths64, union } from 'clipper2-ts'
import { describe, expect, test } from 'vitest'
import { areaOf, grid_mm, type Outline, type Point, type Region } from '../../core/geometry'
import { cutSection, layoutOf, type Section } from '../../core/section'
import { paintedParts } from '../../core/section/cut'
import { frameOf, jointOf } from '../../core/detail'
import { type RandomDetail, randomDetail } from '../given/random-detail'

const many: readonly RandomDetail[] = Array.from({ length: 1000 }, (_, seed) => randomDetail(seed))
const widthOf = (it: RandomDetail): number => jointOf(it.project, it.place.zone).planned_mm.value
const cut = (it: RandomDetail): Section =>
  cutSection(it.project, it.place, { state: 'planned', width_mm: widthOf(it) })
const netArea = (it: Region): number => [it.outline, ...it.holes].reduce((sum, loop) => sum + areaOf(loop), 0)
const keyOf = (part: string, fill: Region['fill']): string =>
  `${part} ${fill.kind === 'air' ? fill.vented : fill.material}`

describe('1,000 random details', () => {
  test('have the areas that a general boolean library finds by painting the same outlines', () => {
    for (const it of many) {
      const expected = areasByLibrary(it)
      const found = new Map<string, number>()
      for (const region of cut(it).regions) {
        const key = keyOf(region.part, region.fill)
        found.set(key, (found.get(key) ?? 0) + netArea(region))
      }
      const domain = [...found.values()].reduce((sum, area) => sum + area, 0)
      for (const [key, area] of expected) {
        expect(Math.abs((found.get(key) ?? 0) - area), `seed ${it.seed}: ${key}`).toBeLessThan(1e-6 * domain)
      }
    }
  })

  test('are tiled: every edge has one region on each side, or lies on exactly one face', () => {
    for (const it of many) {
      const section = cut(it)
      const halves = new Map<string, number>()
      const add = (a: Point, b: Point) => halves.set(`${a};${b}`, (halves.get(`${a};${b}`) ?? 0) + 1)
      section.regions.forEach(({ outline, holes }) =>
        [outline, ...holes].forEach(loop => loop.forEach((a, i) => add(a, loop[(i + 1) % loop.length] ?? a))),
      )
      const onFace = new Set(
        section.faces.flatMap(face => face.path.slice(1).map((b, i) => `${face.path[i] ?? b};${b}`)),
      )
      for (const [half, count] of halves) {
        const [a, b] = half.split(';')
        expect(count, `seed ${it.seed}: ${half}`).toBe(1)
        expect(halves.has(`${b};${a}`) !== onFace.has(half), `seed ${it.seed}: ${half}`).toBe(true)
      }
    }
  })

  test('look outside and inside along one connected run each', () => {
    for (const it of many) {
      const looks = cut(it)
        .faces.map(face => face.to)
        .filter((to, i, all) => to !== 'cut' && all[i - 1] !== to)
      expect(looks, `seed ${it.seed}`).toEqual(['outside', 'inside'])
    }
  })

  test('have every vertex on the grid', () => {
    for (const it of many.slice(0, 100)) {
      const off = cut(it).regions.flatMap(({ outline, holes }) =>
        [outline, ...holes]
          .flat()
          .flat()
          .filter(at => Math.abs(at / grid_mm - Math.round(at / grid_mm)) > 1e-3),
      )
      expect(off, `seed ${it.seed}`).toEqual([])
    }
  })

  test('have lines that run along edges of regions only', () => {
    for (const it of many) {
      const section = cut(it)
      const edges = new Set(
        section.regions.flatMap(({ outline, holes }) =>
          [outline, ...holes].flatMap(loop => loop.map((a, i) => `${a};${loop[(i + 1) % loop.length] ?? a}`)),
        ),
      )
      for (const line of section.lines) {
        line.path.slice(1).forEach((b, i) => {
          const a = line.path[i] ?? b
          expect(
            edges.has(`${a};${b}`) || edges.has(`${b};${a}`),
            `seed ${it.seed}: ${line.id} ${a} ${b}`,
          ).toBe(true)
        })
      }
    }
  })
})

/** The same outlines in the same order, each less all that is painted after it. */
const areasByLibrary = (it: RandomDetail): ReadonlyMap<string, number> => {
  const areas = new Map<string, number>()
  let covered: Paths64 = []
  for (const { outline, label } of paintedParts(
    layoutOf(it.project, it.place, widthOf(it)),
  ).parts.toReversed()) {
    const here = asPaths(outline)
    const key = keyOf(label.part, label.fill)
    const left = areaPaths(difference(here, covered, FillRule.NonZero)) * grid_mm * grid_mm
    areas.set(key, (areas.get(key) ?? 0) + left)
    covered = union(covered, here, FillRule.NonZero)
  }
  // ground that the outlines enclose without covering it belongs to the gaps of the element
  const holes = covered.filter(it => areaPaths([it]) < 0)
  const gaps = keyOf(`${frameOf(it.project, it.place.opening).id}/gasket`, { kind: 'air', vented: 'closed' })
  areas.set(gaps, (areas.get(gaps) ?? 0) - areaPaths(holes) * grid_mm * grid_mm)
  return areas
}

const asPaths = (outline: Outline): Paths64 => [
  outline.map(([x, y]) => ({ x: Math.round(x / grid_mm), y: Math.round(y / grid_mm) })),
]
