import { z } from 'zod'
import { ok, refused } from '../../units'
import { words } from '../../words'
import type { EditKind } from '../edit'
import type { Id } from '../../geometry'
import type { Project } from '../model'
import { takenOutOf } from '../find'
import { partKindOf } from '../fields/field-of'
import { withJoint, withOpening, withWall } from '../fields/tables'

/** A name is no longer than what a line of a list can hold: ours. */
export const longestName = 80

/**
 * Calls a part by a name of its own. Walls, joints and openings always have one; every other part is called by
 * what it is until somebody names it, and again when the name is taken back.
 */
export const rename: EditKind<'rename'> = {
  kind: 'rename',
  schema: z.strictObject({ kind: z.literal('rename'), part: z.string(), to: z.string().max(longestName) }),
  apply: (project, { part, to }) => {
    const name = to.trim()
    if (name.length > longestName) {
      return refused({
        at: part,
        say: words('a name is at most 80 characters long', 'ein Name ist höchstens 80 Zeichen lang'),
      })
    }
    const kind = partKindOf(project, part.split('/')[0] ?? part)
    if (kind === undefined && takenOutOf(project, part) === undefined)
      return refused({ at: part, say: words('there is no such part', 'dieses Teil gibt es nicht') })
    if (kind === 'wall') return ok(withWall(project, part, it => ({ ...it, name })))
    if (kind === 'joint') return ok(withJoint(project, part, it => ({ ...it, name })))
    if (kind === 'opening') return ok(withOpening(project, part, it => ({ ...it, name })))
    return ok(named(project, part, name))
  },
}

/** The project with a part called so; an empty name leaves it what it is. */
export const named = (project: Project, part: Id, name: string): Project => {
  const { names: before = {}, ...rest } = project
  const { [part]: _, ...others } = before
  const names = name === '' ? others : { ...others, [part]: name }
  return Object.keys(names).length === 0 ? rest : { ...rest, names }
}
