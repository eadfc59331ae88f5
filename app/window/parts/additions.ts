import {
  type AddedPart,
  addedPartName,
  fixingKindName,
  type FixingKind,
  fixingKinds,
  jointOf,
  materialOf,
  openingOf,
  type Project,
  wallOf,
  type ZonePlace,
} from '../../../core/detail'
import { planeName, planes } from '../../../core/kinds'
import { materials } from '../../../core/materials'
import { sealKinds, serves } from '../../../core/seals'
import { filled, type Words } from '../../../core/words'
import type { Action } from '../../editor'
import { capital } from '../capital'
import type { MenuGroup } from '../dialogs/menu'
import { say as words } from '../window-words'

/** A new layer begins this thick; its thickness is then typed. *Ours*. */
const firstThickness_mm = 20

type At = {
  readonly project: Project
  readonly place: ZonePlace
  readonly say: (it: Words) => string
  readonly act: (action: Action) => void
}

/** What can be added: a seal for each plane that is empty, then a layer of any material before the selected one. */
export const addGroups = (at: At & { readonly selected: string | undefined }): readonly MenuGroup[] => {
  const { project, place, say, act } = at
  const joint = jointOf(project, place.zone)
  const empty = planes.filter(plane => !joint.seals.some(it => serves(it, plane)))
  const fills = empty.map((plane): MenuGroup => {
    const title = filled(words.fillPlane, planeName[plane])
    return {
      title: capital(say(title)),
      items: sealKinds
        .filter(kind => kind.planes.includes(plane))
        .map(kind => ({
          label: say(kind.name),
          do: () =>
            act({
              kind: 'edit',
              edits: [{ kind: 'fill', joint: joint.id, plane, seal: kind.kind }],
              says: title,
            }),
        })),
    }
  })
  const layers = wallOf(project, place.opening).layers
  return [
    ...fills,
    openingGroup(at),
    ...layerGroups(at, layers.some(it => it.id === at.selected) ? at.selected : undefined),
  ]
}

/** Fixings, blocks and members of a side; sill or threshold and box where there is none yet. */
export const openingGroup = ({ project, place, say, act }: At): MenuGroup => {
  const opening = openingOf(project, place.opening)
  const { side } = place
  const isLevel = side === 'head' || side === 'sill'
  const item = (part: AddedPart, fixing?: FixingKind) => {
    const name = fixing ? fixingKindName[fixing] : addedPartName[part]
    const edit = { kind: 'add', into: opening.id, part, side, ...(fixing ? { fixing } : {}) } as const
    return { label: say(name), do: () => act({ kind: 'edit', edits: [edit], says: name }) }
  }
  return {
    title: say(words.addToOpening),
    items: [
      ...fixingKinds.map(it => item('fixing', it)),
      item('block'),
      isLevel ? item('mullion') : item('transom'),
      ...(opening.sill === undefined && opening.threshold === undefined && side === 'sill'
        ? [item('sill'), item('threshold')]
        : []),
      ...(opening.box === undefined && side === 'head' ? [item('box')] : []),
    ],
  }
}

/** A layer of any material: those of the wall first, then all others; before a layer, or at the inside. */
export const layerGroups = (
  { project, place, say, act }: At,
  before: string | undefined,
): readonly MenuGroup[] => {
  const wall = wallOf(project, place.opening)
  const used = [...new Set(wall.layers.map(it => it.material))]
  const next = wall.layers.find(it => it.id === before)
  const title = next
    ? filled(words.layerBeforeNamed, firstWord(materialOf(project, next.material)?.name))
    : words.layerAtInside
  const item = (material: string) => {
    const name = materialOf(project, material)?.name
    return name === undefined
      ? []
      : [
          {
            label: capital(say(name)),
            do: () =>
              act({
                kind: 'edit',
                edits: [
                  {
                    kind: 'insert',
                    into: wall.id,
                    ...(before === undefined ? {} : { before }),
                    material,
                    thickness_mm: firstThickness_mm,
                  },
                ],
                says: name,
              }),
          },
        ]
  }
  return [
    { title: say(title), items: used.flatMap(item) },
    { items: materials.filter(it => !used.includes(it.id)).flatMap(it => item(it.id)) },
  ]
}

/** Of a material what it is, not how heavy. */
const firstWord = (name: Words | undefined): Words => ({
  en: name?.en.split(',')[0] ?? '',
  de: name?.de.split(',')[0] ?? '',
})
