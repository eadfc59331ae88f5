import { describe, expect, test } from 'vitest'
import type { Opening, Project } from '../../../core/detail'
import { check, emptyMemory, type Finding, type Report } from '../../../core/rules'
import { specified } from '../../../core/units'
import { randomDetail } from '../../given/random-detail'

/** The opening once more under names of its own, wider by so much; with 0 it is its twin. */
const another = (it: Opening, at: number, wider_mm: number): Opening => {
  const named = JSON.stringify(it).replaceAll(
    /"((?:opening|zone|fixing|block|sill|box|member|transom|mullion)-\d+)"/g,
    (_, id: string) => `"${id}-${at}"`,
  )
  // What was an opening is one again under other names.
  const copy = JSON.parse(named) as Opening
  return { ...copy, width_mm: specified(copy.width_mm.value + wider_mm) }
}

/** A random project with two twins of its opening and two that are wider. */
const several = (seed: number): Project => {
  const { project } = randomDetail(seed)
  const [first] = Object.values(project.openings)
  if (!first) throw new Error('there is no opening')
  const openings = [first, ...[0, 0, 40, 300].map((wider_mm, at) => another(first, at, wider_mm))]
  return { ...project, openings: Object.fromEntries(openings.map(it => [it.id, it])) }
}

const aloneIn = (project: Project, opening: Opening): Project => ({
  ...project,
  openings: { [opening.id]: opening },
})

/** All that a report says of an opening, in an order of its own; remedies may suit other openings too, and are left out. */
const saidOf = ({ findings, notApplicable }: Report, opening: string): readonly string[] =>
  [...findings.map(plain), ...notApplicable]
    .filter(it => it.where.opening === opening)
    .map(it => JSON.stringify(it))
    .toSorted()

const plain = (it: Finding) => ({
  ...Object.fromEntries(Object.keys(it).filter(key => key !== 'remedies').map(key => [key, Reflect.get(it, key)])),
  where: it.where,
}) // prettier-ignore

const seeds = (count: number) => Array.from({ length: count }, (_, at) => at + 1)

describe('what is found of an opening', () => {
  test('is the same among others that are alike or nearly so as it is alone', () => {
    for (const seed of seeds(12)) {
      const project = several(seed)
      const report = check(project)
      for (const opening of Object.values(project.openings))
        expect(saidOf(report, opening.id), `seed ${seed}, ${opening.id}`).toEqual(
          saidOf(check(aloneIn(project, opening)), opening.id),
        )
    }
  })

  test('is the same whether or not other projects were asked about before', () => {
    const memory = emptyMemory()
    for (const seed of seeds(30)) {
      const { project } = randomDetail(seed)
      const fresh = check(project)
      const kept = check(project, undefined, undefined, memory)
      for (const opening of Object.keys(project.openings))
        expect(saidOf(kept, opening), `seed ${seed}`).toEqual(saidOf(fresh, opening))
    }
  })
})
