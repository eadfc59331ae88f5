import { type MonthAir, air } from '../../core/detail'
import { daysOf, months, saturation_Pa, vapourExcess_Pa } from '../../core/air'
import type { Path } from '../../core/vapour'

/** A layer by its thickness in m, conductivity and vapour factor, as tables write it. */
export type TableLayer = readonly [name: string, thickness_m: number, lambda_W_mK: number, mu: number]

/** A path of layers as a table gives them, outside to inside, each with one vapour factor. */
export const aPath = (layers: readonly TableLayer[], films: { rse: number; rsi: number }): Path => ({
  layers: layers.map(([part, thickness_m, lambda_W_mK, mu]) => ({
    part,
    thickness_mm: 1000 * thickness_m,
    resistance_m2K_W: thickness_m / lambda_W_mK,
    sd_m: { min: mu * thickness_m, max: mu * thickness_m },
  })),
  outside_m2K_W: films.rse,
  inside_m2K_W: films.rsi,
})

/** A membrane of no thickness in a path. */
export const aMembrane = (sd_m: number): Path['layers'][number] => ({
  part: 'membrane',
  thickness_mm: 0,
  resistance_m2K_W: 0,
  sd_m: { min: sd_m, max: sd_m },
})

/** A year of monthly means, with a room of humidity class 3 at 20 °C behind. */
export const aYear = (outside_C: readonly number[], outsideShare: readonly number[]): readonly MonthAir[] =>
  months.map((month, i) => {
    const outside = air(outside_C[i] ?? 0, 100 * (outsideShare[i] ?? 0))
    const vapour_Pa = outside.vapour_Pa + vapourExcess_Pa('3', outside.temperature_C)
    const inside = { temperature_C: 20, vapour_Pa, humidity_pct: (100 * vapour_Pa) / saturation_Pa(20) }
    return { month, days: daysOf[month], outside, inside }
  })
