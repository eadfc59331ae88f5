import { describe, expect, it } from 'vitest'
import {
  type HeatAnswer,
  type HeatCase,
  flows_W_m,
  heatDesk,
  moveTo,
  solveCase,
  startMoving,
} from '../../../core/heat'
import { aHeatCase } from '../../given/a-heat-case'
import { moved } from '../../given/moved'

/** The joint of the jamb made wider: the element moves, the wall stays. */
const wider = (it: HeatCase, by_mm: number) => moved(it, ([x, y]) => [x > 12.5 ? x + by_mm : x, y])
/** The element set further in: what lies in the joint follows. */
const further = (it: HeatCase, by_mm: number) =>
  moved(it, ([x, y]) => [x, 171 < y && y < 300 ? y + by_mm : y])

const inflow = (it: HeatCase) => {
  const solved = solveCase(it)
  if (!solved.ok) throw new Error(JSON.stringify(solved.problems))
  return flows_W_m(solved.value)[0] ?? NaN
}

describe('a mesh that follows', () => {
  it.each([
    ['a joint growing by 3 mm', wider, 3],
    ['a joint shrinking by 2 mm', wider, -2],
    ['a frame set 20 mm further in', further, 20],
    ['a frame set 4 mm further out', further, -1.5],
  ] as const)('%s gives what a new mesh gives, within 0.05 percent', (_, move, by_mm) => {
    const jamb = aHeatCase('jamb')
    const frame = startMoving(jamb)
    if (!frame.ok) throw new Error(JSON.stringify(frame.problems))
    let moving = frame.value
    let followed = 0
    for (let step = 1; step <= 10; step++) {
      const next = moveTo(moving, move(jamb, (by_mm * step) / 10))
      if (!next.ok) throw new Error(JSON.stringify(next.problems))
      moving = next.value.moving
      if (next.value.how === 'followed') followed++
    }
    expect(followed).toBeGreaterThan(5)
    const flows = flows_W_m(moving.solution)
    expect(Math.abs((flows[0] ?? NaN) / inflow(move(jamb, by_mm)) - 1)).toBeLessThan(5e-4)
    expect(Math.abs(flows.reduce((sum, flow) => sum + flow, 0))).toBeLessThan(1e-8)
  })

  it('takes new conductivities, films and temperatures without a new mesh', () => {
    const jamb = aHeatCase('jamb')
    const started = startMoving(jamb)
    if (!started.ok) throw new Error(JSON.stringify(started.problems))
    const colder: HeatCase = {
      ...jamb,
      bodies: jamb.bodies.map(it => (it.name === 'eps' ? { ...it, lambda_W_mK: 0.031 } : it)),
      surfaces: jamb.surfaces.map(it => (it.name === 'ext' ? { ...it, air_C: -12 } : { ...it, h_W_m2K: 4 })),
    }
    const next = moveTo(started.value, colder)
    if (!next.ok) throw new Error(JSON.stringify(next.problems))
    expect(next.value.how).toBe('followed')
    expect(Math.abs((flows_W_m(next.value.moving.solution)[0] ?? NaN) / inflow(colder) - 1)).toBeLessThan(
      5e-4,
    )
  })

  it('is made anew when a body collapses, comes or goes, or its outline changes', () => {
    const jamb = aHeatCase('jamb')
    const start = () => {
      const started = startMoving(jamb)
      if (!started.ok) throw new Error(JSON.stringify(started.problems))
      return started.value
    }
    const how = (to: HeatCase) => {
      const next = moveTo(start(), to)
      return next.ok ? next.value.how : next.problems.map(it => it.at)
    }
    expect(how(wider(jamb, -2.9))).toBe('remeshed')
    expect(how(aHeatCase('sill'))).toBe('remeshed')
    expect(how({ ...jamb, bodies: jamb.bodies.toReversed() })).toBe('remeshed')
    expect(how(wider(jamb, -14))).not.toBe('followed')
  })
})

describe('a heat desk', () => {
  const desk = () => {
    const answers: HeatAnswer[] = []
    const waiting: (() => void)[] = []
    const it = heatDesk({ later: work => waiting.push(work), answer: given => answers.push(given) })
    return { ...it, answers, run: () => waiting.splice(0).forEach(work => work()) }
  }

  it('drops requests that were overtaken and answers the last', () => {
    const { ask, answers, run } = desk()
    const jamb = aHeatCase('jamb')
    for (let revision = 1; revision <= 5; revision++) ask({ revision, case: wider(jamb, revision / 10) })
    run()
    ask({ revision: 6, case: wider(jamb, 0.7) })
    ask({ revision: 4, case: jamb })
    run()
    expect(answers.map(it => [it.revision, it.ok && it.how])).toEqual([
      [5, 'new'],
      [6, 'followed'],
    ])
  })

  it('answers with problems and goes on', () => {
    const { ask, answers, run } = desk()
    const jamb = aHeatCase('jamb')
    ask({ revision: 1, case: { ...jamb, surfaces: [] } })
    run()
    ask({ revision: 2, case: jamb })
    run()
    expect(answers.map(it => it.ok)).toEqual([false, true])
  })
})
