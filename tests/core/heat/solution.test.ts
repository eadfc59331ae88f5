import { describe, expect, it } from 'vitest'
import {
  type HeatCase,
  conductanceBounds,
  flows_W_m,
  refinementOf,
  solveCase,
  temperatureAt,
} from '../../../core/heat'
import { aHeatCase, aLayeredWall } from '../../given/a-heat-case'

const solved = (it: HeatCase) => {
  const result = solveCase(it)
  if (!result.ok) throw new Error(JSON.stringify(result.problems))
  return result.value
}

describe('a layered wall', () => {
  const walls: readonly (readonly [string, readonly (readonly [number, number])[]])[] = [
    ['of one layer', [[365, 0.5]]],
    ['with outside insulation', [[10, 0.87], [160, 0.035], [365, 0.5], [15, 0.51]]],
    ['with a metal skin of 0.25 mm', [[0.25, 160], [100, 0.025], [0.25, 50]]],
    ['of eight unlike layers', [[1, 0.2], [30, 1], [2, 17], [80, 0.02], [3, 0.13], [11, 2.3], [7, 0.04], [50, 0.9]]],
  ] // prettier-ignore
  it.each(walls)('%s conducts as its resistances in a row, to rounding', (_, layers) => {
    const wall = aLayeredWall(
      layers.map(([thickness_mm, lambda_W_mK]) => ({ thickness_mm, lambda_W_mK })),
      { outside_W_m2K: 25, inside_W_m2K: 1 / 0.13 },
    )
    const u_W_m2K = 1 / (0.04 + 0.13 + layers.reduce((sum, [d, lambda]) => sum + d / 1000 / lambda, 0))
    expect(flows_W_m(solved(wall))[1]).toBeCloseTo(25 * 0.1 * u_W_m2K, 10)
  })
})

describe('a foil', () => {
  it('lying across the heat flow conducts along itself as a thin body of metal does', () => {
    const plain = aHeatCase('strip')
    const [insulation, steel] = plain.bodies
    if (!insulation || !steel) throw new Error('the strip has two bodies')
    // The 6 mm strip made 0.3 mm thin as a body, and as a foil between two bodies of insulation.
    const thin = (half: number): HeatCase => ({
      ...plain,
      bodies: [
        { ...insulation, outline: [[0, 0], [200 - half, 0], [200 - half, 150], [200 + half, 150], [200 + half, 0], [400, 0], [400, 200], [0, 200]] },
        { ...steel, outline: [[200 - half, 0], [200 + half, 0], [200 + half, 150], [200 - half, 150]] },
      ],
      surfaces: plain.surfaces.map(it => (it.name === 'out' ? { ...it, edges: [[[0, 0], [200 - half, 0]], [[200 - half, 0], [200 + half, 0]], [[200 + half, 0], [400, 0]]] as const } : it)),
      probes: {},
    }) // prettier-ignore
    const foil: HeatCase = {
      ...plain,
      bodies: [
        { ...insulation, name: 'left', outline: [[0, 0], [200, 0], [200, 150], [200, 200], [0, 200]] },
        { ...insulation, name: 'right', outline: [[200, 0], [400, 0], [400, 200], [200, 200], [200, 150]] },
      ],
      surfaces: plain.surfaces.map(it => (it.name === 'out' ? { ...it, edges: [[[0, 0], [200, 0]], [[200, 0], [400, 0]]] as const } : it)),
      foils: [{ name: 'steel', path: [[200, 0], [200, 150]], conductance_W_K: 50 * 0.3e-3 }],
      probes: {},
    } // prettier-ignore
    const asBody = flows_W_m(solved(thin(0.15)))[1] ?? NaN
    const asFoil = flows_W_m(solved(foil))[1] ?? NaN
    const without = flows_W_m(solved({ ...foil, foils: [] }))[1] ?? NaN
    expect(Math.abs(asFoil / asBody - 1)).toBeLessThan(0.01)
    expect(asFoil / without).toBeGreaterThan(1.02)
  })
})

