import { describe, expect, test } from 'vitest'
import { beginWith, openProject, saveProject, starters } from '../../../core/detail'

/** Every basis in a plain value, with where it stands. */
const basesIn = (it: unknown, at = ''): readonly string[] =>
  typeof it !== 'object' || it === null
    ? []
    : Object.entries(it).flatMap(([key, value]) =>
        key === 'basis' ? [`${at} ${String(value)}`] : basesIn(value, `${at}.${key}`),
      )

describe.each(starters)('a joint that begins with $id', plan => {
  const project = beginWith(plan, 'DE')
  test('is a project that a file holds', () => {
    const read = openProject(saveProject(project))
    expect(read.ok && read.value.project).toEqual(project)
  })
  test('has the layers that were chosen, and a frame at its usual place', () => {
    const [wall] = Object.values(project.walls)
    expect(wall?.layers.map(it => [it.material, it.thickness_mm])).toEqual(
      plan.layers.map(([material, value]) => [material, { value, basis: 'specified' }]),
    )
    expect(Object.values(project.openings)[0]?.position_mm).toEqual({
      value: plan.position_mm,
      basis: 'assumed',
    })
  })
  test('calls everything assumed that nobody has said', () => {
    const said = basesIn(project).filter(it => !it.endsWith(' assumed') && !it.includes('.layers.'))
    expect(said).toEqual([])
    expect(basesIn(project).length).toBeGreaterThan(30)
  })
})
