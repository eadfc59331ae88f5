import {
  type FieldAt,
  type Project,
  type ZonePlace,
  applyEdits,
  fieldOf,
  known,
  materialOf,
  wallOf,
} from '../detail'
import type { Id } from '../geometry'
import { type Moving, type Solution, finer, lowestSurfaces, moveTo, startMoving } from '../heat'
import type { Material } from '../materials'
import { type Basis, type Result, isInside, exactly, ok, specified } from '../units'
import { type Words, filled, words } from '../words'
import { type ZoneCase, climateOf, zoneCase } from '../vapour'
import { coldestOf } from './coldest'

/** How much the coldest place changes when one input grows: by 10 mm, or by 10 % of a conductivity. */
export type Sensitivity = {
  readonly name: Words
  readonly of: FieldAt | { readonly material: Id }
  readonly by: '10 mm' | '10 %'
  readonly change_K: number
  readonly basis: Basis
}

/** What moves the coldest place most, and how sure it is: mesh and assumed inputs apart. */
export type Sureness = {
  readonly coldest_C: number
  /** largest change first */
  readonly sensitivities: readonly Sensitivity[]
  /** what twice the subdivisions change of it */
  readonly mesh_K: number
  /** if every input that nobody stated were off by 10 mm or 10 % at once, independently: the root of the sum of squares */
  readonly assumed_K: number
}

/**
 * Solves a zone again with each input a little larger and a little smaller. The mesh follows the outlines where it can, so
 * that a solution takes a few milliseconds and differences are free of the mesh. Problems: as for the zone itself.
 */
export const surenessOf = (project: Project, place: ZonePlace): Result<Sureness> => {
  const first = zoneCase(project, place, 'surface-humidity')
  if (!first.ok) return first
  const started = startMoving(first.value.turned.case)
  if (!started.ok) return started
  const coldest_C = coldestIn(first.value, started.value.solution)
  const mesh_K = Math.abs(coldest_C - coldestIn(first.value, finer(started.value.solution)))
  const solve = solver(started.value, place)
  const sensitivities = [
    ...lengths(project, place, solve),
    ...conductivities(project, first.value, place, solve),
  ]
    .filter(it => Number.isFinite(it.change_K))
    .toSorted((a, b) => Math.abs(b.change_K) - Math.abs(a.change_K))
  const squares = sensitivities
    .filter(it => it.basis === 'assumed')
    .reduce((sum, it) => sum + it.change_K ** 2, 0)
  return ok({ coldest_C, sensitivities, mesh_K, assumed_K: Math.sqrt(squares) })
}

/** The coldest place of a project changed in one thing; not a number where it cannot be solved. */
type Solve = (changed: Project, materials?: Materials) => number
type Materials = (id: Id, part: Id) => Material | undefined

const solver =
  (moving: Moving, place: ZonePlace): Solve =>
  (changed, materials) => {
    const it = zoneCase(changed, place, 'surface-humidity', materials)
    if (!it.ok) return NaN
    const frame = moveTo(moving, it.value.turned.case)
    return frame.ok ? coldestIn(it.value, frame.value.moving.solution) : NaN
  }

const coldestIn = ({ turned, conditions }: ZoneCase, solution: Solution): number =>
  coldestOf(lowestSurfaces(turned, solution, climateOf(conditions)))?.temperature_C ?? NaN

/** Half of the step of a length: both ways from where it stands, so that together they are 10 mm. */
const half_mm = 5

/** Lengths that a designer moves: place of the frame, cover, lining, joint, and the layers of the wall. */
function* lengths(project: Project, place: ZonePlace, solve: Solve): Iterable<Sensitivity> {
  const wall = wallOf(project, place.opening)
  const fields: readonly FieldAt[] = [
    { field: 'opening.position', part: place.opening },
    { field: 'joint.planned', part: place.zone.joint },
    { field: 'reveal.cover', part: wall.id },
    { field: 'reveal.lining', part: wall.id },
    ...wall.layers.map(it => ({ field: 'layer.thickness', part: it.id })),
  ]
  for (const at of fields) {
    const field = fieldOf(at.field)
    const now = known(project, at)
    if (!field || !now) continue
    const solved = [-half_mm, half_mm].map(by => {
      const value = now.value + by
      if (!isInside(exactly(value), field.allowed(project, at.part).bounds)) return undefined
      const changed = applyEdits(project, [{ kind: 'state', at, to: specified(value) }])
      return changed.ok ? { by, coldest_C: solve(changed.value) } : undefined
    })
    const [less, more] = [solved[0] ?? { by: 0, coldest_C: solve(project) }, solved[1] ?? { by: 0, coldest_C: solve(project) }] // prettier-ignore
    if (more.by === less.by) continue
    yield {
      name: nameOf(project, at, field.name),
      of: at,
      by: '10 mm',
      change_K: ((more.coldest_C - less.coldest_C) * 2 * half_mm) / (more.by - less.by),
      basis: now.basis,
    }
  }
}

const nameOf = (project: Project, { field, part }: FieldAt, name: Words): Words => {
  if (field !== 'layer.thickness') return name
  const layer = Object.values(project.walls).flatMap(it => it.layers).find(it => it.id === part) // prettier-ignore
  const material = layer && materialOf(project, layer.material)
  return material ? filled(words('Thickness of {0}', 'Dicke {0}'), material.name) : name
}

/** Conductivities of all materials that a cut shows: each a twentieth more and a twentieth less. */
function* conductivities(
  project: Project,
  { section }: ZoneCase,
  _place: ZonePlace,
  solve: Solve,
): Iterable<Sensitivity> {
  const used = new Map<Id, Id>()
  for (const { fill, part } of section.regions) if (fill.kind === 'material') used.set(fill.material, part)
  for (const [id, part] of used) {
    const material = materialOf(project, id, part)
    if (!material) continue
    const scaled =
      (times: number): Materials =>
      (of, by) => {
        const usual = materialOf(project, of, by)
        return usual && of === id ? { ...usual, lambda_W_mK: usual.lambda_W_mK * times } : usual
      }
    const layer = Object.values(project.walls).flatMap(it => it.layers).find(it => it.id === part) // prettier-ignore
    yield {
      name: filled(words('λ of {0}', 'λ {0}'), material.name),
      of: { material: id },
      by: '10 %',
      change_K: solve(project, scaled(1.05)) - solve(project, scaled(0.95)),
      basis: layer?.lambda_W_mK?.basis ?? 'assumed',
    }
  }
}
