import { isDeepStrictEqual } from 'node:util'
import { describe, expect, test } from 'vitest'
import { beginSession, dispatch, type Session } from '../../app/editor'
import {
  applyEdit,
  fields,
  fieldsOf,
  jointOf,
  openProject,
  partIds,
  type Project,
  samples,
  saveProject,
  zonesOf,
} from '../../core/detail'
import { cutSection } from '../../core/section'
import { specified } from '../../core/units'
import { words } from '../../core/words'
import { randomFrom } from '../given/random'
import { randomDetail, randomEdit } from '../given/random-detail'
import { untiled } from './section-laws'

/** Four runs that share the work: none takes long on a busy machine. */
const runs = [0, 1, 2, 3].map(run => Array.from({ length: 500 }, (_, i) => run * 500 + i))

describe.each(runs.map(seeds => [`${seeds[0]} to ${seeds.at(-1)}`, seeds] as const))(
  'random projects %s',
  (_, seeds) => {
    test('open from what they are saved as, the same', () => {
      const broken = seeds.filter(seed => {
        const { project } = randomDetail(seed)
        const opened = openProject(saveProject(project))
        return (
          !opened.ok || opened.value.notes.length > 0 || !isDeepStrictEqual(opened.value.project, project)
        )
      })
      expect(broken).toEqual([])
    })

    test('are after any edits, undone to the start, the very project that they began as', () => {
      const broken = seeds.filter(seed => {
        const random = randomFrom(seed + 1_000_000)
        const begun = beginSession(randomDetail(seed).project)
        let session: Session = begun
        for (let at = 0; at < 6; at++) {
          const edits = [randomEdit(session.project, random)] as const
          session = dispatch(session, { kind: 'edit', edits, says: words('any', 'irgendeine') }).session
        }
        while (session.past.length > 0) session = dispatch(session, { kind: 'undo' }).session
        return session.project !== begun.project || session.revision !== begun.revision
      })
      expect(broken).toEqual([])
    })
  },
)

/** A sample with the offset of a flank measured. */
const offPlumb = samples.slice(0, 1).flatMap(({ project }) => {
  const [opening = ''] = Object.keys(project.openings)
  const found = applyEdit(project, {
    kind: 'measure-offset',
    opening,
    side: 'left',
    at_mm: 600,
    offset_mm: 4,
  })
  return found.ok ? [found.value] : []
})

/** Each field is tried on so many parts that have it: samples first, then details that have what samples lack. */
const tries = 3
/** The door with a drain before it: only there its channel has sizes. */
const drained = samples.flatMap(({ file, project }) => {
  const [opening = ''] = Object.keys(project.openings)
  if (file !== 'step-free-door') return []
  const at = { field: 'opening.threshold-drain', part: opening }
  const found = applyEdit(project, { kind: 'state', at, to: specified('channel') })
  return found.ok ? [found.value] : []
})

const projects = [
  ...samples.map(it => it.project),
  ...drained,
  ...offPlumb,
  ...Array.from({ length: 60 }, (_, seed) => randomDetail(seed).project),
]

test('whatever a range allows, at either end of it, can be cut, tiles, and goes into a file', () => {
  const broken: string[] = []
  const tried = new Map<string, number>()
  let at = 0
  for (const project of projects) {
    for (const part of partIds(project)) {
      for (const field of fieldsOf(project, part)) {
        const count = tried.get(field.id) ?? 0
        if (count >= tries) continue
        tried.set(field.id, count + 1)
        const { min = 0, max = 0 } = field.allowed(project, part).bounds
        for (const value of [min, max]) {
          const to = specified(value)
          const stated = applyEdit(project, { kind: 'state', at: { field: field.id, part }, to })
          const wrong = stated.ok ? wrongIn(stated.value, at++) : ['is refused']
          broken.push(...wrong.map(it => `${part} ${field.id} ${value}: ${it}`))
        }
      }
    }
  }
  expect(broken).toEqual([])
  expect(fields.map(it => it.id).filter(it => !tried.has(it))).toEqual([])
})

/** What is wrong with one zone of a project, each time the next one, and with its file. */
const wrongIn = (project: Project, at: number): readonly string[] => {
  const places = zonesOf(project)
  const place = places[at % places.length]
  if (place === undefined) return ['no zone']
  const width_mm = jointOf(project, place.zone).planned_mm.value
  const tiling = untiled(cutSection(project, place, { state: 'planned', width_mm }))
  return openProject(saveProject(project)).ok ? tiling : [...tiling, 'does not open again']
}
