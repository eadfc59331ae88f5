import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { newStanding, type Piece } from '../../app/window/board/standing'

const shiftsOf = [
  [0, 0],
  [3, 4],
] as const

/** A hundred groups on the paper. */
const groups = Array.from({ length: 100 }, (_, at) => ({ layer: 'tint', part: `${at}`, inks: [] }) as const)

const piecesAt = (shifts: readonly number[]): readonly Piece[] =>
  groups.map((group, at) => ({ group, shift: shiftsOf[shifts[Math.floor(at / 10)] ?? 0] ?? [0, 0] }))

const frames = fc.array(fc.array(fc.nat(1), { minLength: 10, maxLength: 10 }), {
  minLength: 1,
  maxLength: 12,
})

describe('what stands still while something moves', () => {
  it('is laid down in its order, and as it lies now', () => {
    fc.assert(
      fc.property(frames, shifts => {
        const standing = newStanding<readonly Piece[]>()
        for (const frame of shifts) {
          const pieces = piecesAt(frame)
          const runs = standing.runsOf(pieces, of => of)
          expect(runs.flatMap(it => it.picture ?? it.pieces)).toEqual(pieces)
        }
      }),
      { numRuns: 50 },
    )
  })

  it('is painted once, from the third frame in which it stands', () => {
    const standing = newStanding<string>()
    const painted: number[] = []
    for (let frame = 0; frame < 6; frame++) {
      const pieces = piecesAt([0, 0, 0, 0, frame % 2, 0, 0, 0, 0, 0])
      const runs = standing.runsOf(pieces, of => `${painted.push(of.length)}`)
      expect(runs.map(it => it.picture !== undefined)).toEqual(
        frame < 1 ? [false] : frame < 2 ? [false, false, false] : [true, false, true],
      )
    }
    expect(painted).toEqual([40, 50])
  })

  it('keeps its place as long as what moves stays in it', () => {
    const whole = [[0, 0], [1000, 600]] as const // prettier-ignore
    const standing = newStanding<string>()
    const area = standing.areaRound([[100, 100], [200, 200]], whole) // prettier-ignore
    expect(area).toEqual([[36, 36], [264, 264]]) // prettier-ignore
    expect(standing.areaRound([[120, 40], [260, 200]], whole)).toBe(area) // prettier-ignore
    expect(standing.areaRound([[120, 0], [260, 200]], whole)).toEqual([[56, 0], [324, 264]]) // prettier-ignore
  })
})
