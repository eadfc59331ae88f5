import { z } from 'zod'
import type { Id } from '../../geometry'
import { type Duty, duties, dutyName } from '../../kinds'
import { specified } from '../../units'
import { isSome, words } from '../../words'
import { layerDepths } from '../depths'
import type { ChoiceField } from '../choice-field'
import { materialOf, offeredMaterials, withMaterials } from '../edits/materials'
import { layerOf } from '../find'
import type { Layer, Project, Wall } from '../model'
import { choiceField, yesOrNo } from './choice-field'
import { withLayer, withOpening, withWall } from './tables'

/** What a layer is made of. What was declared of the product before does not go on to the next. */
const layerMaterial: ChoiceField = {
  ...choiceField({
    id: 'layer.material',
    name: words('Material', 'Baustoff'),
    of: 'layer',
    choices: [{ value: '', name: words('none', 'keiner') }],
    because: words('of the project or of the library', 'aus dem Projekt oder aus der Sammlung'),
    isPlain: true,
    read: () => undefined,
    write: project => project,
  }),
  schema: z.string(),
  read: (project, layer) => {
    const found = layerOf(project, layer)?.layer
    return found && specified(found.material)
  },
  allowed: project => {
    const choices = offeredMaterials(project)
    return {
      choices: isSome(choices) ? choices : [{ value: '', name: words('none', 'keiner') }],
      because: words('of the project or of the library', 'aus dem Projekt oder aus der Sammlung'),
    }
  },
  write: (project, layer, to) =>
    to === undefined || materialOf(project, to.value) === undefined
      ? project
      : withMaterials(
          withLayer(project, layer, ({ lambda_W_mK: _l, muDry: _d, muWet: _w, ...it }) => ({
            ...it,
            material: to.value,
          })),
        ),
}

/** Whether a layer has a duty: each is asked by itself, since a layer may have several. */
const layerDuty = (duty: Duty): ChoiceField =>
  choiceField({
    id: `layer.duty-${duty}`,
    name: dutyName[duty],
    of: 'layer',
    choices: yesOrNo,
    because: words('what the layer is there for', 'wozu die Schicht da ist'),
    isPlain: true,
    read: (project, layer) => {
      const found = layerOf(project, layer)?.layer
      return found && specified(found.duties.includes(duty) ? 'yes' : 'no')
    },
    write: (project, layer, to) =>
      to === undefined
        ? project
        : duty === 'bearing' && to.value === 'yes'
          ? bearingIn(project, layer)
          : withLayer(project, layer, it => withDuty(it, duty, to.value === 'yes')),
  })

const withDuty = (layer: Layer, duty: Duty, has: boolean): Layer => ({
  ...layer,
  duties: duties.filter(it => (it === duty ? has : layer.duties.includes(it))),
})

/** Only one layer gives the face that frames are measured from. Another one takes over without moving a frame. */
const bearingIn = (project: Project, id: Id): Project => {
  const found = layerOf(project, id)
  if (found === undefined) return project
  const layers = found.wall.layers.map(it => withDuty(it, 'bearing', it.id === id))
  if (!isSome(layers)) return project
  const next = withWall(project, found.wall.id, it => ({ ...it, layers }))
  const shift_mm = outerDepth_mm({ ...found.wall, layers }) - outerDepth_mm(found.wall)
  return Object.values(next.openings)
    .filter(it => it.wall === found.wall.id)
    .reduce(
      (so, it) =>
        withOpening(so, it.id, one => ({
          ...one,
          position_mm: { ...one.position_mm, value: one.position_mm.value + shift_mm },
        })),
      next,
    )
}

const outerDepth_mm = (wall: Wall): number => layerDepths(wall)[0]?.from_mm ?? 0

/** The words of a layer: what it is made of, and what it is there for. */
export const layerChoices: readonly ChoiceField[] = [layerMaterial, ...duties.map(layerDuty)]