describe('bounds by duality', () => {
  it.each([
    ['corner', 6.558728799694697],
    ['checkerboard', Math.sqrt(10)],
    ['circle', 1.382934],
  ])('hold the exact conductance of the %s between them, less than 0.03 percent apart', (name, exact) => {
    const bounds = conductanceBounds(aHeatCase(name))
    if (!bounds.ok) throw new Error(JSON.stringify(bounds.problems))
    expect(bounds.value.least_W_mK).toBeLessThanOrEqual(exact)
    expect(bounds.value.most_W_mK).toBeGreaterThanOrEqual(exact)
    expect(bounds.value.most_W_mK / bounds.value.least_W_mK - 1).toBeLessThan(3e-4)
  })

  it.each(['jamb', 'sill', 'iso-10211-case-2', 'iso-10077-2-d2', 'iso-10077-2-d4', 'iso-10077-2-d7'])(
    'lie less than 0.05 percent apart for %s',
    name => {
      const bounds = conductanceBounds(aHeatCase(name))
      if (!bounds.ok) throw new Error(JSON.stringify(bounds.problems))
      const gap = bounds.value.most_W_mK / bounds.value.least_W_mK - 1
      expect(gap).toBeGreaterThan(0)
      expect(gap).toBeLessThan(5e-4)
    },
  )
})

describe('the refinement criterion', () => {
  it.each(['jamb', 'sill', 'iso-10211-case-2', 'strip', 'iso-10077-2-d7'])('is met by %s', name => {
    const refinement = refinementOf(solved(aHeatCase(name)))
    expect(refinement.finerUnknowns).toBeGreaterThan(3.5 * refinement.unknowns)
    expect(refinement.difference_percent).toBeLessThan(0.05)
    expect(refinement.difference_percent).toBeGreaterThan(0)
    expect(refinement.imbalance).toBeLessThan(1e-8)
  })
})

describe('the estimate', () => {
  it.each([
    ['jamb', 14.4502],
    ['sill', 14.396],
    ['iso-10211-case-2', 9.49145],
    ['corner', 6.558728799694697],
    ['checkerboard', Math.sqrt(10)],
    ['strip', 2.47653],
  ])('of %s is above its true error, and less than five times that', (name, exact) => {
    const solution = solved(aHeatCase(name))
    const share = flows_W_m(solution).reduce((sum, flow) => sum + Math.max(0, flow), 0) / exact - 1
    expect(share).toBeLessThan(solution.errorShare)
    expect(share).toBeGreaterThan(solution.errorShare / 5)
  })

  it('is not given where good conductors touch in a point, or fixed temperatures meet', () => {
    const checkerboard = aHeatCase('checkerboard')
    const steep = {
      ...checkerboard,
      bodies: checkerboard.bodies.map(it => ({ ...it, lambda_W_mK: it.name === 'b' ? 1000 : 1 })),
    }
    expect(solved(steep)).toMatchObject({ errorShare: Infinity, unsettled_mm: [[50, 50]] })
    expect(solved(aHeatCase('iso-10211-case-1'))).toMatchObject({
      errorShare: Infinity,
      unsettled_mm: [[0, 800]],
    })
  })
})

describe('temperatures', () => {
  it.each([
    ['jamb', 0.05],
    ['sill', 0.06],
  ])('of the %s are nowhere off by more than %s K', (name, most_K) => {
    const fine = solveCase(aHeatCase(name), { share: 8e-6, rounds: 12 })
    if (!fine.ok) throw new Error(JSON.stringify(fine.problems))
    const usual = solved(aHeatCase(name))
    const errors = Array.from(usual.field.corner_C, (value, v) => {
      const at = [usual.mesh.x[v] ?? NaN, usual.mesh.y[v] ?? NaN] as const
      return Math.abs(value - (temperatureAt(fine.value, at) ?? NaN))
    })
    expect(fine.value.mesh.vertices).toBeGreaterThan(4 * usual.mesh.vertices)
    expect(Math.max(...errors)).toBeLessThan(most_K)
  })
})

describe('a place', () => {
  it('outside the section has no temperature', () => {
    expect(temperatureAt(solved(aHeatCase('fin')), [50, 3])).toBeUndefined()
  })
})
