import type { LimitKey, LimitShapes, Practice, Row, When } from './limit'

/** The first row of a limit that fits what is given, or nothing: then the practice has no value and refers. */
export const lookUp = <K extends LimitKey>(
  practice: Practice,
  key: K,
  given: LimitShapes[K]['given'],
): Row<K> | undefined => practice.limits[key]?.find(row => fits(row.when, given))

const fits = <G extends object>(when: When<G>, given: G): boolean => {
  for (const key in when) if (!isWithin(when[key], given[key])) return false
  return true
}

const isWithin = (asked: unknown, is: unknown): boolean => {
  if (Array.isArray(asked)) return asked.includes(is)
  if (typeof is !== 'number' || typeof asked !== 'object' || asked === null) return false
  // The only other form of a condition is a half-open range.
  const { above = -Infinity, upTo = Infinity } = asked as { above?: number; upTo?: number }
  return above < is && is <= upTo
}
