import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  drawHatch,
  flatten,
  hatches,
  hatchOf,
  placeView,
  type Hatching,
  type View,
} from '../../../core/drawing'
import type { Point } from '../../../core/geometry'
import { materials } from '../../../core/materials'

type Area = { readonly outline: readonly Point[]; readonly holes: readonly (readonly Point[])[] }

const box = (x0: number, y0: number, x1: number, y1: number): Point[] => [
  [x0, y0],
  [x1, y0],
  [x1, y1],
  [x0, y1],
]
const hatching = (key: string, more: Partial<Hatching> = {}): Hatching => ({
  key,
  origin: [0, 0],
  turn_deg: 0,
  size: [60, 40],
  ...more,
})
const lined = hatches.filter(it => it.solid === undefined && it.key !== 'air_cavity').map(it => it.key)

const isInside = ([x, y]: Point, { outline, holes }: Area): boolean => {
  let inside = false
  for (const loop of [outline, ...holes])
    loop.forEach(([bx, by], at) => {
      const [ax, ay] = loop[(at + loop.length - 1) % loop.length] ?? [bx, by]
      if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) inside = !inside
    })
  return inside
}
const offEdges = ([x, y]: Point, { outline, holes }: Area): number =>
  Math.min(
    ...[outline, ...holes].flatMap(loop =>
      loop.map(([bx, by], at) => {
        const [ax, ay] = loop[(at + loop.length - 1) % loop.length] ?? [bx, by]
        const [dx, dy] = [bx - ax, by - ay]
        const share = Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy || 1)))
        return Math.hypot(ax + share * dx - x, ay + share * dy - y)
      }),
    ),
  )

const pairsOf = (line: readonly number[]): Point[] =>
  line.flatMap((x, at) => (at % 2 === 0 ? [[x, line[at + 1] ?? 0] as const] : []))

const middlesOf = (points: readonly Point[]): Point[] =>
  points.slice(1).map(([x, y], at) => [(x + (points[at]?.[0] ?? x)) / 2, (y + (points[at]?.[1] ?? y)) / 2])

const circlesOf = (flat: readonly number[]): [Point, number][] =>
  flat.flatMap((x, at) => (at % 3 === 0 ? [[[x, flat[at + 1] ?? 0], flat[at + 2] ?? 0]] : []))

/** Places all along a line, a quarter of a millimetre apart at most. */
const alongOf = (line: readonly Point[]): Point[] =>
  line.slice(1).flatMap(([x, y], at) => {
    const [fromX, fromY] = line[at] ?? [x, y]
    const steps = Math.max(1, Math.ceil(Math.hypot(x - fromX, y - fromY) / 0.25))
    return Array.from({ length: steps + 1 }, (_, step): Point => [
      fromX + ((x - fromX) * step) / steps,
      fromY + ((y - fromY) * step) / steps,
    ])
  })

/** The places that have no place of the others within a hundredth of a millimetre, or about as far as asked. */
const missing = (places: readonly Point[], others: readonly Point[], near_mm = 0.01): readonly Point[] => {
  const cell = (value: number) => Math.round(value / near_mm)
  const there = new Set(others.map(([x, y]) => `${cell(x)},${cell(y)}`))
  const around = [-1, 0, 1]
  return places.filter(
    ([x, y]) => !around.some(dx => around.some(dy => there.has(`${cell(x) + dx},${cell(y) + dy}`))),
  )
}

/** A star round a middle, with a square hole: corners, slopes and a void. */
const anArea = fc
  .record({
    radii: fc.array(fc.double({ min: 16, max: 40, noNaN: true }), { minLength: 5, maxLength: 14 }),
    hole: fc.double({ min: 1, max: 9, noNaN: true }),
    at: fc.tuple(
      fc.double({ min: -50, max: 50, noNaN: true }),
      fc.double({ min: -50, max: 50, noNaN: true }),
    ),
  })
  .map(({ radii, hole, at: [x, y] }): Area => {
    const outline = radii.map((radius, index): Point => {
      const angle = (2 * Math.PI * index) / radii.length
      return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)]
    })
    return { outline, holes: [box(x - hole, y - hole, x + hole, y + hole).toReversed()] }
  })

