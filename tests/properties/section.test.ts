import { beforeAll, describe, expect, test } from 'vitest'
import { jointOf } from '../../core/detail'
import { cutSection, layoutOf, mayLackPlace, unplacedSeals } from '../../core/section'
import { mirrored } from '../given/mirrored'
import { type RandomDetail, randomDetail } from '../given/random-detail'
import { areasByLibrary, areasIn, differing, offGrid, untiled } from './section-laws'

const widthOf = (it: RandomDetail): number => jointOf(it.project, it.place.zone).planned_mm.value
/** Every tenth cut goes through the fixings of its side. */
const throughOf = (it: RandomDetail) => (it.seed % 10 === 0 ? ({ through: 'fixing' } as const) : {})

/** Four runs that share the work: none takes long on a busy machine. */
const runs = [0, 1, 2, 3].map(run => Array.from({ length: 500 }, (_, i) => run * 500 + i))

const cutOf = (seed: number) => {
  const it = randomDetail(seed)
  const at = { width_mm: widthOf(it), ...throughOf(it) }
  return { ...it, at, section: cutSection(it.project, it.place, { state: 'planned', ...at }) }
}
type Cut = ReturnType<typeof cutOf>

describe.each(runs.map(seeds => [`${seeds[0]} to ${seeds.at(-1)}`, seeds] as const))(
  'random details %s',
  (_, seeds) => {
    const many: Cut[] = []
    beforeAll(() => void many.push(...seeds.map(cutOf)))
    const brokenIn = (law: (it: Cut) => readonly string[]): readonly string[] =>
      many.flatMap(it => law(it).map(says => `seed ${it.seed}: ${says}`))

    test('are tiled: every edge has one region on each side or lies on one face, lines run along edges', () => {
      expect(brokenIn(it => untiled(it.section))).toEqual([])
    })

    test('have every vertex on the grid', () => {
      expect(brokenIn(it => offGrid(it.section).map(at => `${at}`))).toEqual([])
    })

    test('have the areas that a general boolean library finds by painting the same outlines', () => {
      const law = ({ project, place, at, section }: Cut) =>
        differing(areasIn(section), areasByLibrary(project, place, at), 1e-6)
      expect(brokenIn(law)).toEqual([])
    })

    test('show every seal of their joint, but those of which it is said that they have no place', () => {
      const law = ({ project, place, at, section }: Cut) => {
        const shown = new Set([...section.regions, ...section.lines].map(it => it.part))
        const hidden = jointOf(project, place.zone).seals.filter(it => !shown.has(it.id))
        const said = unplacedSeals(project, place, at.width_mm).map(it => it.seal.id)
        const { stands } = layoutOf(project, place, at.width_mm)
        const isAsked = mayLackPlace(jointOf(project, place.zone).seals, at.width_mm, stands.to_mm - stands.from_mm)
        if (said.length > 0 && !isAsked) return ['is not asked']
        return hidden.map(it => it.id).join() === said.join() ? [] : [`hides ${hidden.map(it => it.kind).join()}, says ${said.join()}`]
      } // prettier-ignore
      expect(brokenIn(law)).toEqual([])
    })

    test('are cut alike when their opening is mirrored', () => {
      const law = ({ project, place, at, section }: Cut) => {
        const other = mirrored(project, place)
        const cut = cutSection(other.project, other.place, { state: 'planned', ...at })
        const same = JSON.stringify({ ...cut, side: section.side }) === JSON.stringify(section)
        return same ? [] : [`${place.side} differs from ${other.place.side}`]
      }
      expect(brokenIn(law)).toEqual([])
    })
  },
)
