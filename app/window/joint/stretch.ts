import type { Joint } from '../../../core/detail'
import { kindOf } from '../../../core/seals'
import { inWords, writeBand, writeNumber } from '../../../core/units'
import { filled, type Words, words } from '../../../core/words'

/** How a seal is stretched or pressed at the width that the joint has now, and what it says it takes; over: outside its printed range. */
export type Stretch = { readonly id: string; readonly says: Words; readonly isOver: boolean }

/** The stretch of every seal that follows the joint, at a width between cold and hot. What it may be is for the rules to say. */
export const stretchesAt = (joint: Joint, now_mm: number): readonly Stretch[] => {
  const planned_mm = joint.planned_mm.value
  return joint.seals.flatMap((seal): readonly Stretch[] => {
    const kind = kindOf(seal)
    const takes = kind.takes(seal)
    const signed = (value: number) =>
      inWords(
        language =>
          `${value < 0 ? '−' : '+'}${writeNumber(Math.abs(value), language, value % 1 === 0 ? 0 : 1)}`,
      )
    if (takes.by === 'range') {
      const { min, max } = takes.joint_mm
      const at = inWords(language => writeNumber(Number(now_mm.toFixed(1)), language))
      const range = inWords(language => writeBand(takes.joint_mm, 'mm', language))
      return [
        {
          id: seal.id,
          says: filled(inRange, kind.name, at, range),
          isOver: now_mm < min - 0.05 || max + 0.05 < now_mm,
        },
      ]
    }
    if (takes.by === 'share') {
      const share = Math.round(((now_mm - planned_mm) / planned_mm) * 100)
      return [
        {
          id: seal.id,
          says: filled(ofWidth, kind.name, signed(share), `${takes.share_pct}`),
          isOver: false,
        },
      ]
    }
    if (takes.by === 'slack') {
      const opened = Number((now_mm - planned_mm).toFixed(1))
      return [
        {
          id: seal.id,
          says: filled(ofLoop, kind.name, signed(opened), takes.loop_mm),
          isOver: false,
        },
      ]
    }
    return []
  })
}

const inRange = words('{0} at {1}, works {2}', '{0} bei {1}, wirkt {2}')
const ofWidth = words('{0} {1} % of {2} %', '{0} {1} % von {2} %')
const ofLoop = words('{0} {1} of {2} mm loop', '{0} {1} von {2} mm Schlaufe')
