import {
  daysOf,
  type HumidityClass,
  humidityClasses,
  type Month,
  months,
  type RoomUse,
  roomUses,
  vapourExcess_Pa,
  vapour_Pa,
} from '../air'
import type { Id } from '../geometry'
import type { FieldAt, Known } from './field'
import { knownChoice } from './fields/choices'
import { known } from './fields/field-of'
import { site } from './fields/site'
import type { Project } from './model'

/** Air: temperature, relative humidity, and the vapour pressure of both. */
export type Air = {
  readonly temperature_C: number
  readonly humidity_pct: number
  readonly vapour_Pa: number
}

/** Air on both sides in a month. */
export type MonthAir = {
  readonly month: Month
  readonly days: number
  readonly inside: Air
  readonly outside: Air
}

/** The conditions that heat and vapour of an opening are computed in. */
export type Conditions = {
  readonly use: RoomUse
  readonly humidityClass: HumidityClass
  /** the winter that surfaces are judged in */
  readonly inside: Air
  readonly outside: Air
  readonly ground_C: number
  /** January first */
  readonly year: readonly MonthAir[]
  /** what of the winter is assumed: nobody stated it */
  readonly assumed: readonly FieldAt[]
  /** what of the year is assumed */
  readonly yearAssumed: readonly FieldAt[]
}

/** The values that the winter of an opening is made of: for forms, in this order. */
export const winterValues = (opening: Id): readonly FieldAt[] => [
  { field: 'opening.room-use', part: opening },
  { field: 'opening.inside-temperature', part: opening },
  { field: 'opening.inside-humidity', part: opening },
  { field: 'site.outside-temperature', part: site },
  { field: 'site.outside-humidity', part: site },
]

/** What the air on both sides of an opening is taken to be: stated values first, then those of room, class and climate. */
export const conditionsOf = (project: Project, opening: Id): Conditions => {
  const number = (field: string, part: Id) => known(project, { field, part })?.value ?? 0
  const word = <W extends string>(list: readonly W[], field: string): W | undefined => {
    const found = knownChoice(project, { field, part: opening })?.value
    return list.find(it => it === found)
  }
  const inside_C = number('opening.inside-temperature', opening)
  const humidityClass = word(humidityClasses, 'opening.humidity-class') ?? '3'
  const stated_pct = project.openings[opening]?.room?.inside_pct?.value
  const year = months.map((month): MonthAir => {
    const outside = air(number(`site.temperature-${month}`, site), number(`site.humidity-${month}`, site))
    const excess_Pa = vapourExcess_Pa(humidityClass, outside.temperature_C)
    const inside =
      stated_pct === undefined ? airOf(inside_C, outside.vapour_Pa + excess_Pa) : air(inside_C, stated_pct)
    return { month, days: daysOf[month], inside, outside }
  })
  const monthly = months.flatMap((month): readonly FieldAt[] => [
    { field: `site.temperature-${month}`, part: site },
    { field: `site.humidity-${month}`, part: site },
  ])
  return {
    use: word(roomUses, 'opening.room-use') ?? 'dwelling',
    humidityClass,
    inside: air(inside_C, number('opening.inside-humidity', opening)),
    outside: air(number('site.outside-temperature', site), number('site.outside-humidity', site)),
    ground_C: number('site.ground-temperature', site),
    year,
    assumed: winterValues(opening).filter(at => basisOf(project, at) === 'assumed'),
    yearAssumed: monthly.filter(at => basisOf(project, at) === 'assumed'),
  }
}

const basisOf = (project: Project, at: FieldAt): Known<unknown>['basis'] | undefined =>
  (known(project, at) ?? knownChoice(project, at))?.basis

/** Air by its temperature and relative humidity. */
export const air = (temperature_C: number, humidity_pct: number): Air => ({
  temperature_C,
  humidity_pct,
  vapour_Pa: vapour_Pa(temperature_C, humidity_pct),
})

/** Air by its vapour pressure; what is above saturation has rained out. */
const airOf = (temperature_C: number, pressure_Pa: number): Air => {
  const saturated_Pa = vapour_Pa(temperature_C, 100)
  const kept_Pa = Math.min(pressure_Pa, saturated_Pa)
  return { temperature_C, humidity_pct: (100 * kept_Pa) / saturated_Pa, vapour_Pa: kept_Pa }
}
