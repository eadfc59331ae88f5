import type { Joint } from '../../../core/detail'
import type { JointBand } from '../../../core/movement'
import { kindOf } from '../../../core/seals'
import type { Band } from '../../../core/units'
import type { Words } from '../../../core/words'

/** What a seal can do, against what the joint asks of it. */
export type GaugeBar = { readonly id: string; readonly called: Words; readonly takes: Band }

/** A scale in whole millimetres with ticks, wide enough for the joint and for what its seals take. */
export type GaugeScale = { readonly from: number; readonly to: number; readonly ticks: readonly number[] }

/** The seals of a joint that work in a printed range. */
export const barsOf = (joint: Joint): readonly GaugeBar[] =>
  joint.seals.flatMap(seal => {
    const kind = kindOf(seal)
    const takes = kind.takes(seal)
    return takes.by === 'range' ? [{ id: seal.id, called: kind.called(seal), takes: takes.joint_mm }] : []
  })

/** From two below the smallest to five above the largest, so that words at the right end have room. */
export const scaleOf = (bands: readonly JointBand[], bars: readonly GaugeBar[]): GaugeScale => {
  const ends = [...bands.map(it => it.moving_mm), ...bars.map(it => it.takes)].flatMap(it => [it.min, it.max])
  const even = (value: number) => Math.floor(value / 2) * 2
  const from = Math.max(0, even(Math.min(...ends) - 1))
  const reach = Math.max(...ends) + 4 - from
  const step = reach > 40 ? 10 : reach > 20 ? 4 : 2
  const count = Math.ceil(reach / step)
  return {
    from,
    to: from + count * step,
    ticks: Array.from({ length: count + 1 }, (_, i) => from + i * step),
  }
}
