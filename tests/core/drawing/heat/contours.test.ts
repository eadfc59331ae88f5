import { describe, expect, test } from 'vitest'
import { contoursOf } from '../../../../core/drawing/heat/contours/contours'
import { thinned } from '../../../../core/drawing/heat/contours/thin'
import { areaOf, type Outline, type Point } from '../../../../core/geometry'
import { type HeatCase, type Solution, solveCase, temperatureAt } from '../../../../core/heat'
import { aHeatPicture } from '../../../given/a-heat-picture'
import { outerEdges, randomHeatSection } from '../../../given/heat-section'
import { randomFrom } from '../../../given/random'

const edges_C = Array.from({ length: 39 }, (_, i) => i - 19)
const look = { edges_C, alone_C: [9.27, 12.62], tolerance_mm: 0.1 }

const solvedCase = (it: HeatCase): Solution => {
  const solved = solveCase(it)
  if (!solved.ok) throw new Error(JSON.stringify(solved.problems))
  return solved.value
}

const cuts = (
  [
    ['right-jamb', 'left'],
    ['bead-in-brick', 'sill'],
    ['on-consoles', 'head'],
  ] as const
).map(([file, side]) => [`${file}, ${side}`, aHeatPicture(file, side).picture.solution] as const)
const random = Array.from(
  { length: 40 },
  (_, i) => [`seed ${i}`, solvedCase(randomHeatSection(i + 1))] as const,
)
const all = [...cuts, ...random]

const withHoles = (outline: Outline, holes: readonly Outline[]): number =>
  areaOf(outline) + holes.reduce((sum, hole) => sum + areaOf(hole), 0)
const domain_mm2 = ({ case: { bodies } }: Solution): number =>
  bodies.reduce((sum, it) => sum + withHoles(it.outline, it.holes), 0)

describe('bands', () => {
  test.each(all)('%s: they tile what was solved', (_, it) => {
    const { bands } = contoursOf(it, look)
    const sum = bands.reduce(
      (area, { pieces }) => area + pieces.reduce((own, one) => own + withHoles(one.outline, one.holes), 0),
      0,
    )
    expect(Math.abs(sum / domain_mm2(it) - 1)).toBeLessThan(1e-9)
    for (const { pieces } of bands)
      for (const { outline, holes } of pieces) expect(withHoles(outline, holes)).toBeGreaterThan(0)
  })

  test.each(cuts)('%s: a place has the temperature of the band that it lies in', (_, it) => {
    const { bands } = contoursOf(it, { ...look, tolerance_mm: 0.01 })
    const next = randomFrom(5)
    const xs = it.case.bodies.flatMap(body => body.outline.map(([x]) => x))
    const ys = it.case.bodies.flatMap(body => body.outline.map(([, y]) => y))
    let found = 0
    for (let n = 0; n < 300; n++) {
      const at: Point = [
        next.between(Math.max(-200, Math.min(...xs)), Math.max(...xs)),
        next.between(Math.min(...ys), Math.max(...ys)),
      ]
      const value = temperatureAt(it, at)
      // Places by an edge of a band may lie on either side of a straight stretch of it.
      if (value === undefined || Math.abs(value - Math.round(value)) < 0.02) continue
      const of = bands.filter(({ pieces }) =>
        pieces.some(one => isIn(one.outline, at) && !one.holes.some(hole => isIn(hole, at))),
      )
      expect(of.map(({ band }) => band)).toEqual([edges_C.filter(edge => edge <= value).length])
      found++
    }
    expect(found).toBeGreaterThan(100)
  })
})

describe('lines', () => {
  test.each(all)('%s: they lie on their temperature, and are closed or end at the border', (_, it) => {
    const { lines } = contoursOf(it, look)
    const border = outerEdges(it.case.bodies)
    for (const { level_C, points, closed } of lines) {
      const [first, last] = [points[0], points.at(-1)]
      if (!first || !last) throw new Error('a line without places')
      if (closed) expect(last).toEqual(first)
      else
        for (const end of [first, last])
          expect(Math.min(...border.map(edge => distance(end, edge)))).toBeLessThan(1e-4)
      for (const at of points.filter((_at, i) => i % 7 === 0)) {
        const value = temperatureAt(it, at)
        if (value !== undefined) expect(Math.abs(value - level_C)).toBeLessThan(0.01)
      }
    }
  })

  test('they stand between each other as their temperatures do', () => {
    const strip: HeatCase = {
      name: 'strip',
      bodies: [{ name: 'a', outline: [[0, 0], [50, 0], [50, 100], [0, 100]], holes: [], lambda_W_mK: 1 }],
      surfaces: [
        { name: 'cold', h_W_m2K: 1e9, air_C: 0, edges: [[[0, 0], [50, 0]]] },
        { name: 'warm', h_W_m2K: 1e9, air_C: 10, edges: [[[50, 100], [0, 100]]] },
      ],
      foils: [],
      probes: {},
    } // prettier-ignore
    const { lines } = contoursOf(solvedCase(strip), { ...look, alone_C: [] })
    const between = lines.filter(it => 0 < it.level_C && it.level_C < 10)
    expect(between.map(it => it.level_C)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9])
    for (const { level_C, points } of between) {
      for (const [, y] of points) expect(y).toBeCloseTo(10 * level_C, 5)
      // the warmer side, y upwards, at the left: it runs from left to right
      expect((points.at(-1)?.[0] ?? 0) - (points[0]?.[0] ?? 0)).toBeCloseTo(50, 6)
    }
  })

  test('the same field gives the same lines', () => {
    const one = aHeatPicture('right-jamb', 'left').picture.solution
    const other = aHeatPicture('right-jamb', 'left').picture.solution
    expect(JSON.stringify(contoursOf(other, look))).toBe(JSON.stringify(contoursOf(one, look)))
  })
})

describe('a thinned line', () => {
  test.each(Array.from({ length: 200 }, (_, i) => i + 1))('seed %i: passes all that it leaves out', seed => {
    const next = randomFrom(seed)
    const [straight, tolerance_mm] = [next.between(0.2, 3), next.between(0.01, 0.5)]
    let [x, y, way] = [0, 0, 0]
    const points = Array.from({ length: 300 }, (): Point => {
      way += next.between(-1, 1) / straight
      const step = next.between(0, 1) ** 3
      return [(x += step * Math.cos(way)), (y += step * Math.sin(way))]
    })
    const kept = thinned(points, tolerance_mm)
    expect([kept[0], kept.at(-1)]).toEqual([points[0], points.at(-1)])
    expect(kept.length).toBeLessThan(points.length)
    let stretch = 0
    for (const at of points) {
      if (at === kept[stretch + 1] && stretch + 2 < kept.length) stretch++
      const near = [stretch - 1, stretch].flatMap(i => {
        const [a, b] = [kept[i], kept[i + 1]]
        return a && b ? [distance(at, [a, b])] : []
      })
      expect(Math.min(...near)).toBeLessThanOrEqual(tolerance_mm + 1e-12)
    }
  })
})

const isIn = (ring: Outline, [x, y]: Point): boolean => {
  let inside = false
  ring.forEach(([x1, y1], i) => {
    const [x0, y0] = ring.at(i - 1) ?? [x1, y1]
    if (y0 > y !== y1 > y && x < ((x0 - x1) * (y - y1)) / (y0 - y1) + x1) inside = !inside
  })
  return inside
}

const distance = ([x, y]: Point, [[ax, ay], [bx, by]]: readonly [Point, Point]): number => {
  const [dx, dy] = [bx - ax, by - ay]
  const share = Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy)))
  return Math.hypot(x - ax - share * dx, y - ay - share * dy)
}
