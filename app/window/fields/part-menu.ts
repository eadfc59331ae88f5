import {
  frameOf,
  layerOf,
  partKindOf,
  pieceOf,
  type Project,
  profiles,
  sealOf,
  wallOf,
  type ZonePlace,
} from '../../../core/detail'
import { planeName } from '../../../core/kinds'
import { type AnySeal, kindOf, sealKinds } from '../../../core/seals'
import { filled, type Words } from '../../../core/words'
import { capital } from '../capital'
import type { MenuGroup } from '../dialogs/menu'
import type { PartActs } from '../parts/part-acts'
import { say as words } from '../window-words'

type At = {
  readonly project: Project
  readonly place: ZonePlace
  readonly part: string
  readonly say: (it: Words) => string
  readonly acts: PartActs
  readonly rename: () => void
}

/** What can be done with a part beyond its values: another kind in its place, another profile, its order, its name, taking it out. */
export const partGroups = (at: At): readonly MenuGroup[] =>
  at.acts.isOut(at.part)
    ? [{ items: [{ label: at.say(words.putBack), hint: 'T', do: () => at.acts.takeOut(at.part) }] }]
    : [...sealGroups(at), ...layerGroups(at), ...frameGroups(at), commonGroup(at)]

const sealGroups = ({ project, part, say, acts }: At): readonly MenuGroup[] => {
  const seal = sealOf(project, part)?.seal
  if (seal === undefined) return []
  const own = kindOf(seal)
  return [
    {
      title: say(words.becomes),
      items: sealKinds
        .filter(it => it.planes.includes(seal.plane))
        .map(kind => ({
          label: say(kind.name),
          isOn: kind === own,
          do: () => {
            if (kind !== own)
              acts.act({ kind: 'edit', edits: [{ kind: 'replace', part, seal: kind.kind }], says: kind.name })
          },
        })),
    },
    {
      items: [
        { label: say(words.takeSealOut), hint: 'T', do: () => acts.takeOut(part) },
        ...othersOf(project, seal).map(other => ({
          label: say(filled(words.changePlaces, planeName[other.plane])),
          do: () =>
            acts.act({
              kind: 'edit',
              edits: [{ kind: 'exchange', part, with: other.id }],
              says: filled(words.changePlaces, planeName[other.plane]),
            }),
        })),
      ],
    },
  ]
}

/** The seals of the same joint that can change planes with one. */
const othersOf = (project: Project, seal: AnySeal): readonly AnySeal[] =>
  (sealOf(project, seal.id)?.joint.seals ?? []).filter(
    it =>
      it.plane !== seal.plane &&
      kindOf(it).planes.includes(seal.plane) &&
      kindOf(seal).planes.includes(it.plane),
  )

const layerGroups = ({ project, place, part, say, acts }: At): readonly MenuGroup[] => {
  if (layerOf(project, part) === undefined) return []
  const layers = wallOf(project, place.opening).layers
  const index = layers.findIndex(it => it.id === part)
  return [
    {
      items: [
        { label: say(words.moveOut), hint: 'Alt ↑', off: index <= 0, do: () => acts.move(part, -1) },
        {
          label: say(words.moveIn),
          hint: 'Alt ↓',
          off: index === layers.length - 1,
          do: () => acts.move(part, 1),
        },
        { label: say(words.duplicate), hint: say(words.keyDuplicate), do: () => acts.duplicate(part) },
      ],
    },
  ]
}

const frameGroups = ({ project, place, part, say, acts }: At): readonly MenuGroup[] => {
  const frame = frameOf(project, place.opening)
  if (part.split('/')[0] !== frame.id) return []
  const walls = Object.values(project.walls)
  return [
    ...(walls.length > 1
      ? [
          {
            title: say(words.wallOfOpening),
            items: walls.map(it => ({
              label: it.name || it.id,
              isOn: it.id === wallOf(project, place.opening).id,
              do: () =>
                acts.act({
                  kind: 'edit',
                  edits: [{ kind: 'choose-wall', opening: place.opening, wall: it.id }],
                  says: words.wallOfOpening,
                }),
            })),
          },
        ]
      : []),
    {
      title: say(words.profile),
      items: profiles.map(it => ({
        label: capital(say(it.name)),
        isOn: it.id === frame.profile,
        do: () =>
          acts.act({
            kind: 'edit',
            edits: [{ kind: 'choose-profile', frame: frame.id, profile: it.id }],
            says: words.profile,
          }),
      })),
    },
  ]
}

/** Frames, walls and joints stay; layers, seals and what stands in an opening can go. */
const canGo = (project: Project, part: string): boolean =>
  ['layer', 'seal', 'fixing', 'block', 'mullion', 'sill', 'threshold', 'box'].includes(
    partKindOf(project, part) ?? '',
  )

/** What every part has: it can be copied and named; layers, seals and what else can go can be removed. */
const commonGroup = ({ project, place, part, say, acts, rename }: At): MenuGroup => ({
  items: [
    ...(pieceOf(project, place, part)
      ? [{ label: say(words.copyPart), hint: say(words.keyCopy), do: () => document.execCommand('copy') }]
      : []),
    { label: say(words.rename), hint: 'F2', do: rename },
    ...(canGo(project, part)
      ? [{ label: say(words.takeOut), hint: say(words.keyRemove), do: () => acts.remove(part) }]
      : []),
  ],
})
