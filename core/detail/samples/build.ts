import type { Id } from '../../geometry'
import { type Side, sides as sideNames } from '../../kinds'
import { practice } from '../../practice'
import type { AnySeal } from '../../seals'
import { specified, type Stated } from '../../units'
import type { Some } from '../../words'
import { withMaterials } from '../edits/materials'
import type { Asked } from '../asked'
import type { Box } from '../box'
import type { Block, Fixing, Mullion } from '../fixing'
import type { Sill } from '../sill'
import type { Threshold } from '../threshold'
import type { Told } from '../told'
import type { Survey } from '../survey'
import type { FormatTag, Frame, Joint, Opening, Project, Zone } from '../model'
import { type WallPlan, wallFrom } from '../starters/wall-plan'

export const formatTag: FormatTag = { name: 'jambwright', version: 2, readableFrom: 2 }

export type Plan = {
  readonly title: Project['title']
  readonly practice: string
  readonly wall: WallPlan
  readonly frame: Omit<Frame, 'id'>
  readonly opening: {
    readonly name: string
    readonly width_mm: number
    readonly height_mm: number
    readonly position_mm: number
  }
  readonly joint: JointPlan
  /** outside to inside; ids are given here */
  readonly seals: readonly Seal[]
  /** sides with a joint of their own; the others share the first */
  readonly others?: { readonly [K in Side]?: { readonly joint: JointPlan; readonly seals: readonly Seal[] } }
  readonly fixing?: Omit<Fixing, 'id' | 'kind'>
  readonly fixings?: readonly Omit<Fixing, 'id'>[]
  readonly blocks?: readonly Omit<Block, 'id'>[]
  /** where mullions and transoms stand, and their face */
  readonly mullions?: readonly (readonly [at_mm: number, face_mm: number])[]
  readonly transoms?: readonly (readonly [at_mm: number, face_mm: number])[]
  readonly sill?: Omit<Sill, 'id'>
  readonly threshold?: Omit<Threshold, 'id'>
  readonly box?: Omit<Box, 'id'>
  /** the sill is there already and must stay */
  readonly sillStays?: true
  readonly survey?: Survey
  readonly asked?: Asked
  readonly told?: Told
}

type JointPlan = {
  readonly name: string
  readonly planned_mm: Stated<number>
  readonly tolerance_mm: Stated<number>
}

/** A seal before it has an id. */
type Seal = { readonly kind: string; readonly plane: AnySeal['plane']; readonly gap?: 'rebate' } & Readonly<
  Record<string, AnySeal[string]>
>

/** A whole project with one opening, from a plan. */
export const built = (plan: Plan): Project => {
  let next = 1
  const id = (kind: string): Id => `${kind}-${next++}`
  const wall = wallFrom(plan.wall, id)
  const frame: Frame = { id: id('frame'), ...plan.frame }
  const jointFrom = (it: JointPlan, seals: readonly Seal[]): Joint => ({
    id: id('joint'),
    ...it,
    seals: seals.map(seal => {
      const { kind, ...rest } = seal
      return { kind, id: id('seal'), ...rest } satisfies AnySeal
    }),
  })
  const joint = jointFrom(plan.joint, plan.seals)
  const others: { [K in Side]?: Joint } = {}
  for (const side of sideNames) {
    const other = plan.others?.[side]
    if (other) others[side] = jointFrom(other.joint, other.seals)
  }
  const zonesOf = (side: Side, length_mm: number): Some<Zone> => [
    { id: id('zone'), joint: (others[side] ?? joint).id, to_mm: length_mm },
  ]
  const members = (of: Plan['mullions']): readonly Mullion[] =>
    (of ?? []).map(([at_mm, face_mm]) => ({
      id: id('member'),
      at_mm: specified(at_mm),
      face_mm: specified(face_mm),
    }))
  const { width_mm, height_mm } = plan.opening
  const sides: Record<Side, Some<Zone>> = {
    head: zonesOf('head', width_mm),
    left: zonesOf('left', height_mm),
    right: zonesOf('right', height_mm),
    sill: zonesOf('sill', width_mm),
  }
  const openingId = id('opening')
  const mullions = members(plan.mullions)
  const transoms = members(plan.transoms)
  const fixings = [
    ...(plan.fixing ? [{ kind: 'frame-screw' as const, ...plan.fixing }] : []),
    ...(plan.fixings ?? []),
  ].map(it => ({ id: id('fixing'), ...it }))
  const sill: Sill | undefined = plan.sill && { id: id('sill'), ...plan.sill }
  const threshold: Threshold | undefined = plan.threshold && { id: id('threshold'), ...plan.threshold }
  const box: Box | undefined = plan.box && { id: id('box'), ...plan.box }
  const blocks = (plan.blocks ?? []).map(it => ({ id: id('block'), ...it }))
  const opening: Opening = {
    id: openingId,
    name: plan.opening.name,
    wall: wall.id,
    frame: frame.id,
    width_mm: specified(width_mm),
    height_mm: specified(height_mm),
    position_mm: specified(plan.opening.position_mm),
    ...(plan.survey ? { survey: plan.survey } : {}),
    mullions,
    ...(plan.transoms ? { transoms } : {}),
    fixings,
    blocks,
    ...(sill ? { sill } : {}),
    ...(threshold ? { threshold } : {}),
    ...(box ? { box } : {}),
    ...(plan.asked ? { asked: plan.asked } : {}),
    ...(plan.told ? { told: plan.told } : {}),
    stays: sill && plan.sillStays ? [sill.id] : [],
    sides,
  }
  return withMaterials({
    format: formatTag,
    title: plan.title,
    practice: { id: plan.practice, edition: practice(plan.practice)?.edition ?? '', own: [] },
    next,
    materials: {},
    walls: { [wall.id]: wall },
    frames: { [frame.id]: frame },
    joints: Object.fromEntries([joint, ...Object.values(others)].map(it => [it.id, it])),
    openings: { [opening.id]: opening },
  })
}
