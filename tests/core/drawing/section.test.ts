import { describe, expect, it } from 'vitest'
import { drawSection, flatten, inkOfMarks, inkOfView, type View } from '../../../core/drawing'
import type { Point } from '../../../core/geometry'
import { aSection } from '../../given/a-section'
import { aSectionLook, sectionParts } from '../../given/a-section-sheet'

const stands = [
  { turn_deg: 0, mirrored: false },
  { turn_deg: 0, mirrored: true },
  { turn_deg: 270, mirrored: false },
  { turn_deg: 270, mirrored: true },
] as const

const leadersOf = (view: View) => flatten(view).flatMap(it => (it.kind === 'leader' ? [it] : []))

describe.each(stands)('a section turned by $turn_deg, mirrored: $mirrored', stand => {
  const section = aSection()
  const drawn = drawSection(section, aSectionLook(stand))

  it('keeps words upright', () => {
    for (const group of inkOfView(drawn.view, { palette: 'colour', language: 'en' }))
      for (const ink of group.inks) if (ink.kind === 'letters') expect([0, 90]).toContain(ink.turn_deg)
  })

  it('numbers all of its parts without conflict', () => {
    expect(leadersOf(drawn.view).map(it => it.number)).toEqual(sectionParts.map(it => it.number))
    expect(drawn.layout.conflicts).toBe(0)
  })

  it('shows nothing of its bodies outside the window', () => {
    const { window } = drawn.view
    for (const mark of drawn.view.marks) {
      if (mark.layer === 'sizes' || mark.layer === 'numbers') continue
      if (mark.kind === 'path' && mark.pen === 'break') continue
      const points: readonly Point[] =
        mark.kind === 'path' ? mark.points : mark.kind === 'area' ? mark.outline : []
      for (const [x, y] of points) {
        expect(x).toBeGreaterThanOrEqual(window[0][0] - 1)
        expect(x).toBeLessThanOrEqual(window[1][0] + 1)
        expect(y).toBeGreaterThanOrEqual(window[0][1] - 1)
        expect(y).toBeLessThanOrEqual(window[1][1] + 1)
      }
    }
  })

  it('has a break line where it cuts the wall and where it cuts the glass, nowhere else', () => {
    const breaks = drawn.view.marks.filter(it => it.kind === 'path' && it.pen === 'break')
    expect(breaks.every(it => it.layer === 'seen')).toBe(true)
    expect(breaks.length).toBe(2)
  })
})

describe('while something moves', () => {
  const look = aSectionLook()
  const before = drawSection(aSection({ joint_mm: 12 }), look)

  it('numbers keep their slots, and only dots follow', () => {
    const moved = drawSection(aSection({ joint_mm: 17 }), { ...look, kept: before.layout.slots })
    expect(moved.layout.slots).toEqual(before.layout.slots)
    const ends = (view: View) => leadersOf(view).map(it => it.path[it.path.length - 1])
    ends(moved.view).forEach((end, at) => {
      expect(end?.[0]).toBeCloseTo(ends(before.view)[at]?.[0] ?? NaN, 6)
      expect(end?.[1]).toBeCloseTo(ends(before.view)[at]?.[1] ?? NaN, 6)
    })
    expect(leadersOf(moved.view).map(it => it.path[0])).not.toEqual(
      leadersOf(before.view).map(it => it.path[0]),
    )
  })

  it('the same section gives the same layout, whatever was drawn before', () => {
    expect(drawSection(aSection({ joint_mm: 12 }), look)).toEqual(before)
  })
})

describe('neighbours of one hatch', () => {
  it('are told apart: frame and sash of timber run differently', () => {
    const { view } = drawSection(aSection(), aSectionLook())
    const hatchOf = (part: string) =>
      view.marks.flatMap(it => (it.kind === 'area' && it.part === part && it.hatch?.key === 'timber_cross' ? [it.hatch] : []))[0] // prettier-ignore
    const look = (part: string) => `${hatchOf(part)?.mirrored}, ${hatchOf(part)?.closer}`
    expect(look('f1.frame')).not.toBe(look('f1.sash'))
    expect(look('f1.bead')).not.toBe(look('f1.sash'))
  })
})

describe('ink', () => {
  it('is grouped by layer and part, each group once', () => {
    const groups = inkOfView(drawSection(aSection(), aSectionLook()).view, {
      palette: 'colour',
      language: 'en',
    })
    const names = groups.map(it => `${it.layer} ${it.part ?? ''}`)
    expect(new Set(names).size).toBe(names.length)
    expect(groups.some(it => it.layer === 'hatch' && it.part === 'p3')).toBe(true)
  })

  it('draws no line of the chains twice', () => {
    const groups = inkOfView(drawSection(aSection(), aSectionLook()).view, {
      palette: 'colour',
      language: 'en',
    })
    const upright = groups
      .filter(it => it.layer === 'sizes')
      .flatMap(it => it.inks.flatMap(ink => (ink.kind === 'stroke' && ink.pen === 'size' ? ink.lines : [])))
      .filter(([x0 = 0, , x1 = 0]) => Math.abs(x0 - x1) < 1e-6)
      .map(([x = 0, y0 = 0, , y1 = 0]) => ({ x, low: Math.min(y0, y1), high: Math.max(y0, y1) }))
    const twice = upright.flatMap((a, at) =>
      upright
        .slice(at + 1)
        .filter(b => Math.abs(a.x - b.x) < 1e-6 && a.low < b.high - 1e-3 && b.low < a.high - 1e-3),
    )
    expect(twice).toEqual([])
  })

  it('has the marks of all verdicts and of rules that do not apply', () => {
    for (const name of ['met', 'advice', 'not-met', 'refer', 'unknown', 'not-applicable']) {
      const groups = inkOfMarks(
        [{ kind: 'symbol', layer: 'words', name: `status-${name}`, at: [10, 10], values: {} }],
        { palette: 'colour', language: 'en' },
      )
      const loops = groups.flatMap(it => it.inks.flatMap(ink => (ink.kind === 'fill' ? ink.loops : [])))
      expect(loops.length, name).toBeGreaterThan(0)
      for (const place of loops.flat()) expect(Math.abs(place - 10), name).toBeLessThanOrEqual(2.6)
    }
  })
})
