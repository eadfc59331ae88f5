import { z } from 'zod'
import type { Plane } from '../../kinds'
import { planeName, planes } from '../../kinds'
import { type AnySeal, type Bay, kindOf, mostDepth_mm, plainBay, type SealKind, sealKinds } from '../../seals'
import { around, ok, type Problem, refused } from '../../units'
import { filled, isSome, words } from '../../words'
import type { EditKind } from '../edit'
import { withJoint } from '../fields/tables'
import { entryAt, frameOf, openingsWith, profileOf, sealOf } from '../find'
import type { Joint, Project } from '../model'
import { numbered } from './numbered'

/** Puts a new seal into a plane: outer ones at the outside, inner ones at the inside, middle ones between. */
export const fill: EditKind<'fill'> = {
  kind: 'fill',
  schema: z.strictObject({
    kind: z.literal('fill'),
    joint: z.string(),
    plane: z.enum(planes),
    seal: z.string(),
  }),
  apply: (project, { joint, plane, seal }) => {
    const found = entryAt(project.joints, joint)
    const kind = servant(seal, plane)
    if (found === undefined) return refused(noJoint(joint))
    if (kind === undefined) return refused(noServant(seal, plane))
    const counted = numbered(project, 'seal')
    const fresh = kind.fresh(counted.id, plane, bayFor(project, found))
    return ok(withJoint(counted.project, joint, it => ({ ...it, seals: inOrder([...it.seals, fresh]) })))
  },
}

/** Puts a seal of another kind in the place of one. */
export const replace: EditKind<'replace'> = {
  kind: 'replace',
  schema: z.strictObject({ kind: z.literal('replace'), part: z.string(), seal: z.string() }),
  apply: (project, { part, seal }) => {
    const found = sealOf(project, part)
    if (found === undefined)
      return refused({ at: part, say: words('there is no such seal', 'diese Dichtung gibt es nicht') })
    const kind = servant(seal, found.seal.plane)
    if (kind === undefined) return refused(noServant(seal, found.seal.plane))
    const counted = numbered(project, 'seal')
    const fresh = kind.fresh(counted.id, found.seal.plane, bayFor(project, found.joint))
    return ok(replaced(counted.project, found.joint, part, fresh))
  },
}

/** Lets two seals of a joint change planes, each with all its values: to see what the order of the planes is worth. */
export const exchange: EditKind<'exchange'> = {
  kind: 'exchange',
  schema: z.strictObject({ kind: z.literal('exchange'), part: z.string(), with: z.string() }),
  apply: (project, { part, with: other }) => {
    const [a, b] = [sealOf(project, part), sealOf(project, other)]
    if (a === undefined || b === undefined || a.joint.id !== b.joint.id)
      return refused({
        at: a === undefined ? part : other,
        say: words('there is no such seal in this joint', 'diese Dichtung gibt es in dieser Fuge nicht'),
      })
    const moved = [
      { seal: a.seal, to: b.seal.plane },
      { seal: b.seal, to: a.seal.plane },
    ]
    const problems: readonly Problem[] = moved.flatMap(({ seal, to }) =>
      kindOf(seal).planes.includes(to) ? [] : [noServant(seal.id, to)],
    )
    if (isSome(problems)) return refused(...problems)
    return ok(
      withJoint(project, a.joint.id, it => ({
        ...it,
        seals: inOrder(
          it.seals.map(seal => {
            const to = moved.find(one => one.seal.id === seal.id)?.to
            return to === undefined ? seal : { ...seal, plane: to }
          }),
        ),
      })),
    )
  },
}

const servant = (seal: string, plane: Plane): SealKind | undefined =>
  sealKinds.find(it => it.kind === seal && it.planes.includes(plane))

const noJoint = (joint: string): Problem => ({
  at: joint,
  say: words('there is no such joint', 'diese Fuge gibt es nicht'),
})

const noServant = (seal: string, plane: Plane): Problem => ({
  at: seal,
  say: filled(
    words('this kind of seal does not serve the {0}', 'diese Dichtungsart dient nicht in: {0}'),
    planeName[plane],
  ),
})

/** The joint as a new seal sees it: its still band, and the depth of the shallowest frame that it goes along. */
const bayFor = (project: Project, joint: Joint): Bay => {
  const depths = openingsWith(project, joint.id).map(it => profileOf(frameOf(project, it.id)).depth_mm)
  const depth_mm = Math.min(mostDepth_mm, ...depths)
  return plainBay(around(joint.planned_mm.value, joint.tolerance_mm.value), depth_mm)
}

const replaced = (project: Project, joint: Joint, part: string, fresh: AnySeal): Project =>
  withJoint(project, joint.id, it => ({
    ...it,
    seals: it.seals.map(seal => (seal.id === part ? fresh : seal)),
  }))

/** Seals stand in a joint from outside to inside. */
export const inOrder = (seals: readonly AnySeal[]): readonly AnySeal[] =>
  seals.toSorted((a, b) => planes.indexOf(b.plane) - planes.indexOf(a.plane))
