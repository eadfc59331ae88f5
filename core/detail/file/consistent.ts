import type { Id } from '../../geometry'
import { practice } from '../../practice'
import type { Problem } from '../../units'
import { filled, type Words, words } from '../../words'
import { sides } from '../../kinds'
import { standingProblems } from '../allowed/stands'
import { materialOf } from '../edits/materials'
import { entryAt } from '../find'
import type { Project } from '../model'
import { profiles } from '../profiles/all'
import { footTaken } from '../threshold'

/** What a file's schema cannot see: names that lead nowhere, names used twice, values for which no geometry exists. */
export const consistencyProblems = (project: Project): readonly Problem[] => {
  const dangling = [...referenceProblems(project), ...nameProblems(project)]
  return dangling.length > 0 ? dangling : standingProblems(project)
}

const missing = (at: string, what: Words, id: Id): Problem => ({
  at,
  say: filled(words('{0} {1} does not exist', '{0} {1} gibt es nicht'), what, id),
})

const referenceProblems = (project: Project): readonly Problem[] => {
  const problems: Problem[] = []
  const need = (found: unknown, problem: Problem) => {
    if (found === undefined) problems.push(problem)
  }
  need(
    practice(project.practice.id),
    missing('practice.id', words('practice', 'Regelwerk'), project.practice.id),
  )
  const madeOf = (material: Id | undefined, at: string) => {
    if (material !== undefined)
      need(materialOf(project, material), missing(at, words('material', 'Baustoff'), material))
  }
  Object.entries(project.walls).forEach(([id, { layers, reveal }]) => {
    layers.forEach((layer, i) => {
      madeOf(layer.material, `walls.${id}.layers.${i}.material`)
      madeOf(layer.edge?.material, `walls.${id}.layers.${i}.edge.material`)
    })
    madeOf(reveal.board?.material, `walls.${id}.reveal.board.material`)
  })
  Object.entries(project.frames).forEach(([id, frame]) =>
    need(profiles.find(it => it.id === frame.profile), missing(`frames.${id}.profile`, words('profile', 'Profil'), frame.profile)),
  ) // prettier-ignore
  Object.entries(project.openings).forEach(([id, opening]) => {
    need(
      entryAt(project.walls, opening.wall),
      missing(`openings.${id}.wall`, words('wall', 'Wand'), opening.wall),
    )
    need(
      entryAt(project.frames, opening.frame),
      missing(`openings.${id}.frame`, words('frame', 'Rahmen'), opening.frame),
    )
    const { sill, threshold, box } = opening
    if (sill && threshold) problems.push({ at: `openings.${id}.threshold`, say: footTaken })
    madeOf(sill?.material, `openings.${id}.sill.material`)
    madeOf(sill?.board?.material, `openings.${id}.sill.board.material`)
    madeOf(threshold?.material, `openings.${id}.threshold.material`)
    for (const key of ['base', 'finish', 'insulation', 'paving'] as const)
      madeOf(threshold?.[key].material, `openings.${id}.threshold.${key}.material`)
    madeOf(box?.material, `openings.${id}.box.material`)
    madeOf(box?.lining?.material, `openings.${id}.box.lining.material`)
    sides.forEach(side =>
      opening.sides[side].forEach((zone, i) =>
        need(entryAt(project.joints, zone.joint), missing(`openings.${id}.sides.${side}.${i}.joint`, words('joint', 'Fuge'), zone.joint)),
      ),
    ) // prettier-ignore
  })
  if (Object.keys(project.openings).length === 0) {
    problems.push({
      at: 'openings',
      say: words('a project has at least one opening', 'ein Projekt hat mindestens eine Öffnung'),
    })
  }
  return problems
}

/** Every part has a name of its own, and its place in a table is that name. */
const nameProblems = (project: Project): readonly Problem[] => {
  const problems: Problem[] = []
  const taken = new Set<Id>()
  const name = (id: Id, at: string) => {
    if (taken.has(id))
      problems.push({ at, say: filled(words('{0} is used twice', '{0} ist doppelt vergeben'), id) })
    taken.add(id)
  }
  for (const table of ['walls', 'frames', 'joints', 'openings', 'materials'] as const) {
    Object.entries(project[table]).forEach(([key, it]) => {
      if (it.id !== key) problems.push({ at: `${table}.${key}.id`, say: filled(words('{0} stands under another name', '{0} steht unter anderem Namen'), it.id) }) // prettier-ignore
    })
  }
  Object.values(project.walls).forEach(wall => {
    name(wall.id, `walls.${wall.id}`)
    wall.layers.forEach(it => name(it.id, `walls.${wall.id}.layers`))
  })
  Object.values(project.frames).forEach(it => name(it.id, `frames.${it.id}`))
  Object.values(project.joints).forEach(joint => {
    name(joint.id, `joints.${joint.id}`)
    joint.seals.forEach(it => name(it.id, `joints.${joint.id}.seals`))
    joint.out?.forEach(it => name(it.id, `joints.${joint.id}.out`))
  })
  Object.values(project.openings).forEach(opening => {
    name(opening.id, `openings.${opening.id}`)
    for (const table of ['fixings', 'blocks', 'mullions', 'transoms', 'photos'] as const) {
      opening[table]?.forEach(it => name(it.id, `openings.${opening.id}.${table}`))
    }
    if (opening.sill) name(opening.sill.id, `openings.${opening.id}.sill`)
    if (opening.threshold) name(opening.threshold.id, `openings.${opening.id}.threshold`)
    if (opening.box) name(opening.box.id, `openings.${opening.id}.box`)
    sides.forEach(side =>
      opening.sides[side].forEach(it => name(it.id, `openings.${opening.id}.sides.${side}`)),
    )
  })
  return problems
}
