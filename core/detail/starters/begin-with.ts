import { assumed, bases, specified } from '../../units'
import { counts, distancesAt, supportsAt } from '../samples/blocks'
import { built } from '../samples/build'
import type { Project, Wall } from '../model'
import type { WallPlan } from './wall-plan'

/** The window that a new joint begins with. *Ours*: a usual size and frame, to be put right at once. */
const usual = { width_mm: 1230, height_mm: 1480, planned_mm: 14, tolerance_mm: 3 } as const

/**
 * A whole project to begin with: the wall of a plan, a usual window at the wall's usual place, sealed in three planes.
 * The layers were chosen by sight and count as specified; everything else is nobody's word yet and counts as assumed.
 */
export const beginWith = (plan: WallPlan, practice: string): Project => {
  const { width_mm, height_mm } = usual
  const project = built({
    title: { name: '', office: '', author: '', place: '', number: '', note: '' },
    practice,
    wall: plan,
    frame: { name: 'Timber 78', profile: 'timber-78', material: 'timber' },
    opening: { name: 'W-01', width_mm, height_mm, position_mm: plan.position_mm },
    joint: {
      name: 'Joint',
      planned_mm: assumed(usual.planned_mm),
      tolerance_mm: assumed(usual.tolerance_mm),
    },
    seals: [
      {
        kind: 'impregnated-tape',
        plane: 'outer',
        least_mm: assumed(10),
        most_mm: assumed(18),
        width_mm: assumed(20),
        sd_m: assumed(0.4),
        class: assumed('BG2'),
      },
      { kind: 'foam', plane: 'middle' },
      {
        kind: 'membrane',
        plane: 'inner',
        bondFrame_mm: assumed(20),
        bondWall_mm: assumed(40),
        slack_mm: assumed(8),
        sd_m: assumed(20),
      },
    ],
    sill: {
      material: 'aluminium',
      thickness_mm: assumed(2),
      slope_deg: assumed(5),
      overhang_mm: assumed(40),
      upstand_mm: assumed(25),
      endDam_mm: assumed(20),
      endGap_mm: assumed(5),
      secondPlane: assumed('tray'),
      board: { material: 'softwood', thickness_mm: assumed(20), overhang_mm: assumed(30) },
    },
    fixing: {
      diameter_mm: specified(7.5),
      embedment_mm: specified(60),
      axis_mm: specified(45),
      corner_mm: specified(130),
      counts: counts(3, 3, 3),
    },
    blocks: [...supportsAt(100, 150, width_mm - 150), ...distancesAt(height_mm)],
  })
  return {
    ...project,
    walls: mapped(project.walls, withReveal),
    frames: guessed(project.frames),
    joints: guessed(project.joints),
    openings: guessed(project.openings),
  }
}

/** A wall whose layers stand as they are and whose reveal is a guess. */
const withReveal = (wall: Wall): Wall => ({ ...wall, reveal: guessed(wall.reveal) })

const mapped = <T>(table: Readonly<Record<string, T>>, to: (it: T) => T): Readonly<Record<string, T>> =>
  Object.fromEntries(Object.entries(table).map(([id, it]) => [id, to(it)]))

/** The same value with every statement in it assumed. */
const guessed = <T>(it: T): T => {
  if (typeof it !== 'object' || it === null) return it
  // Both branches keep the shape that came in; only the word for the basis changes.
  if (Array.isArray(it)) return it.map(guessed) as T
  return Object.fromEntries(
    Object.entries(it).map(([key, value]) => [
      key,
      key === 'basis' && isBasis(value) ? 'assumed' : guessed(value),
    ]),
  ) as T
}

const isBasis = (it: unknown): boolean => bases.some(basis => basis === it)
