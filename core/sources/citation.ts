import { type Words, words } from '../words'
import type { SourceId } from './register'

/** How far a figure can be trusted: a published source reports it, memory does, the trade does, or we do. */
export const trusts = ['published', 'memory', 'practice', 'ours'] as const
export type Trust = (typeof trusts)[number]
export const trustName: Readonly<Record<Trust, Words>> = {
  published: words('reported by a published source', 'nach veröffentlichter Quelle'),
  memory: words('from memory, verify', 'aus dem Gedächtnis, prüfen'),
  practice: words('common practice, no source', 'übliche Praxis, ohne Quelle'),
  ours: words('own convention', 'eigene Festlegung'),
}

/** Who says so. `source` is a key of the register; the clause is a place in it. */
export type Citation = { readonly source: SourceId; readonly clause?: string; readonly trust: Trust }

/** A citation in one line. */
export const cite = (source: SourceId, trust: Trust, clause?: string): Citation =>
  clause === undefined ? { source, trust } : { source, clause, trust }
