import { describe, expect, it } from 'vitest'
import { samples } from '../../../core/detail'
import { cutsSheet, type Drawing } from '../../../core/drawing'
import { photographed } from '../../given/photographed'
import { cutsOf } from '../../given/sample-cuts'

const [first] = samples
if (first === undefined) throw new Error('there is no sample')

const wordsOn = ({ marks }: Drawing) => marks.flatMap(it => (it.kind === 'text' ? [it.words] : []))
const sheetOf = (project: typeof first.project): Drawing =>
  cutsSheet(project, cutsOf(project), { language: 'en', palette: 'black' })

describe('the key elevation of an opening', () => {
  const drawing = sheetOf(photographed(first.project))

  it('has photos where they were taken, and says what the numbers are', () => {
    expect(wordsOn(drawing)).toEqual(expect.arrayContaining(['1', '2', '3', 'n', 'photo n']))
  })

  it('has their fields on the half of the side that they were taken at, clear of the lines of the cuts', () => {
    const fields = drawing.marks.flatMap(it =>
      it.kind === 'path' && it.pen === 'seen' && it.closed && it.points.length === 4 ? [it.points] : [],
    )
    const small = fields.filter(it => Math.abs((it[1]?.[0] ?? 0) - (it[0]?.[0] ?? 0)) < 6).slice(0, 3)
    const axes = drawing.marks.flatMap(it => (it.kind === 'path' && it.pen === 'axis' ? [it.points] : []))
    const upright = axes.find(([a, b]) => a?.[0] === b?.[0])?.[0]?.[0] ?? 0
    const level = axes.find(([a, b]) => a?.[1] === b?.[1])?.[0]?.[1] ?? 0
    expect(small).toHaveLength(3)
    for (const field of small) {
      for (const [x] of field) expect(x).toBeLessThan(upright)
      expect(new Set(field.map(([, y]) => y < level)).size).toBe(1)
    }
  })

  it('says nothing of photos where there are none', () => {
    expect(wordsOn(sheetOf(first.project))).not.toContain('photo n')
  })
})
