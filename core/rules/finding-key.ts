import type { Finding } from './finding'

/** What identifies a finding from one model to the next: its rule and its place. */
export const findingKey = ({ rule, where }: Pick<Finding, 'rule' | 'where'>): string =>
  [rule, where.opening, where.side, where.zone, where.part, where.corner?.join('-')].join(' ')
