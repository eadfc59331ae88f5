import { describe, expect, test } from 'vitest'
import { detailSheet, flatten, inkOf, textWidth_mm, type ViewMark } from '../../../../core/drawing'
import { aHeatPicture } from '../../../given/a-heat-picture'

const cuts = (
  [
    ['right-jamb', 'left'],
    ['bead-in-brick', 'sill'],
    ['timber-wall', 'head'],
  ] as const
).flatMap(([file, side]) => {
  const { project, place, section, picture } = aHeatPicture(file, side)
  return (['colour', 'black'] as const).map(palette => {
    const language = palette === 'colour' ? ('en' as const) : ('de' as const)
    const drawing = detailSheet(project, place, section, { language, palette, heat: picture })
    return { name: `${file}, ${side}, ${palette}`, palette, picture, drawing }
  })
})

const flat = (marks: (typeof cuts)[number]['drawing']['marks']): readonly ViewMark[] =>
  marks.flatMap(mark => (mark.kind === 'view' ? flatten(mark) : [mark]))

describe.each(cuts)('the sheet of $name with heat shown', ({ drawing, palette, picture }) => {
  const groups = inkOf(drawing)
  const inks = (layer: string) => groups.filter(it => it.layer === layer).flatMap(it => it.inks)

  test('has bands in colour and lines in both', () => {
    expect(inks('heat').length > 0).toBe(palette === 'colour')
    const pens = new Set(inks('isotherms').flatMap(it => (it.kind === 'stroke' ? [it.pen] : [])))
    for (const pen of ['isotherm', 'isotherm-strong', 'isotherm-named'] as const)
      expect(pens.has(pen), pen).toBe(true)
    expect(inks('hatch')).toEqual([])
  })

  test('no number stands on another, on a line, or in the air', () => {
    const view = drawing.marks.find(it => it.kind === 'view')
    const texts = flat(view ? [view] : []).flatMap(it =>
      it.kind === 'text' && it.layer === 'isotherms' ? [it] : [],
    )
    expect(texts.length).toBeGreaterThan(5)
    const boxes = texts.map(it => {
      const half = textWidth_mm(it.words, it.height_mm, it.bold === true) / 2
      return [it.at[0] - half, it.at[1], it.at[0] + half, it.at[1] + it.height_mm] as const
    })
    boxes.forEach(([l, b, r, t], i) =>
      boxes.slice(i + 1).forEach(([l2, b2, r2, t2], j) => {
        const isApart = r <= l2 || r2 <= l || t <= b2 || t2 <= b
        expect(isApart, `${texts[i]?.words} and ${texts[i + 1 + j]?.words}`).toBe(true)
      }),
    )
    const lines = flat(view ? [view] : []).flatMap(it =>
      it.kind === 'path' && it.layer === 'isotherms' ? [it.points] : [],
    )
    for (const [l, b, r, t] of boxes)
      for (const points of lines)
        for (const [x, y] of points) expect(l < x && x < r && b < y && y < t).toBe(false)
  })

  test('says the coldest place beside its scale', () => {
    const coldest = picture.coldest?.temperature_C ?? NaN
    const said = coldest.toFixed(1).replace('.', palette === 'colour' ? '.' : ',')
    const words = flat(drawing.marks).flatMap(it => (it.kind === 'text' ? [it.words] : []))
    expect(words.some(it => it.includes(`${said} °C`))).toBe(true)
    expect(words.filter(it => it === said)).toHaveLength(1)
  })
})
