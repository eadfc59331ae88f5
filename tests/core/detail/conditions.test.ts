import { describe, expect, it } from 'vitest'
import { months, saturation_Pa, vapour_Pa } from '../../../core/air'
import {
  applyEdits,
  choiceOf,
  conditionsOf,
  type Edit,
  fieldOf,
  openProject,
  type Project,
  samples,
  saveProject,
  site,
} from '../../../core/detail'
import { specified } from '../../../core/units'

const first = samples[0]?.project
if (!first) throw new Error('there are no samples')
const [opening = ''] = Object.keys(first.openings)

const stated = (...values: readonly (readonly [field: string, value: number | string])[]): Project => {
  const edits = values.map(([field, value]): Edit => ({
    kind: 'state',
    at: { field, part: field.startsWith('site.') ? site : opening },
    to: typeof value === 'number' ? specified(value) : specified(value),
  }))
  const [one, ...more] = edits
  const done = one ? applyEdits(first, [one, ...more]) : undefined
  if (!done?.ok) throw new Error(JSON.stringify(done))
  return done.value
}

describe('the air that an opening is computed in', () => {
  it('is that of DIN 4108-2 where nobody states another: 20 °C and 50 %, −5 °C and 80 %, all assumed', () => {
    const air = conditionsOf(first, opening)
    expect([air.inside.temperature_C, air.inside.humidity_pct]).toEqual([20, 50])
    expect([air.outside.temperature_C, air.outside.humidity_pct]).toEqual([-5, 80])
    expect(air.assumed.map(at => at.field)).toEqual([
      'opening.room-use', 'opening.inside-temperature', 'opening.inside-humidity', 'site.outside-temperature', 'site.outside-humidity',
    ]) // prettier-ignore
    expect(air.yearAssumed).toHaveLength(24)
  })

  it('follows what is stated, and is assumed no more', () => {
    const air = conditionsOf(
      stated(
        ['opening.inside-temperature', 24],
        ['opening.inside-humidity', 60],
        ['site.outside-temperature', -12],
      ),
      opening,
    )
    expect(air.inside).toEqual({ temperature_C: 24, humidity_pct: 60, vapour_Pa: vapour_Pa(24, 60) })
    expect(air.outside.temperature_C).toBe(-12)
    expect(air.assumed.map(at => at.field)).toEqual(['opening.room-use', 'site.outside-humidity'])
  })

  it.each([
    ['1', 270],
    ['2', 540],
    ['3', 810],
    ['4', 1080],
    ['5', 1360],
  ])('in humidity class %s the room holds %d Pa more than −5 °C outside', (humidityClass, excess_Pa) => {
    const air = conditionsOf(stated(['opening.humidity-class', humidityClass]), opening)
    const expected_Pa = Math.min(vapour_Pa(-5, 80) + excess_Pa, saturation_Pa(20))
    expect(air.inside.vapour_Pa).toBeCloseTo(expected_Pa, 6)
  })

  it('of an office is that of its class, drier than a dwelling', () => {
    const office = conditionsOf(stated(['opening.room-use', 'office']), opening)
    expect(office.humidityClass).toBe('2')
    expect(office.inside.humidity_pct).toBeLessThan(50)
  })

  it('takes the coldest month of the year where that climate is chosen', () => {
    const air = conditionsOf(
      stated(['site.climate', 'coldest-month'], ['site.temperature-february', -7.5]),
      opening,
    )
    expect(air.outside.temperature_C).toBe(-7.5)
    expect(air.outside.humidity_pct).toBe(82)
  })

  it('falls by months to the vapour of outside at 20 °C', () => {
    const { year } = conditionsOf(stated(['site.temperature-july', 20]), opening)
    const july = year.find(it => it.month === 'july')
    expect(july?.inside.vapour_Pa).toBeCloseTo(july?.outside.vapour_Pa ?? NaN, 9)
  })

  it('is saved and opened again', () => {
    const project = stated(
      ['opening.room-use', 'hall'],
      ['site.humidity-march', 70],
      ['site.ground-temperature', 8],
    )
    const opened = openProject(saveProject(project))
    expect(opened.ok && opened.value.project).toEqual(project)
  })

  it('is refused where no air can be so', () => {
    const at = { field: 'opening.inside-humidity', part: opening }
    const done = applyEdits(first, [{ kind: 'state', at, to: specified(120) }])
    expect(done.ok ? undefined : done.problems[0].allowed).toEqual({ unit: 'pct', min: 1, max: 100 })
  })

  it('is taken back: every value of it falls to what it was', () => {
    const all = [
      ...months.flatMap(it => [`site.temperature-${it}`, `site.humidity-${it}`]),
      'site.outside-temperature', 'site.outside-humidity', 'site.ground-temperature', 'opening.inside-temperature', 'opening.inside-humidity',
    ] // prettier-ignore
    for (const id of all) {
      const field = fieldOf(id)
      if (!field) throw new Error(`no field ${id}`)
      const part = id.startsWith('site.') ? site : opening
      const there = field.write(first, part, specified(7))
      expect(field.read(there, part)?.value).toBe(7)
      expect(field.read(field.write(there, part, undefined), part)).toBeUndefined()
    }
    for (const id of ['site.climate', 'opening.room-use', 'opening.humidity-class'])
      expect(choiceOf(id)?.fallback(first, id === 'site.climate' ? site : opening)?.basis).toBe('assumed')
  })
})
