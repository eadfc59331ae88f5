import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bandWords, chainValues_mm, placeWords, type Span } from '../../../core/drawing'

describe('the values of a chain', () => {
  it('add up to its total, in whole steps of what is written', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 400_000 }), { minLength: 1, maxLength: 12 }), steps => {
        const places = steps.reduce<number[]>((all, it) => [...all, (all.at(-1) ?? 0) + it / 1000], [-163])
        const values = chainValues_mm(places)
        const whole = (it: number) => Math.round(it * 10_000)
        const total = whole((places.at(-1) ?? 0) - (places[0] ?? 0))
        const sum = values.reduce((all, it) => all + whole(it), 0)
        const step = values.every(it => Math.abs(it * 10 - Math.round(it * 10)) < 1e-9) ? 1000 : 100
        return (
          Math.abs(sum - total) <= step / 2 &&
          values.every((it, at) => Math.abs(it - (steps[at] ?? 0) / 1000) <= 0.05)
        )
      }),
      { seed: 3 },
    )
  })

  it('are tenths where tenths add up, and finer where rounding would break the sum', () => {
    expect(chainValues_mm([0, 12, 42.5, 50.1])).toEqual([12, 30.5, 7.6])
    expect(chainValues_mm([0, 10.04, 20.08, 30.12])).toEqual([10.04, 10.04, 10.04])
  })
})

describe('the words of a chain', () => {
  const aChain = fc
    .array(
      fc.record({
        length: fc.double({ min: 0.6, max: 60, noNaN: true }),
        width: fc.double({ min: 1.5, max: 9, noNaN: true }),
      }),
      { minLength: 1, maxLength: 9 },
    ) // prettier-ignore
    .map(links => {
      let from = 0
      return links.map(({ length, width }): Span => {
        const span = { from, to: from + length, width, passing: length > 20 ? [from + length * 0.45] : [] }
        from += length
        return span
      })
    })

  it('never meet, and never stand across a stroke or a line that passes', () => {
    fc.assert(
      fc.property(aChain, spans => {
        const stands = placeWords(spans)
        const boxes = stands.map((it, at) => ({
          raised: it.raised,
          low: it.at - (spans[at]?.width ?? 0) / 2,
          high: it.at + (spans[at]?.width ?? 0) / 2,
        }))
        const strokes = [
          ...spans.map(it => it.from),
          spans.at(-1)?.to ?? 0,
          ...spans.flatMap(it => it.passing),
        ]
        const apart = boxes.every((a, at) =>
          boxes.slice(at + 1).every(b => a.raised !== b.raised || a.high <= b.low || b.high <= a.low),
        )
        const clear = boxes.every(
          it => it.raised || strokes.every(stroke => stroke <= it.low || it.high <= stroke),
        )
        return stands.length === spans.length && clear && apart
      }),
      { seed: 5, numRuns: 300 },
    )
  })

  it('stand in the middle where they fit, else beyond the end, else raised', () => {
    const link = (from: number, to: number, width: number): Span => ({ from, to, width, passing: [] })
    expect(placeWords([link(0, 20, 6)])).toMatchObject([{ at: 10, raised: false }])
    expect(placeWords([link(0, 5, 8), link(5, 30, 5)])[0]?.at).toBeLessThan(-4)
    expect(placeWords([link(0, 6, 5), link(6, 9, 5), link(9, 15, 5)])[1]).toMatchObject({ raised: true })
  })
})

describe('a size with a range', () => {
  it.each([
    [12, 9, 15, 'en', '12 ±3'],
    [12, 10, 15, 'de', '10…15'],
    [12.5, 10, 15, 'de', '12,5 ±2,5'],
    [12, 12, 12, 'en', '12'],
  ] as const)('%d from %d to %d in %s is written %s', (planned, min, max, language, words) =>
    expect(bandWords(planned, { min, max }, language)).toBe(words),
  )
})
