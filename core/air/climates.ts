import { type Citation, cite } from '../sources'
import { type Words, words } from '../words'

/** A month by its number in the year. */
export const months = [
  'january', 'february', 'march', 'april', 'may', 'june',
  'july', 'august', 'september', 'october', 'november', 'december',
] as const // prettier-ignore
export type Month = (typeof months)[number]

export const monthName: Readonly<Record<Month, Words>> = {
  january: words('January', 'Januar'),
  february: words('February', 'Februar'),
  march: words('March', 'März'),
  april: words('April', 'April'),
  may: words('May', 'Mai'),
  june: words('June', 'Juni'),
  july: words('July', 'Juli'),
  august: words('August', 'August'),
  september: words('September', 'September'),
  october: words('October', 'Oktober'),
  november: words('November', 'November'),
  december: words('December', 'Dezember'),
}

/** Days of a month; February without its leap day. */
export const daysOf: Readonly<Record<Month, number>> = {
  january: 31,
  february: 28,
  march: 31,
  april: 30,
  may: 31,
  june: 30,
  july: 31,
  august: 31,
  september: 30,
  october: 31,
  november: 30,
  december: 31,
}

/** Air outside: a temperature and a relative humidity. */
export type OutsideAir = { readonly outside_C: number; readonly outside_pct: number }

/** Steady winter climates that a surface is judged in. Own values are stated beside them. */
export const climateIds = ['din-4108', 'coldest-month'] as const
export type ClimateId = (typeof climateIds)[number]

export const climateName: Readonly<Record<ClimateId, Words>> = {
  'din-4108': words('−5 °C, 80 % (DIN 4108)', '−5 °C, 80 % (DIN 4108)'),
  'coldest-month': words('the coldest month of the year stated', 'der kälteste Monat des angegebenen Jahres'),
}

/** −5 °C is set by DIN 4108-2 for the surface criterion (published), 80 % by DIN 4108-3 for the cold period (from memory). */
export const winterOfDin: OutsideAir & { readonly cite: Citation } = {
  outside_C: -5,
  outside_pct: 80,
  cite: cite('din-4108-2', 'published', '−5 °C'),
}

/** Ground under a threshold, as a yearly mean (from memory). */
export const usualGround_C = 10

/**
 * A cool inland year to try the monthly method with, where none is stated: round figures of ours, no place. A real
 * balance needs the twelve means of the place.
 */
export const trialYear: Readonly<Record<Month, OutsideAir>> = {
  january: { outside_C: -1, outside_pct: 86 },
  february: { outside_C: 0, outside_pct: 82 },
  march: { outside_C: 4, outside_pct: 77 },
  april: { outside_C: 8.5, outside_pct: 72 },
  may: { outside_C: 13, outside_pct: 71 },
  june: { outside_C: 16.5, outside_pct: 72 },
  july: { outside_C: 18, outside_pct: 73 },
  august: { outside_C: 17.5, outside_pct: 74 },
  september: { outside_C: 14, outside_pct: 79 },
  october: { outside_C: 9, outside_pct: 83 },
  november: { outside_C: 4, outside_pct: 86 },
  december: { outside_C: 0.5, outside_pct: 87 },
}

/** The two periods of DIN 4108-3 (from memory): a cold one of 90 days, and a warm one of 90 days in which walls dry. */
export const twoPeriods = {
  cold: { days: 90, inside_C: 20, inside_pct: 50, outside_C: -5, outside_pct: 80 },
  warm: { days: 90, inside_Pa: 1200, outside_Pa: 1200, wet_Pa: 1700 },
} as const
