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
