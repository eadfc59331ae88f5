import type { Id } from '../geometry'
import { sides } from '../kinds'
import { site } from './fields/site'
import type { Opening, Project } from './model'
import { offsetId } from './opening-parts'

/** The names of everything in a project that can have values, in the order of its tables. */
export const partIds = (project: Project): readonly Id[] => [
  site,
  ...Object.values(project.walls).flatMap(it => [it.id, ...idsOf(it.layers)]),
  ...Object.keys(project.frames),
  ...Object.values(project.joints).flatMap(it => [it.id, ...idsOf(it.seals)]),
  ...Object.values(project.openings).flatMap(idsInOpening),
]

const idsInOpening = (it: Opening): readonly Id[] => [
  it.id,
  ...sides.flatMap(side => idsOf(it.sides[side])),
  ...(it.survey?.offsets ?? []).map(one => offsetId(it.id, one.side, one.at_mm)),
  ...idsOf(it.mullions),
  ...idsOf(it.transoms ?? []),
  ...idsOf(it.fixings),
  ...idsOf(it.blocks),
  ...[it.sill, it.threshold, it.box].flatMap(one => (one ? [one.id] : [])),
]

const idsOf = (all: readonly { readonly id: Id }[]): readonly Id[] => all.map(it => it.id)
