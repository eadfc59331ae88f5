import type { Id } from '../../geometry'
import type { Stated } from '../../units'
import { type Words, words } from '../../words'
import type { Allowed } from '../allowed/position'
import { allowedBoxDepth, allowedBoxForward } from '../allowed/box'
import type { Field } from '../field'
import type { Box } from '../box'
import { listedPart, memberOf, singlePart } from '../opening-parts'
import type { Project } from '../model'
import { sideLength_mm } from '../positions'
import { numberField } from './number-field'
import { withBox, withListed } from './tables'

const within = (min: number, max: number, because: Words): Allowed => ({
  bounds: { unit: 'mm', min, max },
  because,
})

const alongFrame = words(
  'along the frame, from its left or lower end',
  'am Rahmen entlang, ab linkem oder unterem Ende',
)

const blockFields: readonly Field<number>[] = [
  numberField({
    id: 'block.at',
    name: words('Middle of the block', 'Mitte des Klotzes'),
    of: 'block',
    unit: 'mm',
    read: (project, id) => listedPart(project, 'blocks', id)?.part.at_mm,
    allowed: (project, id) => {
      const found = listedPart(project, 'blocks', id)
      return within(0, found ? sideLength_mm(found.opening, found.part.side) : 12_000, alongFrame)
    },
    write: (project, id, to) => withListed(project, 'blocks', id, it => ({ ...it, at_mm: to ?? it.at_mm })),
  }),
  numberField({
    id: 'block.length',
    name: words('Length of the block', 'Länge des Klotzes'),
    of: 'block',
    unit: 'mm',
    read: (project, id) => listedPart(project, 'blocks', id)?.part.length_mm,
    allowed: () => within(10, 400, words('along the frame', 'am Rahmen entlang')),
    write: (project, id, to) =>
      withListed(project, 'blocks', id, it => ({ ...it, length_mm: to ?? it.length_mm })),
  }),
]

const withMember = (
  project: Project,
  id: Id,
  to: Stated<number> | undefined,
  key: 'at_mm' | 'face_mm',
): Project => {
  const found = memberOf(project, id)
  return found && to ? withListed(project, found.list, id, it => ({ ...it, [key]: to })) : project
}

const memberFields: readonly Field<number>[] = [
  numberField({
    id: 'mullion.at',
    name: words('Axis of mullion or transom', 'Achse des Pfostens oder Riegels'),
    of: 'mullion',
    unit: 'mm',
    read: (project, id) => memberOf(project, id)?.part.at_mm,
    allowed: (project, id) => {
      const found = memberOf(project, id)
      const side = found?.list === 'transoms' ? 'left' : 'head'
      return within(1, found ? sideLength_mm(found.opening, side) - 1 : 12_000, alongFrame)
    },
    write: (project, id, to) => withMember(project, id, to, 'at_mm'),
  }),
  numberField({
    id: 'mullion.face',
    name: words('Face of mullion or transom', 'Ansichtsbreite des Pfostens oder Riegels'),
    of: 'mullion',
    unit: 'mm',
    read: (project, id) => memberOf(project, id)?.part.face_mm,
    allowed: () => within(20, 300, words('in the plane of the wall', 'in der Wandebene')),
    write: (project, id, to) => withMember(project, id, to, 'face_mm'),
  }),
]

const boxField = (it: {
  readonly id: string
  readonly name: Words
  readonly has?: (box: Box) => boolean
  readonly of: (box: Box) => Stated<number> | undefined
  readonly with: (box: Box, to: Stated<number>) => Box
  readonly allowed: (project: Project, id: Id) => Allowed
}): Field<number> =>
  numberField({
    id: it.id,
    name: it.name,
    of: 'box',
    unit: 'mm',
    has: (project, id) => {
      const found = singlePart(project, 'box', id)
      return found !== undefined && (it.has?.(found.part) ?? true)
    },
    read: (project, id) => {
      const found = singlePart(project, 'box', id)
      return found && it.of(found.part)
    },
    allowed: it.allowed,
    write: (project, id, to) => (to === undefined ? project : withBox(project, id, box => it.with(box, to))),
  })

const boxFields: readonly Field<number>[] = [
  boxField({
    id: 'box.height',
    name: words('Height of the box', 'Höhe des Kastens'),
    of: it => it.height_mm,
    with: (it, height_mm) => ({ ...it, height_mm }),
    // a curtain needs a roll; the joint above it lies at the lintel: ours
    allowed: () => within(80, 500, words('from the frame to the joint below the lintel', 'vom Rahmen bis zur Fuge unter dem Sturz')),
  }),
  boxField({
    id: 'box.depth',
    name: words('Depth of the box', 'Tiefe des Kastens'),
    of: it => it.depth_mm,
    with: (it, depth_mm) => ({ ...it, depth_mm }),
    allowed: allowedBoxDepth,
  }),
  boxField({
    id: 'box.forward',
    name: words('Front of the box before the frame', 'Kastenfront vor dem Rahmen'),
    of: it => it.forward_mm,
    with: (it, forward_mm) => ({ ...it, forward_mm }),
    allowed: allowedBoxForward,
  }),
  boxField({
    id: 'box.shell',
    name: words('Walls of the box', 'Wandung des Kastens'),
    of: it => it.shell_mm,
    with: (it, shell_mm) => ({ ...it, shell_mm }),
    allowed: () => within(1, 60, words('their thickness', 'ihre Dicke')),
  }),
  boxField({
    id: 'box.lining',
    name: words('Insulation in the box', 'Dämmung im Kasten'),
    has: it => it.lining !== undefined,
    of: it => it.lining?.thickness_mm,
    with: (it, thickness_mm) => (it.lining ? { ...it, lining: { ...it.lining, thickness_mm } } : it),
    allowed: () => within(5, 120, words('at the top, at the room side and on the lid', 'oben, zur Raumseite und auf dem Deckel')),
  }),
] // prettier-ignore

/** The numbers of blocks, mullions, transoms and boxes. */
export const openingPartFields: readonly Field<number>[] = [...blockFields, ...memberFields, ...boxFields]
