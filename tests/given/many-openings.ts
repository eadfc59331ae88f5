import { type Opening, type Project, samples, type Zone } from '../../core/detail'
import type { Id } from '../../core/geometry'
import type { Side } from '../../core/kinds'
import { specified } from '../../core/units'
import { randomFrom } from './random'

/**
 * A project of so many openings in three walls with the joints of three samples. Of their sizes as many differ as are
 * wanted: a housing block repeats a few, in an old building no two are alike.
 */
export const manyOpenings = (count: number, sizes: number): Project => {
  const random = randomFrom(7)
  const first = planOf('flush-in-sand-lime', 0)
  const plans = [first, planOf('unheld-head', 1), planOf('bead-in-brick', 2)]
  const widths_mm = Array.from({ length: sizes }, () => random.whole(800, 2400))
  const heights_mm = Array.from({ length: sizes }, () => random.whole(900, 2400))
  const openings = Array.from({ length: count }, (_, at): Opening => {
    const { opening } = plans[at % plans.length] ?? first
    return sized(opening, at, widths_mm[at % sizes] ?? 1200, heights_mm[at % sizes] ?? 1400)
  })
  return {
    ...first.project,
    next: 100_000,
    ...joined(plans),
    openings: Object.fromEntries(openings.map(it => [it.id, it])),
  }
}

type Plan = { readonly project: Project; readonly opening: Opening }

/** A sample whose parts have names of their own, so that several stand in one project. */
const planOf = (file: string, at: number): Plan => {
  const found = samples.find(it => it.file === file)
  if (!found) throw new Error(`there is no sample ${file}`)
  // Ids are words and a number between quotes: each gets the number of its sample.
  const named = JSON.stringify(found.project).replaceAll(
    /"((?:wall|frame|joint|seal|layer|opening|zone|fixing|block|sill|box|member)-\d+)"/g,
    (_, id: string) => `"${id}-${at}"`,
  )
  // What was a project is one again under other names.
  const project = JSON.parse(named) as Project
  const [opening] = Object.values(project.openings)
  if (!opening) throw new Error(`${file} has no opening`)
  return { project, opening }
}

const joined = (plans: readonly Plan[]) => ({
  materials: Object.assign({}, ...plans.map(it => it.project.materials)) as Project['materials'],
  walls: Object.assign({}, ...plans.map(it => it.project.walls)) as Project['walls'],
  frames: Object.assign({}, ...plans.map(it => it.project.frames)) as Project['frames'],
  joints: Object.assign({}, ...plans.map(it => it.project.joints)) as Project['joints'],
})

const sized = (it: Opening, at: number, width_mm: number, height_mm: number): Opening => {
  const named = (id: Id) => `${id}-${at}`
  const zones = (side: Side): Opening['sides'][Side] => {
    const to_mm = side === 'head' || side === 'sill' ? width_mm : height_mm
    const [first, ...more] = it.sides[side]
    const zone = (one: Zone): Zone => ({ ...one, id: named(one.id), to_mm })
    return [zone(first), ...more.map(zone)]
  }
  return {
    ...it,
    id: named(it.id),
    name: `W-${at + 1}`,
    width_mm: specified(width_mm),
    height_mm: specified(height_mm),
    mullions: it.mullions.map(one => ({ ...one, id: named(one.id), at_mm: specified(width_mm / 2) })),
    fixings: it.fixings.map(one => ({ ...one, id: named(one.id) })),
    blocks: it.blocks.map(one => ({ ...one, id: named(one.id) })),
    ...(it.box ? { box: { ...it.box, id: named(it.box.id) } } : {}),
    ...(it.sill ? { sill: { ...it.sill, id: named(it.sill.id) } } : {}),
    sides: { head: zones('head'), left: zones('left'), right: zones('right'), sill: zones('sill') },
    stays: [],
  }
}