describe('the hatch set', () => {
  it('has 27 hatches, each with a key of its own', () => {
    expect(new Set(hatches.map(it => it.key)).size).toBe(27)
    expect(hatches.length).toBe(27)
  })

  it('has the hatch of every material', () => {
    for (const { id, hatch } of materials) expect(() => hatchOf(hatch), id).not.toThrow()
  })
})

describe.each(lined)('the hatch %s', key => {
  it('never leaves its area', () => {
    fc.assert(
      fc.property(anArea, fc.integer({ min: 0, max: 359 }), fc.boolean(), (area, turn_deg, isMirrored) => {
        const drawn = drawHatch(area, hatching(key, { turn_deg, ...(isMirrored && { mirrored: true }) }), 1)
        const within = (point: Point, off_mm: number) =>
          isInside(point, area) || offEdges(point, area) < off_mm
        const points = drawn.lines.flatMap(pairsOf)
        const middles = drawn.lines.flatMap(line => middlesOf(pairsOf(line)))
        const circles = [...circlesOf(drawn.rings), ...circlesOf(drawn.dots)]
        return (
          points.every(it => within(it, 2e-3)) &&
          middles.every(it => within(it, 0.03)) &&
          circles.every(([at, radius]) => isInside(at, area) && offEdges(at, area) >= radius - 1e-9)
        )
      }),
      { numRuns: 30, seed: 7 },
    )
  })

  it('is the same where it is seen, however little of it is', () => {
    const corner = fc.tuple(fc.integer({ min: -60, max: 60 }), fc.integer({ min: -60, max: 60 }))
    const side = fc.integer({ min: 4, max: 40 })
    fc.assert(
      fc.property(anArea, fc.integer({ min: 0, max: 359 }), corner, side, (area, turn_deg, [x, y], size) => {
        const window: readonly [Point, Point] = [[x, y], [x + size, y + size]] // prettier-ignore
        const isSeen = ([px, py]: Point) => x <= px && px <= x + size && y <= py && py <= y + size
        const placesOf = ({ lines, rings, dots }: ReturnType<typeof drawHatch>): Point[] => [
          ...lines.flatMap(line => alongOf(pairsOf(line))),
          ...[...circlesOf(rings), ...circlesOf(dots)].map(([at]) => at),
        ]
        const whole = placesOf(drawHatch(area, hatching(key, { turn_deg }), 1))
        const some = placesOf(drawHatch(area, hatching(key, { turn_deg }), 1, window))
        return (
          missing(whole.filter(isSeen), some, 0.26).length === 0 &&
          missing(some.filter(isSeen), whole, 0.26).length === 0 &&
          some.length <= whole.length + 4
        )
      }),
      { numRuns: 8, seed: 11 },
    )
  })

  it('is the same on paper at every scale, and there', () => {
    const at = (scale: number) => {
      const size: Point = [60 / scale, 40 / scale]
      const drawn = drawHatch({ outline: box(0, 0, ...size), holes: [] }, hatching(key, { size }), scale)
      return [...drawn.lines.flat(), ...drawn.rings, ...drawn.dots]
    }
    const full = at(1)
    expect(full.length).toBeGreaterThan(10)
    for (const scale of [0.5, 0.2, 0.1]) {
      const other = at(scale)
      expect(other.length).toBe(full.length)
      expect(
        Math.max(...full.map((place, index) => Math.abs(place - (other[index] ?? Infinity)))),
      ).toBeLessThan(1e-6)
    }
  })

  it('goes with its part, and stands still when the area grows', () => {
    const here = drawHatch({ outline: box(0, 0, 60, 40), holes: [] }, hatching(key), 1)
    const moved = { outline: box(13.7, -5.3, 73.7, 34.7), holes: [] }
    const there = drawHatch(moved, hatching(key, { origin: [13.7, -5.3] }), 1)
    const back = there.lines.flatMap(pairsOf).map(([x, y]): Point => [x - 13.7, y + 5.3])
    expect(missing(here.lines.flatMap(pairsOf), back)).toEqual([])
    const wider = drawHatch({ outline: box(0, 0, 90, 40), holes: [] }, hatching(key), 1)
    const clearOfEnd = here.lines.flatMap(pairsOf).filter(([x]) => x < 58)
    expect(missing(clearOfEnd, wider.lines.flatMap(pairsOf))).toEqual([])
  })

  it('turns and mirrors with its view', () => {
    const outline: Point[] = [[0, 0], [121.37, 0.41], [119.13, 31.7], [60.9, 80.29], [0.83, 79.1]] // prettier-ignore
    for (const turn_deg of [0, 90, 180, 270] as const)
      for (const mirrored of [false, true])
        for (const hatch of [
          hatching(key, { size: [121.37, 80.29] }),
          hatching(key, { size: [121.37, 80.29], mirrored: true }),
        ]) {
          const view: View = {
            kind: 'view',
            layer: 'fabric',
            window: [
              [0, 0],
              [121.37, 80.29],
            ],
            at: [11, 7],
            scale: 0.5,
            turn_deg,
            mirrored,
            marks: [{ kind: 'area', layer: 'fabric', outline, holes: [], hatch }],
          }
          const [flat] = flatten(view)
          if (flat?.kind !== 'area' || flat.hatch === undefined) throw new Error('an area stays an area')
          const onPaper = drawHatch(flat, flat.hatch, 1).lines.flatMap(pairsOf)
          const { toPaper } = placeView(view)
          const inModel = drawHatch({ outline, holes: [] }, hatch, 0.5).lines.flatMap(pairsOf)
          const placed = inModel.map(([x, y]) => toPaper([x / 0.5, y / 0.5]))
          expect([turn_deg, mirrored, missing(placed, onPaper), missing(onPaper, placed)]).toEqual([turn_deg, mirrored, [], []]) // prettier-ignore
        }
  })
})

