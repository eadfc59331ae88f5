import type { Conditions } from '../../detail'
import { type Balance, monthlyBalance } from '../path/monthly'
import { type Path, type Taken_m, allAt, unfavourable } from '../path/path'
import { type BothSides, type Profile, profileOf } from '../path/profile'
import { gathering_kg_m2s, tautPressures_Pa } from '../path/taut'
import { type TwoPeriods, twoPeriodBalance } from '../path/two-period'

/** Vapour along one path, with the resistances that each answer was found with. Each is an estimate in one dimension. */
export type Along = {
  readonly path: Path
  readonly winter: {
    readonly taken_m: Taken_m
    readonly profile: Profile
    /** pressures with water: the taut string below saturation, face by face */
    readonly taut_Pa: readonly number[]
    readonly gathers_kg_m2s: readonly number[]
  }
  readonly periods: TwoPeriods & { readonly taken_m: Taken_m }
  readonly year: Balance & { readonly taken_m: Taken_m }
}

/**
 * All that vapour says of a path: the profile of the winter, the two periods of DIN 4108-3 and the year of EN ISO 13788,
 * each with the least favourable ends of the ranges of its layers: those with the most water.
 */
export const along = (path: Path, conditions: Conditions): Along => {
  const choices = unfavourable(path)
  const winters = choices.map(taken_m => winterOf(path, taken_m, conditions))
  const winter = most(winters, it => it.gathers_kg_m2s.reduce((sum, one) => sum + Math.max(0, one), 0))
  const periods = most(
    choices.map(taken_m => ({ ...twoPeriodBalance(path, taken_m), taken_m })),
    it => it.gathers_kg_m2,
  )
  const year = most(
    choices.map(taken_m => ({ ...monthlyBalance(path, taken_m, conditions.year), taken_m })),
    it => it.peak_kg_m2 + it.left_kg_m2,
  )
  return {
    path,
    winter: winter ?? winterOf(path, allAt(path, 'min'), conditions),
    periods: periods ?? { ...twoPeriodBalance(path, []), taken_m: [] },
    year: year ?? { faces: [], rows: [], peak_kg_m2: 0, left_kg_m2: 0, taken_m: [] },
  }
}

const winterOf = (path: Path, taken_m: Taken_m, sides: BothSides): Along['winter'] => {
  const profile = profileOf(path, taken_m, sides)
  const ends = { outside_Pa: sides.outside.vapour_Pa, inside_Pa: sides.inside.vapour_Pa }
  const taut_Pa = tautPressures_Pa(profile.faces, ends, () => false)
  return { taken_m, profile, taut_Pa, gathers_kg_m2s: gathering_kg_m2s(profile.faces, taut_Pa) }
}

/** The first of those that have most of something. */
const most = <T>(all: readonly T[], of: (it: T) => number): T | undefined =>
  all.reduce<T | undefined>((best, it) => (best === undefined || of(it) > of(best) ? it : best), undefined)
