import type { Id } from '../../geometry'
import type { Side } from '../../kinds'
import { assumed } from '../../units'
import type { Box } from '../box'
import type { AddedPart } from '../edit'
import { frameOf, profileOf } from '../find'
import type { Block, Fixing, FixingKind, Mullion } from '../fixing'
import type { Opening, Project } from '../model'
import { roomBefore_mm, roomBehind_mm } from '../allowed/room'
import type { Sill } from '../sill'
import { type Threshold, thresholdLevels } from '../threshold'

type At = { readonly id: Id; readonly side: Side; readonly at_mm: number; readonly fixing: FixingKind }

/** What an opening becomes by a fresh part, all of it assumed: usual sizes, common practice, to be put right at once. */
export const freshPart =
  (project: Project, opening: Opening, part: AddedPart, at: At): ((it: Opening) => Partial<Opening>) =>
  it => {
    switch (part) {
      case 'fixing':
        return { fixings: [...it.fixings, freshFixing(project, opening, at)] }
      case 'block':
        return { blocks: [...it.blocks, freshBlock(at)] }
      case 'mullion':
        return { mullions: [...it.mullions, freshMember(at)] }
      case 'transom':
        return { transoms: [...(it.transoms ?? []), freshMember(at)] }
      case 'sill':
        return { sill: freshSill(at.id) }
      case 'threshold':
        return freshThreshold(it, at.id)
      case 'box':
        return { box: freshBox(project, opening, at.id) }
    }
  }

const freshFixing = (project: Project, opening: Opening, { id, fixing }: At): Fixing => ({
  id,
  kind: fixing,
  diameter_mm: assumed(7.5),
  embedment_mm: assumed(60),
  axis_mm: assumed(Math.round(profileOf(frameOf(project, opening.id)).depth_mm / 2)),
  corner_mm: assumed(140),
})

const freshBlock = ({ id, side, at_mm }: At): Block => ({
  id,
  kind: side === 'sill' ? 'support' : 'distance',
  side,
  at_mm: assumed(at_mm),
  length_mm: assumed(100),
})

const freshMember = ({ id, at_mm }: At): Mullion => ({ id, at_mm: assumed(at_mm), face_mm: assumed(70) })

const freshSill = (id: Id): Sill => ({
  id,
  material: 'aluminium',
  thickness_mm: assumed(2),
  slope_deg: assumed(5),
  overhang_mm: assumed(40),
  upstand_mm: assumed(25),
  endDam_mm: assumed(20),
  endGap_mm: assumed(5),
})

/** A low threshold of usual build-up on the ground. Levels that nobody has told are told as assumed with it. */
const freshThreshold = ({ told }: Opening, id: Id): Partial<Opening> => {
  const { top_mm, outside_mm } = thresholdLevels(told)
  const laid = (material: Id, thickness_mm: number) => ({ material, thickness_mm: assumed(thickness_mm) })
  const threshold: Threshold = {
    id,
    material: 'pvc-u',
    height_mm: assumed(40),
    base: laid('installation-board', 100),
    finish: laid('ceramic-tile', 15),
    screed_mm: assumed(65),
    insulation: laid('eps', 120),
    slab_mm: assumed(180),
    paving: laid('concrete-2200', 50),
    bed_mm: assumed(150),
    fall_pct: assumed(2),
    channelWidth_mm: assumed(150),
    channelDepth_mm: assumed(75),
  }
  return { threshold, told: { ...told, threshold_mm: top_mm, outside_mm } }
}

/** A box of usual size, as far as the wall has room for it. */
const freshBox = (project: Project, opening: Opening, id: Id): Box => {
  const { depth_mm } = profileOf(frameOf(project, opening.id))
  const before_mm = opening.position_mm.value - roomBefore_mm(project, opening)
  const behind_mm = roomBehind_mm(project, opening) - opening.position_mm.value
  const forward_mm = Math.max(0, Math.min(45, before_mm))
  return {
    id,
    height_mm: assumed(240),
    depth_mm: assumed(Math.max(depth_mm + forward_mm, Math.min(240, forward_mm + behind_mm))),
    forward_mm: assumed(forward_mm),
    material: 'pvc-u',
    shell_mm: assumed(8),
    lining: { material: 'eps', thickness_mm: assumed(30) },
  }
}
