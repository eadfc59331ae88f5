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

/** Where a long German compound may be broken: before the last words of the trade's compounds. */
const joints =
  /(?<=\p{L}{4})(geschwindigkeit|druck|beiwert|modul|sicherung|dichtheit|klasse|fähigkeit|durchmesser|temperatur|feuchte|tiefe|moment)/gu

/** A name with places at which a narrow column may break its long words; they show only where they are used. */
export const softened = (name: string): string =>
  name.replace(/\p{L}{15,}/gu, word => word.replace(joints, '\u00ad$1'))

/** Whether the gesture in hand changes this value: it then differs from where the gesture began. */
export const states = (session: Session, at: FieldAt): boolean => {
  const before = session.gesture?.before.project
  const read = fieldOf(at.field)?.read
  return (
    before !== undefined && read !== undefined && read(before, at.part) !== read(session.project, at.part)
  )
}
