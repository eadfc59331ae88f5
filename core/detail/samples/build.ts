import type { Id } from '../../geometry'
import type { Side } from '../../kinds'
import { practice } from '../../practice'
import type { AnySeal } from '../../seals'
import { specified, type Stated } from '../../units'
import type { Some } from '../../words'
import { withMaterials } from '../edits/materials'
import type { Fixing } from '../fixing'
import type { Sill } from '../sill'
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
  readonly joint: {
    readonly name: string
    readonly planned_mm: Stated<number>
    readonly tolerance_mm: Stated<number>
  }
  /** outside to inside; ids are given here */
  readonly seals: readonly Seal[]
  readonly fixing?: Omit<Fixing, 'id' | 'kind'>
  readonly sill?: Omit<Sill, 'id'>
}

/** A seal before it has an id. */
type Seal = { readonly kind: string; readonly plane: AnySeal['plane'] } & Readonly<
  Record<string, AnySeal[string]>
>

/** A whole project with one opening, from a plan. */
export const built = (plan: Plan): Project => {
  let next = 1
  const id = (kind: string): Id => `${kind}-${next++}`
  const wall = wallFrom(plan.wall, id)
  const frame: Frame = { id: id('frame'), ...plan.frame }
  const joint: Joint = {
    id: id('joint'),
    ...plan.joint,
    seals: plan.seals.map(seal => {
      const { kind, ...rest } = seal
      return { kind, id: id('seal'), ...rest } satisfies AnySeal
    }),
  }
  const side = (length_mm: number): Some<Zone> => [{ id: id('zone'), joint: joint.id, to_mm: length_mm }]
  const { width_mm, height_mm } = plan.opening
  const sides: Record<Side, Some<Zone>> = {
    head: side(width_mm),
    left: side(height_mm),
    right: side(height_mm),
    sill: side(width_mm),
  }
  const opening: Opening = {
    id: id('opening'),
    name: plan.opening.name,
    wall: wall.id,
    frame: frame.id,
    width_mm: specified(width_mm),
    height_mm: specified(height_mm),
    position_mm: specified(plan.opening.position_mm),
    mullions: [],
    fixings: plan.fixing ? [{ id: id('fixing'), kind: 'frame-screw', ...plan.fixing }] : [],
    blocks: [],
    ...(plan.sill ? { sill: { id: id('sill'), ...plan.sill } } : {}),
    stays: [],
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
    joints: { [joint.id]: joint },
    openings: { [opening.id]: opening },
  })
}
