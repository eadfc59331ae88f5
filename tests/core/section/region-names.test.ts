import { describe, expect, test } from 'vitest'
import { jointOf, samples, zonesOf } from '../../../core/detail'
import { areaOf } from '../../../core/geometry'
import { cutSection } from '../../../core/section'
import { randomDetail } from '../../given/random-detail'

const places = samples.flatMap(({ file, project }) =>
  zonesOf(project).map(place => [file, place.side, project, place] as const),
)

describe.each(places)('the regions of %s, %s', (_file, _side, project, place) => {
  const planned_mm = jointOf(project, place.zone).planned_mm.value
  const at = (width_mm: number) => cutSection(project, place, { state: 'planned', width_mm }).regions
  const now = at(planned_mm)

  test('have names of their own, that say whose they are', () => {
    expect(new Set(now.map(it => it.id)).size).toBe(now.length)
    for (const { id, part } of now) expect(id.startsWith(`${part}.`), id).toBe(true)
  })

  test('keep them when the joint opens a little: what has a name is the same body, as large as it was but for the joint', () => {
    const then = new Map(at(planned_mm + 0.2).map(it => [it.id, it]))
    expect([...then.keys()].toSorted()).toEqual(now.map(it => it.id).toSorted())
    for (const { id, part, outline } of now) {
      const other = then.get(id)
      expect(other?.part).toBe(part)
      const grown = Math.abs(areaOf(other?.outline ?? []) - areaOf(outline))
      // 0.2 mm over the depth of any wall here; at a threshold over floor and surface as far as they are cut
      const reach_mm = id.startsWith('threshold-') ? 1500 : 600
      expect(grown, id).toBeLessThan(0.2 * reach_mm)
    }
  })
})

test('100 random details: no two regions of a cut share a name', () => {
  for (let seed = 0; seed < 2000; seed += 20) {
    const { project, place } = randomDetail(seed)
    const width_mm = jointOf(project, place.zone).planned_mm.value
    const ids = cutSection(project, place, { state: 'planned', width_mm }).regions.map(it => it.id)
    expect(new Set(ids).size, `seed ${seed}`).toBe(ids.length)
  }
})
