import { twoPeriods } from '../../air'
import { air } from '../../detail'
import { seconds, through_kg_m2s } from '../diffusion'
import type { Path, Taken_m } from './path'
import { type BothSides, profileOf } from './profile'
import { gathering_kg_m2s, tautPressures_Pa } from './taut'

/** What the cold period brings and the warm one can take away. */
export type TwoPeriods = {
  /** faces where water gathers: behind which layer, and how much in the cold period */
  readonly faces: readonly { readonly after: number; readonly sd_m: number; readonly gathers_kg_m2: number }[]
  readonly gathers_kg_m2: number
  /** what could dry in the warm period, if there were that much; nothing where no water gathers */
  readonly dries_kg_m2: number
  readonly sum: readonly PeriodTerm[]
}

/** One flow of the sum, so that it can be worked by hand: pressures at both ends, the air layer between, and the days. */
export type PeriodTerm = {
  readonly what: 'towards' | 'onwards' | 'to-outside' | 'to-inside'
  readonly from_Pa: number
  readonly to_Pa: number
  readonly sd_m: number
  readonly days: number
  readonly amount_kg_m2: number
}

/** The cold period of the standard. */
export const coldPeriod: BothSides = {
  inside: air(twoPeriods.cold.inside_C, twoPeriods.cold.inside_pct),
  outside: air(twoPeriods.cold.outside_C, twoPeriods.cold.outside_pct),
}

/**
 * The two-period method of DIN 4108-3 (climate from memory): water gathers for 90 cold days where the taut string touches
 * saturation; in 90 warm days it dries from there to both sides, in walls from 1700 Pa against 1200 Pa.
 */
export const twoPeriodBalance = (path: Path, taken_m: Taken_m): TwoPeriods => {
  const { faces } = profileOf(path, taken_m, coldPeriod)
  const ends = { outside_Pa: coldPeriod.outside.vapour_Pa, inside_Pa: coldPeriod.inside.vapour_Pa }
  const pressures = tautPressures_Pa(faces, ends, () => false)
  const time_s = seconds(twoPeriods.cold.days)
  const wet = gathering_kg_m2s(faces, pressures).flatMap((rate, i) =>
    rate * time_s > least_kg_m2
      ? [{ after: i, sd_m: faces[i]?.sd_m ?? 0, gathers_kg_m2: rate * time_s }]
      : [],
  )
  const [outermost, innermost] = [wet[0], wet.at(-1)]
  if (!outermost || !innermost) return { faces: [], gathers_kg_m2: 0, dries_kg_m2: 0, sum: [] }
  const whole_m = faces.at(-1)?.sd_m ?? 0
  const { warm } = twoPeriods
  const terms: readonly PeriodTerm[] = [
    term('towards', ends.inside_Pa, faces[innermost.after]?.saturation_Pa ?? 0, whole_m - innermost.sd_m, twoPeriods.cold.days), // prettier-ignore
    term('onwards', faces[outermost.after]?.saturation_Pa ?? 0, ends.outside_Pa, outermost.sd_m, twoPeriods.cold.days), // prettier-ignore
    term('to-outside', warm.wet_Pa, warm.outside_Pa, outermost.sd_m, warm.days),
    term('to-inside', warm.wet_Pa, warm.inside_Pa, whole_m - innermost.sd_m, warm.days),
  ]
  const of = (what: PeriodTerm['what']) => terms.find(it => it.what === what)?.amount_kg_m2 ?? 0
  return {
    faces: wet,
    gathers_kg_m2: wet.reduce((sum, it) => sum + it.gathers_kg_m2, 0),
    dries_kg_m2: of('to-outside') + of('to-inside'),
    sum: terms,
  }
}

/** A tenth of a gram on a square metre in a winter is dry. Ours. */
const least_kg_m2 = 1e-4

const term = (
  what: PeriodTerm['what'],
  from_Pa: number,
  to_Pa: number,
  sd_m: number,
  days: number,
): PeriodTerm => ({
  what,
  from_Pa,
  to_Pa,
  sd_m,
  days,
  amount_kg_m2: through_kg_m2s(from_Pa - to_Pa, sd_m) * seconds(days),
})
