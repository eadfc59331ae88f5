/** Marks of the five verdicts and of rules that do not apply: shape, then colour. Ours; contrast at least 4.5 : 1. */
export const statuses = ['met', 'advice', 'not-met', 'refer', 'unknown', 'not-applicable'] as const
export type Status = (typeof statuses)[number]

export const statusColours: Readonly<Record<Status, { readonly line: string; readonly fill: string }>> = {
  met: { line: '#00694E', fill: '#DDF1EA' },
  advice: { line: '#7A4B00', fill: '#FFF0CC' },
  'not-met': { line: '#A4161A', fill: '#FBE0E0' },
  refer: { line: '#4B3A9B', fill: '#E9E5F7' },
  unknown: { line: '#4A4F52', fill: '#EEEEEE' },
  'not-applicable': { line: '#4A4A4A', fill: '#EEEEEE' },
}
