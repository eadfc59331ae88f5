import fc from 'fast-check'
import { expect, it } from 'vitest'
import { keepingLast } from '../../app/window/state/keeping-last'

it('a function that keeps its last answer answers as it would anew, and is asked once for the same', () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(fc.nat(2), fc.nat(2))), questions => {
      let asked = 0
      const sum = keepingLast((a: number, b: number) => {
        asked++
        return [a + 10 * b]
      })
      for (const [a, b] of questions) expect(sum(a, b)).toEqual([a + 10 * b])
      const changes = questions.filter(
        ([a, b], at) => a !== questions[at - 1]?.[0] || b !== questions[at - 1]?.[1],
      )
      expect(asked).toBe(changes.length)
    }),
  )
})

it('a function that keeps some answers asks anew only what it was not asked among as many others', () => {
  fc.assert(
    fc.property(fc.array(fc.nat(5)), fc.integer({ min: 1, max: 4 }), (questions, most) => {
      let asked = 0
      const double = keepingLast((it: number) => {
        asked++
        return 2 * it
      }, most)
      let kept: number[] = []
      let news = 0
      for (const it of questions) {
        expect(double(it)).toBe(2 * it)
        if (!kept.includes(it)) news++
        kept = [it, ...kept.filter(one => one !== it)].slice(0, most)
      }
      expect(asked).toBe(news)
    }),
  )
})
