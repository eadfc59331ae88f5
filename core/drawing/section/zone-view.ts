import {
  jointOf,
  materialOf,
  openingOf,
  profileOf,
  frameOf,
  type Project,
  type thresholdPieces,
  wallDepths,
  wallOf,
  type ZonePlace,
} from '../../detail'
import type { Id } from '../../geometry'
import type { Side } from '../../kinds'
import { jointBand } from '../../movement'
import type { Section } from '../../section'
import type { Language } from '../../words'
import type { View } from '../mark'
import { bandWords, type LengthUnit, noteIn } from '../sizes/lengths'
import type { Window } from './clip'
import type { SectionLook } from './draw-section'
import { listedParts } from './listed-parts'
import { extentOf } from './pieces'
import type { Sizes } from './section-sizes'

/**
 * How a section at a side stands on a sheet. Jambs are seen from above with inside at the top; head and sill are
 * seen from the side with outside at the left. Common practice.
 */
export const standOf: Readonly<Record<Side, Pick<View, 'turn_deg' | 'mirrored'>>> = {
  left: { turn_deg: 0, mirrored: false },
  right: { turn_deg: 0, mirrored: true },
  head: { turn_deg: 270, mirrored: false },
  sill: { turn_deg: 270, mirrored: true },
}

/** How a section stands in the window of the program, whatever its side: outside at the left, the wall above. */
export const standInWindow: Pick<View, 'turn_deg' | 'mirrored'> = { turn_deg: 270, mirrored: false }

/** What drawing a section needs of the project: parts, hatches, and the sizes that the model holds. */
export const zoneLook = (
  project: Project,
  place: ZonePlace,
  language: Language,
  unit: LengthUnit = 'mm',
): Pick<SectionLook, 'parts' | 'hatchOf' | 'sizes' | 'language' | 'unit'> => ({
  unit,
  parts: listedParts(project, place).map(it => ({ ...it, note: noteIn(it.note, unit) })),
  hatchOf: id => {
    const found = materialOf(project, id)
    if (found === undefined) throw new Error(`no material has the id ${id}`)
    return found.hatch
  },
  sizes: sizesAt(project, place, language, unit),
  language,
})

const sizesAt = (project: Project, place: ZonePlace, language: Language, unit: LengthUnit): Sizes => {
  const joint = jointOf(project, place.zone)
  const band = jointBand(project, place.opening, place.side, place.zone.id)
  return {
    joint: {
      words: bandWords(band.planned_mm, band.still_mm, language, unit),
      field: { field: 'joint.planned', part: joint.id },
    },
    cover: { field: 'reveal.cover', part: wallOf(project, place.opening).id },
    position: { field: 'opening.position', part: openingOf(project, place.opening).id },
    thickness: part => ({ field: 'layer.thickness', part }),
  }
}

/** How much wall is shown beyond the screw or the reveal, and how much glass beyond the sash. Ours. */
const wallShown_mm = 60
const beyondScrew_mm = 10
const glassShown_mm = 12

/** The part of a section that a sheet shows: all of its depth, the wall as far as the screw, the sash and some glass. */
export const usualWindow = (project: Project, place: ZonePlace, section: Section): Window => {
  if (section.levels) return thresholdWindow(project, place, section)
  const all = extentOf(section.regions.flatMap(it => it.outline))
  const seen = section.seen.length > 0 ? extentOf(section.seen.flatMap(it => it.outline)).low[0] : 0
  const sash = extentOf(
    profileOf(frameOf(project, place.opening))
      .bodies.filter(it => it.member !== 'glazing' && it.fill.kind === 'material')
      .flatMap(it => it.outline),
  )
  const flank = openingFlank(section, frameOf(project, place.opening).id)
  return [
    [Math.max(all.low[0], Math.min(-wallShown_mm, seen - beyondScrew_mm)), all.low[1]],
    [Math.min(all.high[0], flank + sash.high[0] + glassShown_mm), all.high[1]],
  ]
}

/** How much ground is shown below a floor, and how much of surface and floor beside the wall. Ours. */
const groundShown_mm = 25
const asideShown_mm = { outside: 90, inside: 110 } as const

/** A threshold: floor down to the ground, surface and floor beside the wall, the leaf as at any side. */
const thresholdWindow = (project: Project, place: ZonePlace, section: Section): Window => {
  const { outer_mm, inner_mm } = wallDepths(wallOf(project, place.opening))
  const low = (piece: (typeof thresholdPieces)[number]) =>
    extentOf(section.regions.filter(it => it.part.endsWith(`/${piece}`)).flatMap(it => it.outline)).low
  const { frame } = openingOf(project, place.opening)
  const own = extentOf(section.regions.filter(it => it.part === frame).flatMap(it => it.outline))
  const sash = extentOf(
    section.regions
      .filter(it => it.part === `${frame}/sash` && it.fill.kind === 'material')
      .flatMap(it => it.outline),
  )
  return [
    [
      low('floor')[0] - groundShown_mm,
      Math.min(outer_mm, own.low[1], low('channel')[1]) - asideShown_mm.outside,
    ],
    [sash.high[0] + glassShown_mm, Math.max(inner_mm, own.high[1]) + asideShown_mm.inside],
  ]
}

const openingFlank = (section: Section, frame: Id): number =>
  extentOf(section.regions.filter(it => it.part === frame).flatMap(it => it.outline)).low[0]
