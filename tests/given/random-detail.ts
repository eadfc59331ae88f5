import {
  addedParts,
  applyEdit,
  choicesOf,
  type Edit,
  fieldOf,
  fieldsOf,
  fixingKinds,
  partIds,
  profiles,
  type Project,
  samples,
  starters,
  wallFrom,
  type ZonePlace,
  zonesOf,
} from '../../core/detail'
import { planes, sides } from '../../core/kinds'
import { sealKinds } from '../../core/seals'
import { specified } from '../../core/units'
import { type Random, randomFrom } from './random'

/** A valid detail that nobody has chosen: a sample after a number of edits that the model takes. */
export type RandomDetail = { readonly project: Project; readonly place: ZonePlace; readonly seed: number }

export const randomDetail = (seed: number): RandomDetail => {
  const random = randomFrom(seed)
  const [first, ...more] = samples.map(it => it.project)
  if (first === undefined) throw new Error('there are no samples')
  let project = withParts(
    withSeals(withProfile(withWall(random.one([first, ...more]), random), random), random),
    random,
  )
  for (let i = 0; i < 14; i++) {
    const result = applyEdit(project, randomEdit(project, random))
    if (result.ok) project = result.value
  }
  const [place, ...places] = zonesOf(project)
  if (place === undefined) throw new Error('the sample has no zone')
  return { project, place: random.one([place, ...places]), seed }
}

/** The project with another wall to begin with, and its frame where that wall usually has it. */
export const withWall = (project: Project, random: Random): Project => {
  const [first, ...more] = starters
  if (first === undefined) throw new Error('there are no walls to begin with')
  const plan = random.one([first, ...more])
  let next = project.next
  const wall = wallFrom(plan, kind => `${kind}-${next++}`)
  const openings = Object.fromEntries(
    // a box stands where its wall has room for it: it is added again later
    Object.entries(project.openings).map(([id, { box: _, ...it }]) => [
      id,
      { ...it, wall: wall.id, position_mm: specified(plan.position_mm) },
    ]),
  )
  const walled = { ...project, next, walls: { [wall.id]: wall }, openings, materials: {} }
  // where that wall has no room for this frame, it stands as near as it can
  return Object.keys(openings).reduce((so, opening) => {
    const { max = plan.position_mm } = fieldOf('opening.position')?.allowed(so, opening).bounds ?? {}
    const edit: Edit = {
      kind: 'state',
      at: { field: 'opening.position', part: opening },
      to: specified(Math.min(max, plan.position_mm)),
    }
    const stood = applyEdit(so, edit)
    return stood.ok ? stood.value : so
  }, walled)
}

/** The project with other outlines of its frame, where they stand in its wall. */
export const withProfile = (project: Project, random: Random): Project => {
  const [first, ...more] = profiles
  const frame = Object.keys(project.frames)[0] ?? ''
  if (first === undefined) throw new Error('there are no profiles')
  const edit: Edit = { kind: 'choose-profile', frame, profile: random.one([first, ...more]).id }
  const result = applyEdit(project, edit)
  return result.ok ? result.value : project
}

/** The project with seals of any kind in the planes of its joints; now and then a plane is empty. */
export const withSeals = (project: Project, random: Random): Project => {
  const bare = Object.values(project.joints).map(it => [it.id, { ...it, seals: [] }] as const)
  let next: Project = { ...project, joints: Object.fromEntries(bare) }
  for (const [joint] of bare)
    for (const plane of planes) {
      const [first, ...more] = sealKinds.filter(it => it.planes.includes(plane))
      if (first === undefined || random.chance(0.1)) continue
      const result = applyEdit(next, { kind: 'fill', joint, plane, seal: random.one([first, ...more]).kind })
      if (result.ok) next = result.value
    }
  return next
}

/** The project now and then with a box on its frame, with fixings of another kind, with seals in the gap of its rebate. */
export const withParts = (project: Project, random: Random): Project => {
  const [opening] = Object.values(project.openings)
  if (opening === undefined) throw new Error('there is no opening')
  const seals = Object.values(project.joints).flatMap(it => it.seals.map(seal => seal.id))
  const state = (field: string, part: string, word: string): Edit => ({
    kind: 'state',
    at: { field, part },
    to: specified(word),
  })
  const edits: readonly Edit[] = [
    ...(random.chance(0.3) ? [{ kind: 'add', into: opening.id, part: 'box' } as const] : []),
    ...(random.chance(0.3) ? [{ kind: 'add', into: opening.id, part: 'fixing' } as const] : []),
    ...opening.fixings.flatMap(it =>
      random.chance(0.5) ? [state('fixing.kind', it.id, random.one(fixingKinds))] : [],
    ),
    ...seals.flatMap(it => (random.chance(0.6) ? [state('seal.gap', it, 'rebate')] : [])),
  ]
  return edits.reduce((so, edit) => {
    const done = isPossible(so, edit) ? applyEdit(so, edit) : undefined
    return done?.ok ? done.value : so
  }, project)
}

