import { z } from 'zod'
import type { Plane } from '../../kinds'
import { planeName, planes } from '../../kinds'
import { type AnySeal, type Bay, type SealKind, sealKinds } from '../../seals'
import { around, ok, type Problem, refused } from '../../units'
import { filled, words } from '../../words'
import type { EditKind } from '../edit'
import { withJoint } from '../fields/tables'
import { entryAt, sealOf } from '../find'
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
    const fresh = kind.fresh(counted.id, plane, bayFor(found))
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
    const fresh = kind.fresh(counted.id, found.seal.plane, bayFor(found.joint))
    return ok(replaced(counted.project, found.joint, part, fresh))
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

/** The joint as a new seal sees it: its still band. Depths do not matter for choosing sizes. */
const bayFor = (joint: Joint): Bay => {
  const planned = joint.planned_mm.value
  return {
    width_mm: around(planned, joint.tolerance_mm.value),
    from_mm: 0,
    to_mm: 70,
    wallFace: [[0, 0], [0, 70]],
    frameFace: [[planned, 0], [planned, 70]],
    flank: [],
  } // prettier-ignore
}

const replaced = (project: Project, joint: Joint, part: string, fresh: AnySeal): Project =>
  withJoint(project, joint.id, it => ({
    ...it,
    seals: it.seals.map(seal => (seal.id === part ? fresh : seal)),
  }))

/** Seals stand in a joint from outside to inside. */
const inOrder = (seals: readonly AnySeal[]): readonly AnySeal[] =>
  seals.toSorted((a, b) => planes.indexOf(b.plane) - planes.indexOf(a.plane))
