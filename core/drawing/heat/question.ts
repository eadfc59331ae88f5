import { dewPoint_C, mould_pct, surfaceLimit_C } from '../../air'
import {
  type Conditions,
  conditionsOf,
  frameOf,
  materialOf,
  type Project,
  type ZonePlace,
} from '../../detail'
import type { Id } from '../../geometry'
import {
  type Conductor,
  type Psi,
  type Purpose,
  type SectionCase,
  type SectionView,
  type Solution,
  sectionHeat,
  solveSection,
  surfaceProfile,
} from '../../heat'
import type { Section } from '../../section'
import { coldestOf } from '../../study'
import { ok, type Result } from '../../units'
import { climateOf } from '../../vapour'
import { words } from '../../words'
import type { HeatPicture, NamedLevel } from './picture'
import { heatScale } from './scale'

/** All that the heat of a cut is computed from, as plain values: it can be sent to a worker. */
export type HeatQuestion = {
  readonly section: Section
  readonly purpose: Purpose
  /** by part and material: a layer may declare its own */
  readonly conductors: Readonly<Record<string, Conductor>>
  /** the frame type: it and its members are the element */
  readonly frame: Id
  readonly air: Conditions
}

/** What is asked of a cut in the air of its project: surfaces are judged in the resistances of the surface criterion. */
export const heatQuestion = (
  project: Project,
  place: ZonePlace,
  section: Section,
  purpose: Purpose = 'surface-humidity',
): HeatQuestion => {
  const conductors = section.regions.flatMap(({ part, fill }) => {
    const found = fill.kind === 'material' ? materialOf(project, fill.material, part) : undefined
    return found && fill.kind === 'material'
      ? [
          [
            keyOf(fill.material, part),
            { lambda_W_mK: found.lambda_W_mK, emissivity: found.emissivity },
          ] as const,
        ]
      : []
  })
  return {
    section,
    purpose,
    conductors: Object.fromEntries(conductors),
    frame: frameOf(project, place.opening).id,
    air: conditionsOf(project, place.opening),
  }
}

const keyOf = (material: Id, part: Id): string => `${material} ${part}`

/** A question as the heat of a section takes it. */
export const viewOf = (it: HeatQuestion): SectionView & { readonly isElement: (part: Id) => boolean } => ({
  climate: climateOf(it.air),
  purpose: it.purpose,
  materialOf: (material, part) => it.conductors[keyOf(material, part)],
  isElement: part => part === it.frame || part.startsWith(`${it.frame}/`),
})

/** Dew point, and the temperature below which mould can grow, of the air inside; only what lies between the two airs. */
export const namedLevels = ({ air }: Pick<HeatQuestion, 'air'>): readonly NamedLevel[] => {
  const [low, high] = [air.outside.temperature_C, air.inside.temperature_C].toSorted((a, b) => a - b)
  return [
    { level_C: dewPoint_C(air.inside.vapour_Pa), name: words('dew point', 'Taupunkt') },
    {
      level_C: surfaceLimit_C(air.inside.vapour_Pa, mould_pct),
      name: words('mould limit', 'Schimmelgrenze'),
    },
  ].filter(it => (low ?? 0) < it.level_C && it.level_C < (high ?? 0))
}

/** A solved question as a picture. The coldest place is that of the wall and its reveal: frame and glass are judged apart. */
export const pictureOf = (
  it: HeatQuestion,
  turned: SectionCase,
  solution: Solution,
  psi?: Psi,
): HeatPicture => {
  const climate = climateOf(it.air)
  const heat = sectionHeat(turned, solution, { climate }, psi)
  const coldest = coldestOf(heat.lowest)
  return {
    solution,
    scale: heatScale(climate.outside_C, climate.inside_C),
    named: namedLevels(it),
    purpose: it.purpose,
    air: it.air,
    heat,
    profile: surfaceProfile(turned, solution),
    ...(coldest && { coldest }),
  }
}

/** Solves a question from nothing and makes a picture of it, Psi in the resistances of heat loss. Problems: as for a section. */
export const solvedPicture = (it: HeatQuestion): Result<HeatPicture> => {
  const solved = solveSection(it.section, viewOf(it))
  if (!solved.ok) return solved
  const { turned, solution, heat } = solved.value
  return ok(pictureOf(it, turned, solution, heat.psi))
}
