import type { Id } from '../../geometry'
import type { Duty } from '../../kinds'
import { specified } from '../../units'
import { isSome, type Words } from '../../words'
import type { Layer, Reveal, Wall } from '../model'

/** A layer of a plan: material, thickness, duties. */
export type LayerPlan = readonly [material: Id, thickness_mm: number, ...duties: Duty[]]

/** A wall to begin with, as data: its layers outside to inside, what closes them at the opening, and its reveal. */
export type WallPlan = {
  readonly id: string
  readonly name: Words
  readonly layers: readonly LayerPlan[]
  /** by the layer's material: a stud or a closer, and its width */
  readonly edges?: Readonly<Record<Id, readonly [material: Id, width_mm: number]>>
  readonly cover_mm: number
  readonly lining_mm: number
  readonly splay_deg?: number
  readonly rebate?: {
    readonly at: 'inner-rebate' | 'outer-rebate'
    readonly depth_mm: number
    readonly lap_mm: number
  }
  readonly board?: readonly [material: Id, thickness_mm: number]
  /** where a frame usually stands, from the outer face of the bearing layer */
  readonly position_mm: number
}

/** A wall of a plan, with ids from the project's counter. */
export const wallFrom = (plan: WallPlan, id: (kind: string) => Id): Wall => {
  const wall = id('wall')
  const layers = plan.layers.map(([material, thickness_mm, ...duties]): Layer => {
    const edge = plan.edges?.[material]
    return {
      id: id('layer'),
      material,
      thickness_mm: specified(thickness_mm),
      duties,
      ...(edge ? { edge: { material: edge[0], width_mm: specified(edge[1]) } } : {}),
    }
  })
  if (!isSome(layers)) throw new Error(`the wall ${plan.id} has no layers`)
  return { id: wall, name: plan.name.en, layers, reveal: revealFrom(plan) }
}

const revealFrom = (plan: WallPlan): Reveal => ({
  form: plan.rebate?.at ?? (plan.splay_deg ? 'splayed' : 'butt'),
  cover_mm: specified(plan.cover_mm),
  lining_mm: specified(plan.lining_mm),
  ...(plan.splay_deg ? { splay_deg: specified(plan.splay_deg) } : {}),
  ...(plan.rebate
    ? { nibDepth_mm: specified(plan.rebate.depth_mm), nibLap_mm: specified(plan.rebate.lap_mm) }
    : {}),
  ...(plan.board ? { board: { material: plan.board[0], thickness_mm: specified(plan.board[1]) } } : {}),
})
