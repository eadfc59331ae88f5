import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { aFolder, sampleText, typed } from './given'

const folder = aFolder()
const file = (name: string): string => {
  const path = join(folder, `${name}.jamb`)
  writeFileSync(path, sampleText(name))
  return path
}

describe('vapour FILE', () => {
  const tight = file('tight-outside')

  it('gives planes, path, two periods and a year as an object', async () => {
    const { out, code } = await typed('vapour', tight, '--cut', 'sill', '--field', '--json')
    expect(code).toBe(0)
    const it = JSON.parse(out)
    expect(it.planes.ratio.winter.min).toBeCloseTo(0.4 / 70, 6)
    const [towards, onwards] = it.path.periods.sum
    expect(it.path.periods.gathers_kg_m2).toBeCloseTo(towards.amount_kg_m2 - onwards.amount_kg_m2, 9)
    expect(it.path.year.rows).toHaveLength(12)
    expect(it.field.isSettled).toBe(true)
  })

  it('says it in words of either language, and that it is an estimate', async () => {
    expect((await typed('vapour', tight)).out).toContain('an estimate in one dimension')
    expect((await typed('vapour', tight, '--language', 'de')).out).toContain(
      'eine eindimensionale Abschätzung',
    )
  })

  it('goes through the wall or any place, and refuses a place that is none', async () => {
    const wall = await typed('vapour', tight, '--path', 'wall', '--json')
    expect(JSON.parse(wall.out).path.path.layers.length).toBeGreaterThan(3)
    expect((await typed('vapour', tight, '--path', '4,5')).code).toBe(0)
    expect(await typed('vapour', tight, '--path', 'roof')).toMatchObject({ code: 2 })
  })

  it('takes the air that was stated with set', async () => {
    const path = file('right-jamb')
    expect((await typed('set', path, 'opening.inside-humidity', '65')).code).toBe(0)
    expect((await typed('set', path, 'site.outside-temperature', '-12,5')).code).toBe(0)
    const { conditions } = JSON.parse((await typed('vapour', path, '--json')).out)
    expect(conditions.inside.humidity_pct).toBe(65)
    expect(conditions.outside.temperature_C).toBe(-12.5)
  })
})

describe('heat FILE, studied', () => {
  const path = file('facing-leaf')

  it('names what moves the coldest place most and compares places of the frame', async () => {
    const { out, code } = await typed('heat', path, '--sensitivities', '--positions', '20; 60', '--json')
    expect(code).toBe(0)
    const it = JSON.parse(out)
    expect(it.sureness.sensitivities.length).toBeGreaterThan(5)
    expect(it.variants.map((one: { position_mm: number }) => one.position_mm)).toEqual([20, 60])
    expect(it.variants[1].coldest.temperature_C).toBeGreaterThan(it.variants[0].coldest.temperature_C)
  })

  it('refuses positions that are none, or that no frame can have', async () => {
    expect((await typed('heat', path, '--positions', 'outside')).code).toBe(2)
    expect((await typed('heat', path, '--positions', '9000')).code).toBe(2)
  })
})

describe('draw --show vapour', () => {
  it('says on the sheet what is drawn round', async () => {
    const to = join(folder, 'wet.svg')
    expect((await typed('draw', file('facing-leaf'), '--show', 'vapour', '--to', to)).code).toBe(0)
    expect(readFileSync(to, 'utf8')).toContain('Drawn round: where water gathers in winter, an estimate')
  })
})

describe('check FILE --heat', () => {
  it('judges by heat and vapour only where it is asked to', async () => {
    const path = file('foam-only')
    const rules = async (...more: string[]) =>
      JSON.parse((await typed('check', path, '--json', ...more)).out).findings.map(
        (it: { rule: string }) => it.rule,
      )
    expect(await rules()).not.toContain('surface-criterion')
    expect(await rules('--heat')).toContain('surface-criterion')
  })
})
