import {
  frameOf,
  known,
  type Part,
  partsOf,
  type Project,
  thresholdPieces,
  type ZonePlace,
} from '../../detail'
import type { Id } from '../../geometry'
import { memberId, type Section } from '../../section'
import { filled, type Words, words } from '../../words'
import type { ListedPart } from './listed-part'

/** The parts at a zone as its sheet lists them, numbered outside to inside. */
export const listedParts = (project: Project, place: ZonePlace): readonly ListedPart[] => {
  const frame = frameOf(project, place.opening)
  return partsOf(project, place).map((part, at): ListedPart => {
    const line = lineOf(project, part.id)
    return {
      id: part.id,
      number: `${at + 1}`,
      of: membersWith(part.id, frame.id),
      name: part.name,
      note: noteOf(part),
      assumed:
        part.kind === 'layer' &&
        known(project, { field: 'layer.thickness', part: part.id })?.basis === 'assumed',
      role: roleOf(part, frame.id),
      ...(line && { line }),
      ...(part.kind === 'sill' && part.material !== undefined && { pointedIn: part.material }),
    }
  })
}

const noteOf = (part: Part): Words =>
  part.kind === 'layer' ? filled(words('{0} mm', '{0} mm'), part.value) : part.value

/** What lies round a threshold: no member of the element. */
const isOfThreshold = ({ id, kind }: Part): boolean =>
  kind === 'member' && thresholdPieces.some(it => id.endsWith(`/${it}`))

/** Beads go with the sash that holds them. */
const membersWith = (part: Id, frame: Id): readonly Id[] =>
  part === memberId(frame, 'sash') ? [part, memberId(frame, 'bead')] : [part]

const roleOf = (part: Part, frame: Id): ListedPart['role'] => {
  if (part.kind === 'threshold' || isOfThreshold(part)) return 'ground'
  if (part.kind === 'layer' || part.kind === 'seal' || part.kind === 'fixing') return part.kind
  return part.id === memberId(frame, 'glazing') ? 'glazing' : 'frame'
}

/** What a seal is drawn with where it is a line, by the plane that it serves. */
const lineOf = (project: Project, part: Id): ListedPart['line'] => {
  if (part.endsWith('/sheet')) return 'membrane-water'
  for (const joint of Object.values(project.joints)) {
    const seal = joint.seals.find(it => it.id === part)
    if (seal) return seal.plane === 'outer' ? 'membrane-outer' : 'membrane-inner'
  }
  return undefined
}

/** Whether a part is in a section at all: a list of several cuts has parts that one of them lacks. */
export const isThere = (part: ListedPart, section: Section): boolean =>
  section.regions.some(it => part.of.includes(it.part)) ||
  section.lines.some(it => part.of.includes(it.part)) ||
  section.seen.some(it => part.of.includes(it.part))

/**
 * The parts that a sheet of some cuts lists, with the numbers that they have: of fixings and layers those that one of them
 * shows. At a threshold a finish of the wall may end over the floor.
 */
export const onSheet = (parts: readonly ListedPart[], sections: readonly Section[]): readonly ListedPart[] =>
  parts.filter(
    part => (part.role !== 'fixing' && part.role !== 'layer') || sections.some(it => isThere(part, it)),
  )

/** The same without the layers of the wall that a cut does not show: a finish may end over the floor of a threshold. */
export const withSeenLayers = (parts: readonly ListedPart[], section: Section): readonly ListedPart[] =>
  parts.filter(it => it.role !== 'layer' || isThere(it, section))

/** The number of each part at a zone, as sheets and lists print it. */
export const partNumbers = (project: Project, place: ZonePlace): ReadonlyMap<Id, string> =>
  new Map(listedParts(project, place).map(it => [it.id, it.number]))