/** Whether the part of an edit has the word that it states: behind no nib there is no gap. */
const isPossible = (project: Project, edit: Edit): boolean =>
  edit.kind !== 'state' || choicesOf(project, edit.at.part).some(it => it.id === edit.at.field)

/** Any edit: of a value within its allowed range, of the seals, of the layers, of the frame. */
export const randomEdit = (project: Project, random: Random): Edit => {
  const joint = Object.keys(project.joints)[0] ?? ''
  const frame = Object.keys(project.frames)[0] ?? ''
  const opening = Object.keys(project.openings)[0] ?? ''
  const zones = zonesOf(project).map(it => it.zone.id)
  const layers = Object.values(project.walls).flatMap(it => it.layers.map(layer => layer.id))
  const seals = Object.values(project.joints).flatMap(it => it.seals.map(seal => seal.id))
  const kind = random.one(sealKinds.map(it => it.kind) as [string, ...string[]]) // there is more than one kind
  const structural: readonly (() => Edit)[] = [
    () => ({
      kind: 'choose-profile',
      frame,
      profile: random.one(profiles.map(it => it.id) as [string, ...string[]]),
    }), // there are some,
    () => ({ kind: 'fill', joint, plane: random.one(planes), seal: kind }),
    () => ({ kind: 'remove', part: random.one([seals[0] ?? '', ...seals]) }),
    () => ({ kind: 'remove', part: random.one([layers[0] ?? '', ...layers]) }),
    () => ({ kind: 'replace', part: random.one([seals[0] ?? '', ...seals]), seal: kind }),
    () => ({
      kind: 'insert',
      into: Object.keys(project.walls)[0] ?? '',
      before: random.one([layers[0] ?? '', ...layers]),
      material: random.one(['eps', 'clay-brick-1800', 'wood-fibre', 'gypsum-board']),
      thickness_mm: random.between(5, 200),
    }),
    () => ({ kind: 'add', into: opening, part: random.one(addedParts), at_mm: random.between(100, 800) }),
    () => ({
      kind: 'remove',
      part: random.one(
        ['sill', 'box', 'block', 'fixing'].map(it => partOf(project, it)) as [string, ...string[]],
      ),
    }), // four of them
    () => ({
      kind: 'split-zone',
      zone: random.one(zones as [string, ...string[]]),
      at_mm: random.between(50, 1000),
    }), // a side has one
    () => ({
      kind: 'space-fixings',
      fixing: partOf(project, 'fixing'),
      side: random.one(sides),
      spacing_mm: random.between(200, 900),
    }),
  ]
  if (random.chance(0.3)) return random.one(structural as [() => Edit, ...(() => Edit)[]])() // the list above is not empty
  // what the climate of the place is changes no cut
  const parts = partIds(project).filter(it => it !== 'site')
  const part = random.one(parts as readonly string[] as [string, ...string[]]) // a project has at least one joint
  const [choice, ...choices] = choicesOf(project, part)
  if (choice && random.chance(0.3)) {
    const chosen = random.one([choice, ...choices])
    const { value } = random.one(chosen.allowed(project, part).choices)
    return { kind: 'state', at: { field: chosen.id, part }, to: { value, basis: 'specified' } }
  }
  const [field, ...fields] = fieldsOf(project, part)
  if (field === undefined) return { kind: 'remove', part }
  const chosen = random.one([field, ...fields])
  const { min = 0, max = 200 } = chosen.allowed(project, part).bounds
  const value = random.chance(0.2) ? random.one([min, max]) : random.between(min, max)
  return { kind: 'state', at: { field: chosen.id, part }, to: { value, basis: 'specified' } }
}

/** The first part whose name begins so, or a name that nothing has. */
const partOf = (project: Project, kind: string): string =>
  partIds(project).find(it => it.startsWith(`${kind}-`)) ?? `${kind}-0`
