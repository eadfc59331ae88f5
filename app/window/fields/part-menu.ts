import {
  frameOf,
  layerOf,
  type Project,
  profiles,
  sealOf,
  wallOf,
  type ZonePlace,
} from '../../../core/detail'
import { kindOf, sealKinds } from '../../../core/seals'
import type { Words } from '../../../core/words'
import type { Action } from '../../editor'
import { capital } from '../capital'
import type { MenuGroup } from '../dialogs/menu'
import { say as words } from '../window-words'

/** What can be done with a part beyond its values: another kind in its place, another profile, its order, taking it out. */
export const partGroups = (at: {
  readonly project: Project
  readonly place: ZonePlace
  readonly part: string
  readonly say: (it: Words) => string
  readonly act: (action: Action) => void
}): readonly MenuGroup[] => [...sealGroups(at), ...layerGroups(at), ...frameGroups(at)]

type At = Parameters<typeof partGroups>[0]

const sealGroups = ({ project, part, say, act }: At): readonly MenuGroup[] => {
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
              act({ kind: 'edit', edits: [{ kind: 'replace', part, seal: kind.kind }], says: kind.name })
          },
        })),
    },
    takeOut({ part, say, act }),
  ]
}

const layerGroups = ({ project, place, part, say, act }: At): readonly MenuGroup[] => {
  if (layerOf(project, part) === undefined) return []
  const layers = wallOf(project, place.opening).layers
  const index = layers.findIndex(it => it.id === part)
  return [
    {
      items: [
        {
          label: say(words.moveOut),
          hint: 'Alt ↑',
          off: index <= 0,
          do: () => act(moveLayer(project, place, part, -1)),
        },
        {
          label: say(words.moveIn),
          hint: 'Alt ↓',
          off: index === layers.length - 1,
          do: () => act(moveLayer(project, place, part, 1)),
        },
      ],
    },
    takeOut({ part, say, act }),
  ]
}

const frameGroups = ({ project, place, part, say, act }: At): readonly MenuGroup[] => {
  const frame = frameOf(project, place.opening)
  if (part.split('/')[0] !== frame.id) return []
  return [
    {
      title: say(words.profile),
      items: profiles.map(it => ({
        label: capital(say(it.name)),
        isOn: it.id === frame.profile,
        do: () =>
          act({
            kind: 'edit',
            edits: [{ kind: 'choose-profile', frame: frame.id, profile: it.id }],
            says: words.profile,
          }),
      })),
    },
  ]
}

const takeOut = ({ part, say, act }: Pick<At, 'part' | 'say' | 'act'>): MenuGroup => ({
  items: [
    {
      label: say(words.takeOut),
      do: () => act({ kind: 'edit', edits: [{ kind: 'remove', part }], says: words.takeOut }),
    },
  ],
})

/** Moves a layer past its neighbour. */
export const moveLayer = (project: Project, place: ZonePlace, part: string, by: 1 | -1): Action => {
  const layers = wallOf(project, place.opening).layers
  const index = layers.findIndex(it => it.id === part)
  const before = layers[by < 0 ? index - 1 : index + 2]
  return {
    kind: 'edit',
    edits: [{ kind: 'move', part, ...(before === undefined ? {} : { before: before.id }) }],
    says: by < 0 ? words.moveOut : words.moveIn,
  }
}
