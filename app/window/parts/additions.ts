import { jointOf, layerOf, type Project, wallOf, type ZonePlace } from '../../../core/detail'
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

/** What can be added: a seal for each plane that is empty, then a layer of any material before the selected one. */
export const addGroups = (at: {
  readonly project: Project
  readonly place: ZonePlace
  readonly selected: string | undefined
  readonly say: (it: Words) => string
  readonly act: (action: Action) => void
}): readonly MenuGroup[] => {
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
  const wall = wallOf(project, place.opening)
  const before =
    at.selected !== undefined && layerOf(project, at.selected)?.wall.id === wall.id ? at.selected : undefined
  const layers: MenuGroup = {
    title: say(words.layerBefore),
    items: materials.map(it => ({
      label: capital(say(it.name)),
      do: () =>
        act({
          kind: 'edit',
          edits: [
            {
              kind: 'insert',
              into: wall.id,
              ...(before === undefined ? {} : { before }),
              material: it.id,
              thickness_mm: firstThickness_mm,
            },
          ],
          says: it.name,
        }),
    })),
  }
  return [...fills, layers]
}
