import type { Id } from '../../geometry'
import { kindOf } from '../../seals'
import type { Problem } from '../../units'
import { type Words, filled, words } from '../../words'
import type { VapourView } from './vapour-view'

/** A part whose resistance to vapour nobody declares; with the body, where it is one of a material. */
export type Unknown = { readonly part: Id; readonly body?: number }

/** What is said of parts that a computation needs and nobody declares: each once, by its material or its kind of seal. */
export const notKnown = (view: VapourView, all: readonly Unknown[]): readonly Problem[] => {
  const problems = all.map((it): Problem => {
    const name = nameOf(view, it)
    return { at: it.part, say: name ? filled(named, name) : nameless }
  })
  return [...new Map(problems.map(it => [`${it.at} ${it.say.en}`, it])).values()]
}

const nameOf = (
  { section, turned, materialOf, seals }: VapourView,
  { part, body }: Unknown,
): Words | undefined => {
  const seal = seals.find(it => it.id === part)
  if (body === undefined) return seal && kindOf(seal).name
  const fill = section.regions.find(it => it.id === turned.case.bodies[body]?.name)?.fill
  return fill?.kind === 'material' ? materialOf(fill.material, part)?.name : undefined
}

const named = words(
  'the resistance to vapour of {0} is not known',
  'der Dampfwiderstand ist nicht bekannt: {0}',
)
const nameless = words('its resistance to vapour is not known', 'sein Dampfwiderstand ist nicht bekannt')
