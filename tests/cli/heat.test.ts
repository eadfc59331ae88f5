import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { samples, saveProject } from '../../core/detail'
import { aFolder, typed } from './given'

const folder = aFolder()
const write = (name: string, text: string): string => {
  const path = join(folder, name)
  writeFileSync(path, text)
  return path
}
const sectionOf = (name: string): string =>
  JSON.stringify(
    JSON.parse(readFileSync(new URL(`../reference/cases/heat/${name}.json`, import.meta.url), 'utf8'))
      .section,
  )

describe('heat --section', () => {
  it('solves a plain section and writes one object', async () => {
    const { out, err, code } = await typed(
      'heat',
      '--section',
      write('jamb.json', sectionOf('jamb')),
      '--json',
    )
    expect([err, code]).toEqual(['', 0])
    const it = JSON.parse(out)
    expect(Object.keys(it)).toEqual([
      'heatFlow_W_m', 'probes_C', 'lowestSurface_C', 'unknowns', 'errorEstimate_percent', 'errorKind', 'ms',
    ]) // prettier-ignore
    expect(it.heatFlow_W_m.int).toBeCloseTo(14.4502, 2)
    expect(it.probes_C.frame_wall_int).toBeCloseTo(16.896, 1)
    expect(it.lowestSurface_C.int.at_mm).toEqual([150, 256])
    expect(it.errorKind).toBe('one-sided')
    expect(Object.keys(it.ms)).toEqual(['mesh', 'assembly', 'solve'])
  })

  it('tells two-sided bounds where temperatures are fixed, and none where they meet', async () => {
    const corner = await typed('heat', '--section', write('corner.json', sectionOf('corner')), '--json')
    expect(JSON.parse(corner.out)).toMatchObject({ errorKind: 'two-sided' })
    const column = await typed(
      'heat',
      '--section',
      write('column.json', sectionOf('iso-10211-case-1')),
      '--json',
    )
    expect(JSON.parse(column.out).errorEstimate_percent).toBeNull()
  })

  it('says every problem with its place', async () => {
    const strip = JSON.parse(sectionOf('strip'))
    strip.polygons[0].lambda = -1
    strip.polygons[1].outer.reverse()
    strip.boundaries[0].h = 'cold'
    const { err, code } = await typed('heat', '--section', write('wrong.json', JSON.stringify(strip)))
    expect(code).toBe(2)
    expect(err).toContain('polygons[0].lambda')
    expect(err).toContain('boundaries[0].h')
    strip.polygons[0].lambda = 1
    strip.boundaries[0].h = 25
    const turned = await typed('heat', '--section', write('turned.json', JSON.stringify(strip)))
    expect(turned.err).toContain('polygons[1].outer (steel)')
  })

  it.each([
    ['bodies that overlap', (it: Plain) => it.polygons[1]?.outer.forEach(at => (at[0] -= 3)), 'overlaps'],
    ['an isle without a surface', (it: Plain) => (it.boundaries = []), 'boundaries'],
    ['a surface inside', (it: Plain) => it.boundaries[0]?.edges.push([197, 0, 197, 150]), 'no outer edge'],
  ])('refuses %s', async (_, spoil, said) => {
    const strip = JSON.parse(sectionOf('strip'))
    spoil(strip)
    const { err, code } = await typed('heat', '--section', write('spoiled.json', JSON.stringify(strip)))
    expect([code, err.includes(said)]).toEqual([2, true])
  })
})

type Plain = {
  polygons: { outer: [number, number][] }[]
  boundaries: { edges: number[][] }[]
}

describe('heat FILE', () => {
  const path = write('right.jamb', saveProject(samples[0]?.project ?? never()))

  it.each(['jamb', 'head', 'sill'])('solves the cut of the %s, with the terms of Psi', async cut => {
    const { out, code } = await typed('heat', path, '--cut', cut, '--json')
    expect(code).toBe(0)
    const it = JSON.parse(out)
    const { psi } = it
    const worked =
      it.coupling_W_mK -
      (psi.wall.u_W_m2K * psi.wall.length_mm + psi.element.u_W_m2K * psi.element.length_mm) / 1000
    expect(psi.psi_W_mK).toBeCloseTo(worked, 12)
  })

  it('says it in words of either language', async () => {
    expect((await typed('heat', path)).out).toContain('estimated error')
    expect((await typed('heat', path, '--language', 'de')).out).toContain('geschätzter Fehler')
  })

  it('wants a file, and an opening that there is', async () => {
    expect((await typed('heat')).code).toBe(2)
    expect(await typed('heat', path, '--opening', 'opening-99')).toMatchObject({ code: 2 })
  })
})

function never(): never {
  throw new Error('there are no samples')
}
