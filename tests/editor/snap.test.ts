import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { snapKinds, snapPoint, snapValue } from '../../app/editor'
import type { Point } from '../../core/geometry'

const square = (x: number, y: number, size: number): readonly (readonly [Point, Point])[] => {
  const corners: readonly Point[] = [
    [x, y],
    [x + size, y],
    [x + size, y + size],
    [x, y + size],
  ]
  return corners.map((corner, at) => [corner, corners[(at + 1) % 4] ?? corner] as const)
}
const free = { reach_mm: 6, held: false }
/** A grid too coarse to matter here. */
const coarse = 1e6

describe('what catches a dragged point', () => {
  it('a corner 3 mm away wins over the middle of an edge 2 mm away', () => {
    const edges = square(0, 0, 10)
    // The middle of the lower edge is at (5, 0), its corner at (0, 0).
    const to: Point = [3, 0.1]
    expect(Math.hypot(to[0] - 5, to[1])).toBeLessThan(Math.hypot(...to))
    expect(snapPoint(to, { edges, grid_mm: coarse }, free)).toEqual({ at: [0, 0], kind: 'corner' })
  })

  it('away from corners the face catches, exactly on it', () => {
    const edges = square(0, 0, 100)
    expect(snapPoint([48, 2], { edges, grid_mm: coarse }, free)).toEqual({ at: [48, 0], kind: 'face' })
  })

  it('with the key held the point stays where the pointer is', () => {
    const edges = square(0, 0, 10)
    expect(snapPoint([0.3, 0.2], { edges, grid_mm: 1 }, { ...free, held: true })).toEqual({ at: [0.3, 0.2] })
  })

  it('out of reach of everything but the grid, the grid catches', () => {
    const edges = square(0, 0, 10)
    expect(snapPoint([30.2, 40.4], { edges, grid_mm: 1 }, free)).toEqual({ at: [30, 40], kind: 'grid' })
    expect(snapPoint([30.2, 40.4], { edges, grid_mm: 100 }, free)).toEqual({ at: [30.2, 40.4] })
  })
})

describe('what catches a face that moves along one line', () => {
  const values = { corner: [100], face: [103, 140], middle: [121], grid_mm: 1 }

  it.each([
    [102, 100, 'corner'],
    [139.2, 140, 'face'],
    [121.4, 121, 'middle'],
    [112.34, 112, 'grid'],
  ] as const)('%d comes to rest at %d, by %s', (to, at, kind) => {
    expect(snapValue(to, values, { reach_mm: 2, held: false })).toEqual({ at, kind })
  })

  it('grid places carry no noise of their own', () => {
    expect(snapValue(0.29, { corner: [], face: [], middle: [], grid_mm: 0.1 }, free).at).toBe(0.3)
  })

  const places = fc.array(fc.double({ min: -200, max: 200, noNaN: true }), { maxLength: 8 })
  it('it never jumps further than things reach, and never to a weaker kind', () => {
    fc.assert(
      fc.property(
        places,
        places,
        places,
        fc.double({ min: -200, max: 200, noNaN: true }),
        (corner, face, middle, to) => {
          const { at, kind } = snapValue(
            to,
            { corner, face, middle, grid_mm: 1 },
            { reach_mm: 2, held: false },
          )
          expect(Math.abs(at - to)).toBeLessThanOrEqual(2)
          const stronger = snapKinds.slice(0, kind ? snapKinds.indexOf(kind) : snapKinds.length)
          const places = { corner, face, middle, grid: [] }
          for (const it of stronger)
            for (const place of places[it]) expect(Math.abs(place - to)).toBeGreaterThan(2)
        },
      ),
    )
  })
})
