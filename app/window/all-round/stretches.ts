import { jointOf, type Project, type ZonePlace } from '../../../core/detail'
import { type Plane, type Side, planes, sides } from '../../../core/kinds'
import { type JointBand, jointBand } from '../../../core/movement'
import { type Report, type Verdict, verdicts } from '../../../core/rules'
import { type AnySeal, kindOf, serves } from '../../../core/seals'
import type { Words } from '../../../core/words'

/** One plane along one side of the opening: what is in it and the worst that is said of it. */
export type Stretch = {
  readonly side: Side
  readonly plane: Plane
  readonly seal?: AnySeal
  readonly called?: Words
  /** empty: no seal is in the plane */
  readonly state: Verdict | 'empty'
}

/** One side of the opening: its joint, and the worst verdict at it. */
export type SideRow = { readonly side: Side; readonly band: JointBand; readonly worst: Verdict | undefined }

const firstOf = (project: Project, opening: string, side: Side): ZonePlace | undefined => {
  const zone = project.openings[opening]?.sides[side][0]
  return zone && { opening, side, zone }
}

/** All twelve stretches, outer plane first, sides in their order. */
export const stretchesOf = (project: Project, opening: string, report: Report): readonly Stretch[] =>
  planes.toReversed().flatMap(plane =>
    sides.flatMap((side): Stretch[] => {
      const place = firstOf(project, opening, side)
      if (place === undefined) return []
      const seal = jointOf(project, place.zone).seals.find(it => serves(it, plane))
      if (seal === undefined) return [{ side, plane, state: 'empty' }]
      const about = report.findings.filter(it => it.where.side === side && it.where.part === seal.id)
      return [
        {
          side,
          plane,
          seal,
          called: kindOf(seal).called(seal),
          state: worst(about.map(it => it.verdict)) ?? 'met',
        },
      ]
    }),
  )

/** The four sides with their joints. */
export const sideRows = (project: Project, opening: string, report: Report): readonly SideRow[] =>
  sides.flatMap((side): SideRow[] => {
    const place = firstOf(project, opening, side)
    if (place === undefined) return []
    const about = report.findings.filter(it => it.where.opening === opening && it.where.side === side)
    return [
      {
        side,
        band: jointBand(project, opening, side, place.zone.id),
        worst: worst(about.map(it => it.verdict)),
      },
    ]
  })

/** Corners, as pairs of sides. */
export const corners = [
  ['head', 'left'],
  ['head', 'right'],
  ['sill', 'left'],
  ['sill', 'right'],
] as const satisfies readonly (readonly [Side, Side])[]

/** Corners at which a plane goes on along one side only. */
export const brokenCorners = (stretches: readonly Stretch[], plane: Plane) =>
  corners.filter(([a, b]) => isFilled(stretches, plane, a) !== isFilled(stretches, plane, b))

const isFilled = (stretches: readonly Stretch[], plane: Plane, side: Side): boolean =>
  stretches.some(it => it.plane === plane && it.side === side && it.state !== 'empty')

/** The worst of some verdicts; nothing where there is none. */
export const worst = (of: readonly Verdict[]): Verdict | undefined => verdicts.find(it => of.includes(it))
