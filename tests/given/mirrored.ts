import type { Block, Fixing, Mullion, Opening, Project, Zone, ZonePlace } from '../../core/detail'
import type { Side } from '../../core/kinds'
import { isSome, type Some } from '../../core/words'

const otherSide = { head: 'head', left: 'right', right: 'left', sill: 'sill' } as const

type BySide<T> = { readonly [K in Side]?: T }

const swapped = <T>({ left, right, ...rest }: BySide<T>): BySide<T> => ({
  ...rest,
  ...(right === undefined ? {} : { left: right }),
  ...(left === undefined ? {} : { right: left }),
})

/** A project whose opening is seen in a mirror, and where a zone of it then lies. */
export const mirrored = (
  project: Project,
  place: ZonePlace,
): { readonly project: Project; readonly place: ZonePlace } => {
  const opening = project.openings[place.opening]
  if (opening === undefined) throw new Error(`no opening ${place.opening}`)
  return {
    project: { ...project, openings: { ...project.openings, [opening.id]: mirroredOpening(opening) } },
    place: { ...place, side: otherSide[place.side] },
  }
}

const mirroredOpening = (it: Opening): Opening => {
  const width_mm = it.width_mm.value
  const { head, left, right, sill } = it.sides
  const across = <T extends Mullion | Block>(one: T): T => ({
    ...one,
    at_mm: { ...one.at_mm, value: width_mm - one.at_mm.value },
  })
  return {
    ...it,
    ...(it.aside_mm ? { aside_mm: { ...it.aside_mm, value: -it.aside_mm.value } } : {}),
    sides: { head: turned(head), left: right, right: left, sill: turned(sill) },
    mullions: it.mullions.map(across),
    blocks: it.blocks.map(one =>
      one.side === 'head' || one.side === 'sill' ? across(one) : { ...one, side: otherSide[one.side] },
    ),
    fixings: it.fixings.map(one => mirroredFixing(one, width_mm)),
    ...(it.survey?.joints_mm ? { survey: { ...it.survey, joints_mm: swapped(it.survey.joints_mm) } } : {}),
  }
}

const mirroredFixing = (it: Fixing, width_mm: number): Fixing => ({
  ...it,
  ...(it.counts ? { counts: swapped(it.counts) } : {}),
  ...(it.positions_mm
    ? {
        positions_mm: swapped({
          ...it.positions_mm,
          ...(it.positions_mm.head ? { head: it.positions_mm.head.map(at => width_mm - at) } : {}),
          ...(it.positions_mm.sill ? { sill: it.positions_mm.sill.map(at => width_mm - at) } : {}),
        }),
      }
    : {}),
})

/** Zones along a side that now runs the other way: the same stretches from its other end. */
const turned = (zones: Some<Zone>): Some<Zone> => {
  const length_mm = zones.at(-1)?.to_mm ?? 0
  const other = zones.toReversed().map((it, i, all) => ({
    ...it,
    to_mm: i === all.length - 1 ? length_mm : length_mm - (all[i + 1]?.to_mm ?? 0),
  }))
  return isSome(other) ? other : zones
}
