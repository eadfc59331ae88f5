import type { Verdict } from './finding'
import { type Words, words } from '../words'

/** Mark and word of each verdict: the mark is found at a glance, the word is read. */
export const verdictName: Readonly<Record<Verdict, { readonly mark: string; readonly word: Words }>> = {
  'not-met': { mark: '×', word: words('not met', 'nicht erfüllt') },
  unknown: { mark: '?', word: words('unknown', 'unbekannt') },
  refer: { mark: '→', word: words('refer', 'Nachweis') },
  advice: { mark: '!', word: words('advice', 'Hinweis') },
  met: { mark: '✓', word: words('met', 'erfüllt') },
}

/** What stands at the left of the lines of a finding. */
export const label = {
  actual: words('actual', 'vorhanden'),
  required: words('required', 'gefordert'),
  margin: words('margin', 'Abstand'),
  there: words('there', 'vorhanden'),
  missing: words('missing', 'fehlt'),
  sum: words('sum', 'Rechnung'),
  source: words('source', 'Quelle'),
  restsOn: words('assumed', 'angenommen'),
  remedy: words('remedy', 'Abhilfe'),
  to: words('refer to', 'Nachweis durch'),
  handOver: words('hand over', 'übergeben'),
  state: words('state', 'angeben'),
  then: words('then state anew', 'danach neu angeben'),
} as const

export const notApplicable = words('does not apply', 'entfällt')
export const practiceWord = words('Practice', 'Regelwerk')
export const edition = words('edition', 'Ausgabe')
export const planned = words('planned', 'geplant')
export const withMovement = words('with tolerance and movement', 'mit Toleranz und Bewegung')
export const governs: Readonly<Record<'planned' | 'narrowest' | 'widest', Words>> = {
  planned: words('as planned', 'wie geplant'),
  narrowest: words('at the narrowest', 'an der engsten Stelle'),
  widest: words('at the widest', 'an der breitesten Stelle'),
}
export const wholeOpening = words('whole opening', 'ganze Öffnung')
export const nothing = words('nothing', 'nichts')
export const note = words('Note', 'Anmerkung')
export const revision = words('revision', 'Änderung')
