import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Clock, followInTurns } from '../../app/window/state/in-turns'

/** A clock that goes on when it is told to: frames and waits are done in the order in which they are due. */
const aClock = () => {
  let now = 0
  let waiting: { at: number; work: () => void }[] = []
  const due = (at: number, work: () => void) => {
    const one = { at, work }
    waiting.push(one)
    return () => (waiting = waiting.filter(it => it !== one))
  }
  const clock: Clock = {
    after: (ms, work) => due(now + ms, work),
    inFrame: work => due(now + 1, work),
  }
  const goOn = (ms: number) => {
    for (const to = now + ms; now < to; now++) {
      const ready = waiting.filter(it => it.at <= now + 1)
      waiting = waiting.filter(it => it.at > now + 1)
      for (const it of ready) it.work()
    }
  }
  return { clock, goOn }
}

const following = (followers: number, behind_ms = 10) => {
  const shown = Array.from({ length: followers }, () => 0)
  const told: { readonly follower: number; readonly shows: number }[] = []
  const { clock, goOn } = aClock()
  const it = followInTurns<number>(
    shown.map((_, follower) => (now: number) => {
      shown[follower] = now
      told.push({ follower, shows: now })
    }),
    { clock, behind_ms },
  )
  return { ...it, shown, told, goOn }
}

/** What a hand does: it moves on by one, or waits so long. */
const steps = fc.array(fc.oneof(fc.constant('moves' as const), fc.nat(25)), { maxLength: 60 })

describe('panels that follow in turns', () => {
  it('are told one a frame, each of the very same within a round', () => {
    fc.assert(
      fc.property(steps, fc.integer({ min: 1, max: 5 }), (hand, followers) => {
        const all = following(followers)
        let now = 0
        for (const step of hand)
          if (step === 'moves') all.moved(++now)
          else
            for (let frame = 0; frame < step; frame++) {
              const before = all.told.length
              all.goOn(1)
              expect(all.told.length - before).toBeLessThanOrEqual(1)
            }
        all.told.forEach(({ follower, shows }, at) => {
          expect(follower).toBe(at % followers)
          if (follower > 0) expect(shows).toBe(all.told[at - 1]?.shows)
        })
      }),
    )
  })

  it('show what is under the hand a moment after it has stopped, and at once when it lets go', () => {
    fc.assert(
      fc.property(steps, fc.boolean(), (hand, letsGo) => {
        const all = following(4)
        let now = 0
        for (const step of hand)
          if (step === 'moves') all.moved(++now)
          else all.goOn(step)
        if (letsGo) all.rests(now)
        else all.goOn(2 * (10 + 4))
        expect(all.shown).toEqual([now, now, now, now])
        const { length } = all.told
        all.goOn(100)
        expect(all.told).toHaveLength(length)
      }),
    )
  })
})
