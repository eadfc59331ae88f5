import { type Edit, type Project, fixingOf } from '../../core/detail'
import type { Id } from '../../core/geometry'
import { type Side, sideName, sides } from '../../core/kinds'
import { type Result, inWords, ok, readQuantity, refused, writeQuantity } from '../../core/units'
import { type Words, filled, same, words } from '../../core/words'
import { done } from './change-project'
import type { NamedValue } from './named'

/** A value that is a list of lengths, or that makes one: the axes of the fixings of a side, and how far apart they stand. */
export type NamedList = {
  readonly id: string
  readonly name: Words
  readonly has: (project: Project, id: Id) => boolean
  readonly at: (part: Id) => Result<NamedValue>
  /** what is stated, in words */
  readonly says: (project: Project, part: Id) => Words | undefined
}

const isFixing = (project: Project, id: Id): boolean => fixingOf(project, id) !== undefined

const axesOn = (side: Side): NamedList => ({
  id: `fixing.positions-${side}`,
  name: filled(words('Axes of fixings, {0}', 'Achsen der Befestigungen, {0}'), sideName[side]),
  has: isFixing,
  at: fixing => {
    const as = (positions_mm: readonly number[] | undefined, says: Words) =>
      done([{ kind: 'place-fixings', fixing, side, ...(positions_mm ? { positions_mm } : {}) }], says)
    return ok({
      read: typed => {
        const read = typed.split(/[;\s]+/).filter(Boolean).map(lengthOf) // prettier-ignore
        const wrong = read.find(it => !it.ok)
        if (wrong && !wrong.ok) return wrong
        const axes = read.flatMap(it => (it.ok ? [it.value] : []))
        return as(axes, filled(same('{0}: {1} mm'), fixing, axes.join('; ')))
      },
      clear: () => as(undefined, filled(words('{0}: by their count', '{0}: nach ihrer Anzahl'), fixing)),
    })
  },
  says: (project, fixing) => {
    const axes = fixingOf(project, fixing)?.fixing.positions_mm?.[side]
    return axes && same(`${axes.join('; ')} mm`)
  },
})

const spacingOn = (side: Side): NamedList => ({
  id: `fixing.spacing-${side}`,
  name: filled(
    words('Fixings no further apart, {0}', 'Befestigungen höchstens im Abstand, {0}'),
    sideName[side],
  ),
  has: isFixing,
  at: fixing =>
    ok({
      read: typed => {
        const read = lengthOf(typed)
        if (!read.ok) return read
        const edit: Edit = { kind: 'space-fixings', fixing, side, spacing_mm: read.value }
        const says = inWords(language => writeQuantity(read.value, 'mm', language))
        return done([edit], filled(words('{0}: no further apart than {1}', '{0}: höchstens im Abstand {1}'), fixing, says)) // prettier-ignore
      },
      clear: () => refused({ at: fixing, say: noClear }),
    }),
  says: () => undefined,
})

const noClear = words(
  'a spacing sets a count: change the count',
  'ein Abstand setzt eine Anzahl: die Anzahl ändern',
)

const lengthOf = (typed: string): Result<number> => {
  const read = readQuantity(typed, { unit: 'mm', allowed: { unit: 'mm', min: 0, max: 20_000 } })
  return read.ok ? ok(read.value.value) : read
}

/** Every list that can be typed; its lengths are parted by a semicolon or a space, since a comma is a decimal mark. */
export const lists: readonly NamedList[] = [...sides.map(axesOn), ...sides.map(spacingOn)]

export const listOf = (id: string): NamedList | undefined => lists.find(it => it.id === id)
