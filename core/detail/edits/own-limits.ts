import { z } from 'zod'
import { limitKeys, type OwnRow, ownRow } from '../../practice'
import { ok, refused } from '../../units'
import { words } from '../../words'
import type { EditKind } from '../edit'

/** A file holds no more rows of an office than this: ours, as its schema. */
const most = 40

const isSameCase = (a: OwnRow, b: OwnRow): boolean =>
  a.limit === b.limit && JSON.stringify(a.row.when) === JSON.stringify(b.row.when)

/**
 * States a limit of one's own for a case, with the reason: it goes before the row of the practice, and takes the place
 * of what was stated for the same case before.
 */
export const ownLimit: EditKind<'own-limit'> = {
  kind: 'own-limit',
  schema: z.strictObject({ kind: z.literal('own-limit'), row: ownRow }),
  apply: (project, { row }) => {
    const found = ownRow.safeParse(row)
    if (!found.success)
      return refused({
        at: row.limit,
        say: words('this is no limit of that rule', 'das ist kein Grenzwert dieser Regel'),
      })
    if (row.note.trim() === '')
      return refused({
        at: row.limit,
        say: words(
          'a limit of one’s own needs its source or reason',
          'ein eigener Grenzwert braucht Quelle oder Grund',
        ),
      })
    const others = project.practice.own.filter(it => !isSameCase(it, row))
    if (others.length >= most)
      return refused({
        at: row.limit,
        say: words('at most 40 limits of one’s own', 'höchstens 40 eigene Grenzwerte'),
      })
    return ok({ ...project, practice: { ...project.practice, own: [row, ...others] } })
  },
}

/** Takes a limit of one's own back: the practice holds again. */
export const dropLimit: EditKind<'drop-limit'> = {
  kind: 'drop-limit',
  schema: z.strictObject({
    kind: z.literal('drop-limit'),
    limit: z.enum(limitKeys),
    when: z.record(z.string(), z.unknown()),
  }),
  apply: (project, { limit, when }) => {
    const isMeant = (it: OwnRow) => it.limit === limit && JSON.stringify(it.row.when) === JSON.stringify(when)
    if (!project.practice.own.some(isMeant))
      return refused({
        at: limit,
        say: words('there is no such limit of one’s own', 'diesen eigenen Grenzwert gibt es nicht'),
      })
    const own = project.practice.own.filter(it => !isMeant(it))
    return ok({ ...project, practice: { ...project.practice, own } })
  },
}
