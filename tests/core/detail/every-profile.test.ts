import { describe, expect, test } from 'vitest'
import { type Body, profiles } from '../../../core/detail'
import { areaOf, type Outline, overlay, type Point } from '../../../core/geometry'
import { material } from '../../../core/materials'

const outlines = (bodies: readonly Body[]) => bodies.map(it => ({ outline: it.outline, label: it }))
const tilesOf = (bodies: readonly Body[]) => {
  const gap: Body = { member: 'gasket', fill: { kind: 'air', vented: 'closed' }, outline: [], of: 'frame' }
  return { gap, ...overlay(outlines(bodies), [], gap) }
}
const spanOf = (outline: Outline, axis: 0 | 1): readonly [number, number] => {
  const all = outline.map(it => it[axis])
  return [Math.min(...all), Math.max(...all)]
}
/** Whether no two edges of an outline meet but neighbours at their common corner. */
const isSimple = (outline: Outline): boolean => {
  const edges = outline.map((a, i) => [a, outline[(i + 1) % outline.length] ?? a] as const)
  return edges.every(([a, b], i) =>
    edges.every(([c, d], j) => j <= i + 1 || (i === 0 && j === edges.length - 1) || !meet(a, b, c, d)),
  )
}
const side = ([ax, ay]: Point, [bx, by]: Point, [px, py]: Point): number =>
  Math.sign((bx - ax) * (py - ay) - (by - ay) * (px - ax))
const meet = (a: Point, b: Point, c: Point, d: Point): boolean =>
  side(a, b, c) !== side(a, b, d) && side(c, d, a) !== side(c, d, b)

describe.each(profiles.map(it => [it.id, it] as const))('%s', (_, profile) => {
  const { bodies, depth_mm, face_mm, innerFace_mm, reach_mm } = profile
  const frame = bodies.filter(it => it.member === 'frame')
  const solids = frame.filter(it => it.fill.kind === 'material')

  test('is drawn by simple outlines that run counter-clockwise, of materials that the library knows', () => {
    for (const { outline, fill, member } of bodies) {
      expect(areaOf(outline), member).toBeGreaterThan(0)
      expect(isSimple(outline), `${member} ${JSON.stringify(outline)}`).toBe(true)
      if (fill.kind === 'material') expect(material(fill.material), fill.material).toBeDefined()
    }
  })

  test('has a frame as deep as it says, whose flank towards the joint is one straight line', () => {
    const spans = frame.map(it => spanOf(it.outline, 1))
    expect(Math.min(...spans.map(it => it[0]))).toBe(0)
    expect(Math.max(...spans.map(it => it[1]))).toBe(depth_mm)
    const { edges } = tilesOf(frame)
    expect(edges).toHaveLength(1)
    const [outer = []] = edges
    expect(isSimple(outer)).toBe(true)
    const onFlank = outer.filter(([u]) => u === 0).map(([, v]) => v)
    expect([Math.min(...onFlank), Math.max(...onFlank)]).toEqual([0, depth_mm])
    expect(Math.min(...outer.map(([u]) => u))).toBe(0)
  })

  test('has a face as wide as its frame is seen from outside', () => {
    const seen = solids.filter(it => spanOf(it.outline, 1)[0] === 0).map(it => spanOf(it.outline, 0)[1])
    expect(Math.max(...seen)).toBe(face_mm)
  })

  test('leaves its depth with sash and glazing only, and keeps the inner face free', () => {
    const beyond = bodies.filter(it => spanOf(it.outline, 1)[1] > depth_mm)
    expect(beyond.every(it => it.member !== 'frame')).toBe(true)
    const nearest = Math.min(...beyond.map(it => spanOf(it.outline, 0)[0]))
    expect(nearest).toBe(innerFace_mm)
    expect(Math.min(...bodies.map(it => spanOf(it.outline, 1)[0]))).toBe(0)
  })

  test('has a sash inside, and glazing up to its reach', () => {
    expect(bodies.some(it => it.member === 'sash')).toBe(true)
    const glass = bodies.filter(it => it.member === 'glazing')
    expect(Math.max(...glass.map(it => spanOf(it.outline, 0)[1]))).toBe(reach_mm)
    expect(glass.every(it => it.of === 'glass')).toBe(true)
    expect(bodies.every(it => spanOf(it.outline, 0)[1] <= reach_mm)).toBe(true)
  })

  test('is one piece without holes: between frame and sash lies air that is a body of its own', () => {
    const { edges, tiles, gap } = tilesOf(bodies)
    expect(edges).toHaveLength(1)
    // what no body covers is a crevice at the glass or at a bead, never the rebate
    const crevices = tiles.filter(it => it.label === gap).reduce((sum, it) => sum + areaOf(it.outline), 0)
    expect(crevices).toBeLessThan(20)
  })

  test('has chambers whose walls are tight: no air of one part touches the outside or the air of another', () => {
    const { tiles } = tilesOf(bodies)
    const owner = new Map<string, Body>()
    const halves = tiles.flatMap(({ outline, holes, label }) =>
      [outline, ...holes].flatMap(loop =>
        loop.map((from, i) => ({ from, to: loop[(i + 1) % loop.length] ?? from, label })),
      ),
    )
    for (const { from, to, label } of halves) owner.set(`${from};${to}`, label)
    for (const { from, to, label } of halves) {
      if (label.fill.kind !== 'air' || label.member === 'gasket') continue
      const beyond = owner.get(`${to};${from}`)
      expect(beyond, `${label.member} ${from}`).toBeDefined()
      expect(beyond?.fill.kind === 'air' && beyond.member !== label.member, `${label.member} ${from}`).toBe(
        false,
      )
    }
  })

  test('says how thick its steel is exactly where it has a core', () => {
    expect(profile.steel_mm !== undefined).toBe(bodies.some(it => it.member === 'core'))
  })
})

test('a profile has the material of its frame in both languages, and a name of its own', () => {
  expect(new Set(profiles.map(it => it.name.en)).size).toBe(profiles.length)
  expect(new Set(profiles.map(it => it.name.de)).size).toBe(profiles.length)
})

test('aluminium is broken: no metal that hangs together reaches through the depth of a frame', () => {
  const materialOf = ({ fill }: Body) => (fill.kind === 'material' ? fill.material : 'air')
  const reaches = profiles.flatMap(({ bodies }) =>
    overlay(bodies.map(it => ({ outline: it.outline, label: materialOf(it) })), [], 'air')
      .tiles.filter(it => it.label === 'aluminium')
      .map(it => spanOf(it.outline, 1)),
  ) // prettier-ignore
  expect(reaches.length).toBeGreaterThan(4)
  for (const [from, to] of reaches) expect(to - from).toBeLessThan(35)
})
