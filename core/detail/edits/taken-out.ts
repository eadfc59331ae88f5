import { z } from 'zod'
import { ok, type Problem, refused } from '../../units'
import { words } from '../../words'
import type { EditKind } from '../edit'
import { withJoint } from '../fields/tables'
import { sealOf, takenOutOf } from '../find'
import { inOrder } from './seals'

/** Takes a seal out of its joint and keeps it, with all that was stated of it. */
export const takeOut: EditKind<'take-out'> = {
  kind: 'take-out',
  schema: z.strictObject({ kind: z.literal('take-out'), part: z.string() }),
  apply: (project, { part }) => {
    const found = sealOf(project, part)
    if (found === undefined) return refused(noSeal(part))
    return ok(
      withJoint(project, found.joint.id, it => ({
        ...it,
        seals: it.seals.filter(seal => seal.id !== part),
        out: [...(it.out ?? []), found.seal],
      })),
    )
  },
}

/** Puts a seal back into the joint that it was taken out of. */
export const putBack: EditKind<'put-back'> = {
  kind: 'put-back',
  schema: z.strictObject({ kind: z.literal('put-back'), part: z.string() }),
  apply: (project, { part }) => {
    const found = takenOutOf(project, part)
    if (found === undefined) return refused(noSeal(part))
    return ok(
      withJoint(project, found.joint.id, ({ out = [], ...it }) => {
        const still = out.filter(seal => seal.id !== part)
        return {
          ...it,
          seals: inOrder([...it.seals, found.seal]),
          ...(still.length > 0 ? { out: still } : {}),
        }
      }),
    )
  },
}

const noSeal = (at: string): Problem => ({
  at,
  say: words('there is no such seal', 'diese Dichtung gibt es nicht'),
})
