import { describe, expect, it } from 'vitest'
import { samples } from '../../../core/detail'
import { type Side } from '../../../core/kinds'
import {
  detailSheet,
  drawHatch,
  type Drawing,
  flatten,
  type SheetOptions,
  type View,
} from '../../../core/drawing'
import { aDetail } from '../../given/a-detail-beside'
import { ofKind, viewsOf } from '../../given/a-measure-of-dxf'

const sheetOf = (file: string, side: Side, more: Partial<SheetOptions> = {}): Drawing => {
  const { project, place, section, report } = aDetail(file, side)
  return detailSheet(project, place, section, { language: 'en', palette: 'black', report, ...more })
}

const pairOn = (drawing: Drawing): readonly [View, View] => {
  const [main, enlarged] = viewsOf(drawing)
  if (main === undefined || enlarged?.enlarged !== true) throw new Error('no joint is enlarged')
  return [main, enlarged]
}

const isEnlarged = (drawing: Drawing): boolean => viewsOf(drawing).some(it => it.enlarged)

const wordsOn = ({ marks }: Drawing) => marks.flatMap(it => (it.kind === 'text' ? [it.words] : []))

/** A thick wall, which an A4 shows at 1:5. */
const thick = sheetOf('bead-in-brick', 'left', { paper: 'A4' })

describe('a joint that is drawn once more', () => {
  it.each(samples.map(it => it.file))('points with each number at something that it shows: %s', file => {
    const views = (['left', 'sill'] as const).flatMap(side => viewsOf(sheetOf(file, side, { enlarged: 0.5 })))
    for (const { enlarged, marks, window } of views) {
      if (!enlarged) continue
      for (const { path, number } of ofKind(marks, 'leader'))
        for (const axis of [0, 1] as const) {
          expect(path[0][axis], `${number}`).toBeGreaterThanOrEqual(window[0][axis])
          expect(path[0][axis], `${number}`).toBeLessThanOrEqual(window[1][axis])
        }
    }
  })

  it('is at least twice as large as in the cut, under its letter and its own scale', () => {
    const [main, enlarged] = pairOn(thick)
    expect(enlarged.scale).toBeGreaterThanOrEqual(2 * main.scale)
    expect(wordsOn(thick)).toContain(`Detail X  1:${1 / enlarged.scale}`)
    const german = sheetOf('bead-in-brick', 'left', { paper: 'A4', language: 'de' })
    expect(wordsOn(german).some(it => /^Einzelheit X {2}1:\d$/.test(it))).toBe(true)
    expect(ofKind(main.marks, 'text').map(it => it.words)).toEqual(['X'])
  })

  it('is told to who cannot see it', () => {
    const [, enlarged] = pairOn(thick)
    expect(thick.says).toContain(`The joint once more, enlarged, at 1:${1 / enlarged.scale}.`)
  })

  it('says the same range for the width of the joint, and the depths of its seals add up to its depth', () => {
    const [main, enlarged] = pairOn(thick)
    const [width, ...depths] = ofKind(enlarged.marks, 'dimension')
    expect(ofKind(main.marks, 'dimension').map(it => it.words)).toContain(width?.words)
    const sum = depths.reduce((all, it) => all + Math.round(Number(it.words) * 10), 0)
    const ends = depths.flatMap(it => [it.from[1], it.to[1]])
    expect(depths.length).toBeGreaterThan(2)
    expect(sum).toBe(Math.round((Math.max(...ends) - Math.min(...ends)) * 10))
  })

  it('numbers its seals as the cut does', () => {
    const [main, enlarged] = pairOn(thick)
    const numbered = ({ marks }: View) =>
      new Map(ofKind(marks, 'leader').map(it => [it.part, it.number] as const))
    const [here, there] = [numbered(enlarged), numbered(main)]
    expect(here.size).toBeGreaterThan(3)
    for (const [part, number] of here) expect(there.get(part)).toBe(number)
  })

  it('is ringed in the cut where it lies', () => {
    const [main, enlarged] = pairOn(thick)
    const ring = ofKind(main.marks, 'path').find(it => it.layer === 'sheet' && it.closed)
    const along = (axis: 0 | 1) => ring?.points.map(it => it[axis]) ?? []
    const [low, high] = enlarged.window
    for (const axis of [0, 1] as const) {
      expect(Math.min(...along(axis))).toBeCloseTo(low[axis], 6)
      expect(Math.max(...along(axis))).toBeCloseTo(high[axis], 6)
    }
  })

  it('has hatches of the paper: as far apart as in the cut', () => {
    const [main, enlarged] = pairOn(thick)
    const pitchesOf = (view: View) =>
      ofKind(flatten(view), 'area').flatMap(it => {
        const drawn = it.hatch?.key.startsWith('masonry') ? drawHatch(it, it.hatch, 1).lines : []
        const offs = drawn.map(([x = 0, y = 0, toX = 0, toY = 0]) => {
          const long = Math.hypot(toX - x, toY - y)
          return Math.abs((x * (toY - y) - y * (toX - x)) / long)
        })
        const sorted = offs.toSorted((a, b) => a - b)
        return sorted.slice(1).map((off, at) => off - (sorted[at] ?? 0))
      })
    const [there, here] = [pitchesOf(main), pitchesOf(enlarged)].map(it => Math.max(...it))
    expect(here).toBeGreaterThan(1)
    expect(here).toBeCloseTo(there ?? 0, 6)
  })

  it.each(['head', 'left', 'right', 'sill'] as const)(
    'stands clear of the cut and off the frame: %s',
    side => {
      const drawing = sheetOf('on-consoles', side, { paper: 'A3', enlarged: 1 })
      if (!isEnlarged(drawing)) return
      const [main, enlarged] = pairOn(drawing)
      const boxOf = (view: View) => {
        const points = ofKind(flatten(view), 'dimension').flatMap(it => [it.from, it.to, it.line])
        return [0, 1].map(axis => points.map(it => it[axis as 0 | 1])) // x, then y
      }
      const [[x = [], y = []], [otherX = [], otherY = []]] = [boxOf(main), boxOf(enlarged)]
      const isApart = (a: readonly number[], b: readonly number[]) =>
        Math.max(...a) < Math.min(...b) || Math.max(...b) < Math.min(...a)
      expect(isApart(x, otherX) || isApart(y, otherY)).toBe(true)
      expect(Math.min(...otherX)).toBeGreaterThan(20)
      expect(Math.min(...otherY)).toBeGreaterThan(10)
    },
  )
})

describe('a joint is drawn once more', () => {
  it('only where the cut is smaller than 1:2, unless it is asked for', () => {
    expect(isEnlarged(sheetOf('right-jamb', 'left'))).toBe(false)
    const [main, enlarged] = pairOn(sheetOf('right-jamb', 'left', { paper: 'A3', enlarged: 1 }))
    expect([main.scale, enlarged.scale]).toEqual([0.2, 1])
  })

  it('not where it is asked for once, nor at a scale at which it would not be larger', () => {
    expect(isEnlarged(sheetOf('bead-in-brick', 'left', { paper: 'A4', enlarged: 'none' }))).toBe(false)
    expect(isEnlarged(sheetOf('right-jamb', 'left', { paper: 'A3', scale: 0.5, enlarged: 0.5 }))).toBe(false)
  })

  it('the same each time', () => {
    expect(sheetOf('bead-in-brick', 'left', { paper: 'A4' })).toEqual(thick)
  })
})
