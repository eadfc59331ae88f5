import { describe, expect, it } from 'vitest'
import { checkReport, inkOf, textWidth_mm } from '../../../core/drawing'
import { check } from '../../../core/rules'
import { studyZone, yearTable } from '../../../core/study'
import { languages } from '../../../core/words'
import { aSample } from '../../given/a-sample'

const { project, place } = aSample('tight-outside', 'sill')
const study = studyZone(project, place)
if (!study.ok) throw new Error(JSON.stringify(study.problems))
const report = check(project)

describe.each(languages)('the report with heat and vapour of a zone, %s', language => {
  const pages = checkReport(project, report, { language, palette: 'black', studies: [study.value] })
  const letters = pages.flatMap(page => inkOf(page).flatMap(group => group.inks)).flatMap(it => (it.kind === 'letters' ? [it] : [])) // prettier-ignore
  const all = letters.map(it => it.words)

  it('says Psi, what moves the coldest place, the planes, two periods and every month of the year', () => {
    const { along } = study.value.vapour
    if (!along.ok) throw new Error(JSON.stringify(along.problems))
    const year = yearTable(along.value, study.value.humid.conditions)
    expect(year.rows).toHaveLength(12)
    for (const row of year.rows) for (const cell of row) expect(all).toContain(cell[language])
    expect(all).toContain('Psi')
    expect(all.some(it => it.includes('DIN 4108-3'))).toBe(true)
    expect(all.some(it => it.includes('EN ISO 13788'))).toBe(true)
  })

  it('keeps tables and charts inside its margins', () => {
    for (const it of letters) {
      const width = textWidth_mm(it.words, it.height_mm, it.bold)
      const start = it.anchor === 'end' ? it.at[0] - width : it.anchor === 'middle' ? it.at[0] - width / 2 : it.at[0] // prettier-ignore
      expect(start, it.words).toBeGreaterThanOrEqual(19.9)
      expect(start + width, it.words).toBeLessThanOrEqual(200.1)
      expect(it.at[1], it.words).toBeGreaterThanOrEqual(10)
    }
  })

  it('has no two words on each other', () => {
    for (const page of pages) {
      const boxes = inkOf(page).flatMap(group => group.inks).flatMap(it => {
        if (it.kind !== 'letters' || it.turn_deg !== 0) return []
        const width = textWidth_mm(it.words, it.height_mm, it.bold)
        const left = it.at[0] - (it.anchor === 'end' ? width : it.anchor === 'middle' ? width / 2 : 0)
        return [{ words: it.words, left, right: left + width, low: it.at[1], high: it.at[1] + it.height_mm }]
      })
      const over = boxes.flatMap((a, i) =>
        boxes.slice(i + 1).filter(b => a.left < b.right && b.left < a.right && a.low < b.high && b.low < a.high).map(b => `${a.words} | ${b.words}`),
      )
      expect(over).toEqual([])
    }
  }) // prettier-ignore
})
