import { jointOf, type Project, sideLength_mm, type ZonePlace } from '../../../core/detail'
import { type Plane, type Side, planes, sides } from '../../../core/kinds'
import { type JointBand, jointBand } from '../../../core/movement'
import { type Report, type Verdict, verdicts } from '../../../core/rules'
import { type AnySeal, kindOf, serves } from '../../../core/seals'
import type { Band } from '../../../core/units'
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
export type SideRow = {
  readonly side: Side
  /** of the zone that is looked at, else of the first */
  readonly band: JointBand
  /** over all zones of the side */
  readonly still_mm: Band
  readonly zones: readonly SideZone[]
  readonly worst: Verdict | undefined
}
/** A zone of a side: its share of the side's length, from the left or lower end, and its joint. */
export type SideZone = {
  readonly zone: string
  readonly share: readonly [number, number]
  readonly band: JointBand
}

/** The zone of a side that is looked at: the one of the view where it is of this side, else the first. */
const lookedAt = (
  project: Project,
  opening: string,
  side: Side,
  zone: string | undefined,
): ZonePlace | undefined => {
  const zones = project.openings[opening]?.sides[side]
  const found = zones?.find(it => it.id === zone) ?? zones?.[0]
  return found && { opening, side, zone: found }
}

/** The zones of a side, one after the other. The last one goes to the end of its side. */
const zonesAlong = (project: Project, id: string, side: Side): readonly SideZone[] => {
  const opening = project.openings[id]
  if (opening === undefined) return []
  const zones = opening.sides[side]
  const length_mm = Math.max(sideLength_mm(opening, side), ...zones.slice(0, -1).map(it => it.to_mm))
  return zones.map((zone, i) => ({
    zone: zone.id,
    share: [(zones[i - 1]?.to_mm ?? 0) / length_mm, i === zones.length - 1 ? 1 : zone.to_mm / length_mm],
    band: jointBand(project, id, side, zone.id),
  }))
}

/** All twelve stretches, outer plane first, sides in their order. */
export const stretchesOf = (
  project: Project,
  opening: string,
  report: Report,
  zone?: string,
): readonly Stretch[] =>
  planes.toReversed().flatMap(plane =>
    sides.flatMap((side): Stretch[] => {
      const place = lookedAt(project, opening, side, zone)
      if (place === undefined) return []
      const seal = jointOf(project, place.zone).seals.find(it => serves(it, plane))
      if (seal === undefined) return [{ side, plane, state: 'empty' }]
      const about = report.findings.filter(
        it =>
          it.where.opening === opening &&
          it.where.side === side &&
          (it.where.zone === undefined || it.where.zone === place.zone.id) &&
          it.where.part === seal.id,
      )
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
export const sideRows = (
  project: Project,
  opening: string,
  report: Report,
  zone?: string,
): readonly SideRow[] =>
  sides.flatMap((side): SideRow[] => {
    const place = lookedAt(project, opening, side, zone)
    if (place === undefined) return []
    const zones = zonesAlong(project, opening, side)
    const about = report.findings.filter(it => it.where.opening === opening && it.where.side === side)
    return [
      {
        side,
        band: jointBand(project, opening, side, place.zone.id),
        zones,
        still_mm: {
          min: Math.min(...zones.map(it => it.band.still_mm.min)),
          max: Math.max(...zones.map(it => it.band.still_mm.max)),
        },
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