describe('straight families', () => {
  it.each([
    ['masonry_dense', 2.8],
    ['aluminium', 1.6],
    ['plastic', 1.2],
  ])('of %s lie %d mm apart', (key, pitch) => {
    const { lines } = drawHatch({ outline: box(0, 0, 60, 40), holes: [] }, hatching(key), 1)
    const across = lines
      .map(([x0 = 0, y0 = 0, x1 = 0, y1 = 0]) => {
        const length = Math.hypot(x1 - x0, y1 - y0)
        return (x0 * (y1 - y0) - y0 * (x1 - x0)) / length
      })
      .toSorted((a, b) => a - b)
    across.slice(1).forEach((it, at) => expect(it - (across[at] ?? 0)).toBeCloseTo(pitch, 6))
  })
})

describe('thin bodies', () => {
  const strip = (thickness_mm: number, key: string) =>
    drawHatch(
      { outline: box(0, 0, 200, thickness_mm), holes: [] },
      hatching(key, { size: [200, thickness_mm] }),
      0.5,
    )

  it('under a millimetre on paper are solid', () => {
    expect(strip(1.9, 'aluminium').solid).toBeDefined()
    expect(strip(2.1, 'aluminium').solid).toBeUndefined()
  })

  it('under two pitches keep their tint alone', () => {
    expect(strip(11, 'masonry_dense').lines).toEqual([])
    expect(strip(12, 'masonry_dense').lines.length).toBeGreaterThan(10)
  })

  it('are known as thin when they are bent or hollow', () => {
    const hollow = { outline: box(0, 0, 70, 70), holes: [box(1.5, 1.5, 68.5, 68.5).toReversed()] }
    expect(drawHatch(hollow, hatching('steel', { size: [70, 70] }), 0.5).solid).toBeDefined()
  })
})

describe('rows of waves', () => {
  it('are divided evenly into the layer: none is cut by its faces', () => {
    for (const thickness_mm of [60, 98, 140, 233]) {
      const { lines } = drawHatch(
        { outline: box(0, 0, 500, thickness_mm), holes: [] },
        hatching('insul_soft', { size: [500, thickness_mm] }),
        0.5,
      )
      const rows = Math.round(thickness_mm / 2 / 4)
      expect(lines.length).toBe(rows)
    }
  })
})
