import { describe, expect, it } from 'vitest'
import { type Project, type Sample, samples, type ZonePlace, zonesOf } from '../../../core/detail'
import {
  cutsScales,
  detailSheets,
  type Drawing,
  inkOf,
  sheetScales,
  type SheetOptions,
} from '../../../core/drawing'
import { jointBand } from '../../../core/movement'
import { check } from '../../../core/rules'
import { cutSection } from '../../../core/section'
import { cutsOf } from '../../given/sample-cuts'

const sampleNamed = (file: string): Sample => {
  const found = samples.find(it => it.file === file)
  if (found === undefined) throw new Error(`there is no sample ${file}`)
  return found
}
const placeAt = ({ project }: Sample, side: ZonePlace['side']): ZonePlace => {
  const found = zonesOf(project).find(it => it.side === side)
  if (found === undefined) throw new Error(`nothing is at the ${side}`)
  return found
}
const cutAt = (project: Project, place: ZonePlace) => {
  const { planned_mm } = jointBand(project, place.opening, place.side, place.zone.id)
  return cutSection(project, place, { state: 'planned', width_mm: planned_mm })
}
const sheetAt = (file: string, side: ZonePlace['side'], options: Partial<SheetOptions>): Drawing => {
  const sample = sampleNamed(file)
  const place = placeAt(sample, side)
  const how = { language: 'en', palette: 'black', ...options } as const
  return detailSheets(sample.project, place, cutAt(sample.project, place), how)[0]
}
const inksOn = (drawing: Drawing) => inkOf(drawing).flatMap(it => it.inks)
const wordsOn = (drawing: Drawing): readonly string[] =>
  inksOn(drawing).flatMap(it => (it.kind === 'letters' ? [it.words] : []))

describe.each(samples)('the cuts of $file', ({ project }) => {
  const report = check(project)

  it('fit on A4 at every side, in every language', () => {
    for (const place of zonesOf(project)) {
      const section = cutAt(project, place)
      for (const language of ['en', 'de'] as const)
        expect(
          sheetScales(project, place, section, { language, report, paper: 'A4' }),
          place.side,
        ).not.toEqual([])
    }
  })

  it('fit together on A3 at 1:5', () => {
    expect(cutsScales(project, cutsOf(project), { language: 'de', report })).toContain(0.2)
  })
})

describe('a sheet', () => {
  it('says how high a sill is over the floor, on A4 too', () => {
    expect(wordsOn(sheetAt('on-consoles', 'sill', { paper: 'A4' }))).toContain('bare sill over FFL')
    expect(wordsOn(sheetAt('on-consoles', 'left', { paper: 'A4' }))).not.toContain('bare sill over FFL')
  })

  it('has no entry in its legend for what is solid everywhere at its scale', () => {
    expect(wordsOn(sheetAt('right-jamb', 'left', { paper: 'A4', scale: 0.5 }))).toContain('sealant')
    expect(wordsOn(sheetAt('right-jamb', 'left', { paper: 'A4', scale: 0.2 }))).not.toContain('sealant')
  })

  it('lists the bracket that its cut shows, not that of the other sides', () => {
    const brackets = (side: ZonePlace['side']) =>
      wordsOn(sheetAt('on-consoles', side, { paper: 'A3' })).filter(it => it === 'Bracket').length
    expect([brackets('left'), brackets('sill')]).toEqual([1, 1])
  })

  it('is pure black on white in the black set', () => {
    const inks = inksOn(sheetAt('bead-in-brick', 'left', { paper: 'A4' }))
    const colours = inks.flatMap(it => ('colour' in it ? [it.colour] : []))
    expect([...new Set(colours)].toSorted()).toEqual(['#000000', '#FFFFFF'])
  })
})
