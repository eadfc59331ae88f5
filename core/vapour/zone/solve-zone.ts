import {
  type Conditions,
  type Project,
  type ZonePlace,
  conditionsOf,
  frameOf,
  jointOf,
  materialOf,
} from '../../detail'
import type { Id } from '../../geometry'
import {
  type Accuracy,
  type Climate,
  type Purpose,
  type SectionCase,
  type SectionView,
  type SolvedSection,
  sectionCase,
  solveSection,
} from '../../heat'
import type { Material } from '../../materials'
import { jointBand } from '../../movement'
import { type Section, cutSection } from '../../section'
import { type Result, ok } from '../../units'
import type { VapourView } from '../section/vapour-view'

/** A zone cut at its planned width and turned into a heat case under the conditions of its opening. */
export type ZoneCase = {
  readonly conditions: Conditions
  readonly section: Section
  readonly turned: SectionCase
  /** what heat and vapour look at it with */
  readonly heatView: SectionView & { readonly isElement: (part: Id) => boolean }
  readonly vapourView: VapourView
}

/** A zone with its heat solved. */
export type SolvedZone = ZoneCase & { readonly solved: SolvedSection }

/** The temperatures of conditions, as heat wants them. */
export const climateOf = ({ inside, outside, ground_C }: Conditions): Climate => ({
  inside_C: inside.temperature_C,
  outside_C: outside.temperature_C,
  ground_C,
})

/**
 * Cuts a zone and turns it into a case. Materials are those of the project, unless others are handed in. Problems:
 * materials that are not known.
 */
export const zoneCase = (
  project: Project,
  place: ZonePlace,
  purpose: Purpose,
  materialIn: (id: Id, part: Id) => Material | undefined = (id, part) => materialOf(project, id, part),
): Result<ZoneCase> => {
  const conditions = conditionsOf(project, place.opening)
  const { planned_mm } = jointBand(project, place.opening, place.side, place.zone.id)
  const section = cutSection(project, place, { state: 'planned', width_mm: planned_mm })
  const frame = frameOf(project, place.opening).id
  const heatView = {
    climate: climateOf(conditions),
    purpose,
    materialOf: materialIn,
    isElement: (part: Id) => part === frame || part.startsWith(`${frame}/`),
  }
  const turned = sectionCase(section, heatView)
  if (!turned.ok) return turned
  const vapourView = {
    section,
    turned: turned.value,
    materialOf: materialIn,
    seals: jointOf(project, place.zone).seals,
    jointMiddle_mm: planned_mm / 2,
  }
  return ok({ conditions, section, turned: turned.value, heatView, vapourView })
}

/** The same cut for another purpose: other films, nothing cut again. Problems: as for `zoneCase`. */
export const forPurpose = (it: ZoneCase, purpose: Purpose): Result<ZoneCase> => {
  const heatView = { ...it.heatView, purpose }
  const turned = sectionCase(it.section, heatView)
  if (!turned.ok) return turned
  return ok({ ...it, turned: turned.value, heatView, vapourView: { ...it.vapourView, turned: turned.value } })
}

/** Solves the heat of a zone, with Psi. Problems: as `zoneCase` and the solver. */
export const solveZone = (
  project: Project,
  place: ZonePlace,
  { purpose, accuracy }: { readonly purpose: Purpose; readonly accuracy?: Accuracy },
): Result<SolvedZone> => {
  const it = zoneCase(project, place, purpose)
  if (!it.ok) return it
  const { section, heatView } = it.value
  const solved = solveSection(section, accuracy ? { ...heatView, accuracy } : heatView)
  return solved.ok ? ok({ ...it.value, solved: solved.value }) : solved
}
