import { type FieldAt, fieldOf } from '../../../core/detail'
import type { Session } from '../../editor'

/** A piece of a name; `isLow` is written below the line: the index of s_d. */
export type Piece = { readonly text: string; readonly isLow: boolean }

/** A name with its symbols: `s_d` has its d below the line. */
export const writeName = (name: string): readonly Piece[] =>
  name
    .split(/(_[a-z]+)/i)
    .filter(Boolean)
    .map(text => (text.startsWith('_') ? { text: text.slice(1), isLow: true } : { text, isLow: false }))

/** Whether the gesture in hand changes this value: it then differs from where the gesture began. */
export const states = (session: Session, at: FieldAt): boolean => {
  const before = session.gesture?.before.project
  const read = fieldOf(at.field)?.read
  return (
    before !== undefined && read !== undefined && read(before, at.part) !== read(session.project, at.part)
  )
}
