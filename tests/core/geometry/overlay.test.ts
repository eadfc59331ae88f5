import { describe, expect, test } from 'vitest'
import { areaOf, type Outline, overlay, type Point } from '../../../core/geometry'

const box = (x0: number, y0: number, x1: number, y1: number): Outline => [
  [x0, y0],
  [x1, y0],
  [x1, y1],
  [x0, y1],
]
const laid = (outlines: readonly (readonly [string, Outline])[], paths: readonly (readonly Point[])[] = []) =>
  overlay(
    outlines.map(([label, outline]) => ({ label, outline })),
    paths,
    'gap',
  )
const areas = (it: ReturnType<typeof laid>): Record<string, number> => {
  const found: Record<string, number> = {}
  for (const { label, outline, holes } of it.tiles) {
    const area = [outline, ...holes].reduce((sum, loop) => sum + areaOf(loop), 0)
    found[label] = Math.round(((found[label] ?? 0) + area) * 1e6) / 1e6
  }
  return found
}

describe('outlines laid over each other', () => {
  test('give the ground to the last one', () => {
    expect(
      areas(
        laid([
          ['a', box(0, 0, 10, 10)],
          ['b', box(5, 5, 15, 15)],
        ]),
      ),
    ).toEqual({ a: 75, b: 100 })
  })

  test('leave a hole where one lies wholly inside another', () => {
    const found = laid([
      ['a', box(0, 0, 10, 10)],
      ['b', box(2, 2, 4, 4)],
    ])
    expect(areas(found)).toEqual({ a: 96, b: 4 })
    expect(found.tiles.find(it => it.label === 'a')?.holes).toHaveLength(1)
  })

  test('find holes in holes', () => {
    const found = laid([
      ['a', box(0, 0, 10, 10)],
      ['b', box(1, 1, 9, 9)],
      ['c', box(3, 3, 5, 5)],
      ['d', box(6, 6, 7, 7)],
    ])
    expect(areas(found)).toEqual({ a: 36, b: 59, c: 4, d: 1 })
  })

  test('name the ground that they enclose and do not cover', () => {
    const ring = [box(0, 0, 10, 2), box(0, 8, 10, 10), box(0, 2, 2, 8), box(8, 2, 10, 8)]
    expect(areas(laid(ring.map((it, i) => [`wall ${i}`, it]))).gap).toBe(36)
  })

  test('give neighbours every vertex of their common edge', () => {
    const found = laid([
      ['a', box(0, 0, 10, 10)],
      ['b', box(10, 2, 20, 4)],
      ['c', box(10, 4, 20, 8)],
    ])
    const a = found.tiles.find(it => it.label === 'a')?.outline.map(String)
    expect(a).toEqual(expect.arrayContaining(['10,2', '10,4', '10,8']))
  })

  test('grow together where they carry the same label', () => {
    const label = { name: 'plaster' }
    const found = overlay(
      [
        { label, outline: box(0, 0, 10, 2) },
        { label, outline: box(8, 2, 10, 9) },
      ],
      [],
      { name: 'gap' },
    )
    expect(found.tiles).toHaveLength(1)
    expect(found.tiles[0]?.outline).toHaveLength(6)
  })

  test('are split by a path that crosses them, and the path has the vertices of both halves', () => {
    const found = laid([['a', box(0, 0, 10, 10)]], [[[0, 4], [10, 4]]]) // prettier-ignore
    expect(found.tiles.map(it => areaOf(it.outline)).sort()).toEqual([40, 60].sort())
    expect(found.paths[0]).toEqual([[0, 4], [10, 4]]) // prettier-ignore
  })

  test('stay whole where a path ends inside them', () => {
    expect(laid([['a', box(0, 0, 10, 10)]], [[[0, 4], [5, 4]]]).tiles).toHaveLength(1) // prettier-ignore
  })

  test('meet on the grid where slopes cross between its points', () => {
    const found = laid([['a', [[0, 0], [10, 0], [0, 7]]], ['b', [[0, 1], [9, 3], [0, 5]]]]) // prettier-ignore
    const shared = new Map<string, number>()
    found.tiles.forEach(({ outline }) =>
      outline.forEach(at => shared.set(String(at), (shared.get(String(at)) ?? 0) + 1)),
    )
    expect([...shared.values()].filter(count => count > 1).length).toBeGreaterThanOrEqual(4)
  })

  test('refuse a place that lies beyond the grid: products would no longer be exact', () => {
    expect(() => laid([['a', box(0, 0, 9000, 1)]])).toThrow('beyond the grid')
  })
})
