import { type Project, type ZonePlace, applyEdits, fieldOf, openingOf, wallDepths, wallOf } from '../detail'
import {
  type LowestSurface,
  type Moving,
  type Psi,
  type Solution,
  elementAlone,
  flows_W_m,
  moveTo,
  psiOf,
  solveCase,
  startMoving,
  usualAccuracy,
} from '../heat'
import { type Practice, practiceOf } from '../practice'
import { type Report, check } from '../rules'
import { type Result, ok, refused, specified } from '../units'
import { type Some, isSome, words } from '../words'
import { type PhysicsOf, type ZoneCase, forPurpose, physicsOf, zoneCase } from '../vapour'
import { coldestOf } from './coldest'

/** One place of the frame in its wall, with all that follows from it. */
export type Variant = {
  readonly position_mm: number
  /** whether it is where the frame stands now */
  readonly isPresent: boolean
  readonly project: Project
  readonly flow_W_m: number
  readonly psi?: Psi
  /** coldest opaque place inside, with the films for surface humidity */
  readonly coldest?: LowestSurface
  /** heat solved with the films for heat loss, on the mesh that follows the frame */
  readonly case: ZoneCase
  readonly solution: Solution
}

/** More than four fields beside each other cannot be compared any more. */
export const mostVariants = 4

/** The places that are compared where nobody names others: the present one, and up to three more between the ends of what is allowed. */
export const usualPositions = (project: Project, { opening }: ZonePlace): Some<number> => {
  const present = openingOf(project, opening).position_mm.value
  const { min = present, max = present } = fieldOf('opening.position')?.allowed(project, opening).bounds ?? {}
  const { bearing_mm } = wallDepths(wallOf(project, opening))
  // Beyond half a bearing layer before or behind it nobody sets a window.
  const [from, to] = [Math.max(min, -bearing_mm / 2), Math.min(max, bearing_mm)]
  const spread = Array.from({ length: mostVariants }, (_, i) =>
    rounded(from + ((to - from) * i) / (mostVariants - 1)),
  )
  const nearest = spread.reduce((best, it) => (Math.abs(it - present) < Math.abs(best - present) ? it : best), spread[0] ?? present) // prettier-ignore
  const all = [...new Set(spread.map(it => (it === nearest ? present : it)))].filter(
    it => min <= it && it <= max,
  )
  return isSome(all) ? all : [present]
}

/** Places are set out to 5 mm. */
const rounded = (value_mm: number): number => 5 * Math.round(value_mm / 5)

/**
 * Solves a zone with its frame at several places: once from nothing, then with the mesh following. The element alone is
 * the same in all of them. Problems: a place that is not allowed, and what a zone is refused for.
 */
export const variantsOf = (
  project: Project,
  place: ZonePlace,
  positions_mm: Some<number> = usualPositions(project, place),
): Result<readonly Variant[]> => {
  if (positions_mm.length > mostVariants) return refused({ at: '', say: tooMany })
  const present = openingOf(project, place.opening).position_mm.value
  let moving: Moving | undefined
  let alone: Solution | undefined
  const found: Variant[] = []
  for (const position_mm of positions_mm) {
    const changed = position_mm === present ? ok(project) : moved(project, place, position_mm)
    if (!changed.ok) return changed
    const loss = zoneCase(changed.value, place, 'heat-loss')
    if (!loss.ok) return loss
    const next = moving ? moveTo(moving, loss.value.turned.case) : started(loss.value)
    if (!next.ok) return next
    moving = next.value.moving
    if (!alone) {
      const solved = solveCase(elementAlone(loss.value.turned, loss.value.heatView.isElement, loss.value.heatView), usualAccuracy) // prettier-ignore
      if (!solved.ok) return solved
      alone = solved.value
    }
    const solution = copyOf(moving.solution)
    const psi = psiOf(loss.value.turned, solution, alone, loss.value.heatView)
    const humid = forPurpose(loss.value, 'surface-humidity')
    if (!humid.ok) return humid
    const cold = moveTo(moving, humid.value.turned.case)
    if (!cold.ok) return cold
    moving = cold.value.moving
    const coldest = coldestOf(physicsOf(humid.value, moving.solution).lowest)
    found.push({
      position_mm,
      isPresent: position_mm === present,
      project: changed.value,
      flow_W_m: flows_W_m(solution).reduce((sum, flow, s) => (loss.value.turned.faces[s]?.to === 'inside' ? sum + flow : sum), 0), // prettier-ignore
      ...(psi ? { psi } : {}),
      ...(coldest ? { coldest } : {}),
      case: loss.value,
      solution,
    })
  }
  return ok(found)
}

/** The verdicts of a variant on all rules of its opening. */
export const verdictsOf = (
  { project }: Pick<Variant, 'project'>,
  { opening }: ZonePlace,
  physics: PhysicsOf,
  practice: Practice = practiceOf(project.practice),
): Report => {
  const report = check(project, practice, physics)
  const here = (it: { readonly where: { readonly opening: string } }) => it.where.opening === opening
  return { findings: report.findings.filter(here), notApplicable: report.notApplicable.filter(here) }
}

const moved = (project: Project, { opening }: ZonePlace, position_mm: number): Result<Project> =>
  applyEdits(project, [
    { kind: 'state', at: { field: 'opening.position', part: opening }, to: specified(position_mm) },
  ])

const started = (it: ZoneCase) => {
  const moving = startMoving(it.turned.case)
  return moving.ok ? ok({ moving: moving.value }) : moving
}

/** A solution that later movements leave alone: their workspace is shared. */
const copyOf = (it: Solution): Solution => ({
  ...it,
  mesh: meshOf(it),
  properties: {
    lambda_W_mK: it.properties.lambda_W_mK.slice(),
    film_W_m2K: it.properties.film_W_m2K.slice(),
    air_C: it.properties.air_C.slice(),
  },
  field: { corner_C: it.field.corner_C.slice(), bubble_K: it.field.bubble_K.slice() },
  system: { ...it.system, mesh: meshOf(it), filmWeight: it.system.filmWeight.slice() },
})

const meshOf = ({ mesh }: Solution): Solution['mesh'] => ({ ...mesh, x: mesh.x.slice(), y: mesh.y.slice() })

const tooMany = words('four places at most are compared', 'es werden höchstens vier Lagen verglichen')
