import type { Citation } from '../sources'
import { practice } from './all'
import type { LimitKey, OwnRow, Practice, Row, Tier } from './limit'

/**
 * The practice that a project uses: its own rows first, then those of the country.
 * A limit that the country does not ask for is asked as soon as the office states a row of its own.
 * Throws on the name of a practice that is not known: files with one are refused when they are opened.
 */
export const practiceOf = (chosen: { readonly id: string; readonly own: readonly OwnRow[] }): Practice => {
  const country = practice(chosen.id)
  if (!country) throw new Error(`No practice is called ${chosen.id}`)
  return chosen.own.reduceRight(withRow, country)
}

const withRow = (to: Practice, own: OwnRow): Practice => ({
  ...to,
  limits: { ...to.limits, [own.limit]: [signed(own), ...(to.limits[own.limit] ?? [])] },
  notAsked: without(to.notAsked, own.limit),
})

const without = (notAsked: Practice['notAsked'], key: LimitKey): Practice['notAsked'] => {
  const rest = { ...notAsked }
  delete rest[key]
  return rest
}

/** An own row speaks in the name of the office, with the reason that it noted. */
const signed = <K extends LimitKey>(own: { readonly row: Row<K>; readonly note: string }): Row<K> => {
  const by: Citation = { source: 'own', clause: own.note, trust: 'ours' }
  const tier = (it: Tier<K>): Tier<K> => ({ then: it.then, cite: by, ifBroken: it.ifBroken })
  const { last } = own.row
  return { when: own.row.when, ...tier(own.row), ...(last ? { last: tier(last) } : {}) }
}
