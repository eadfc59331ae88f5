import type { Id } from '../../geometry'
import { specified } from '../../units'
import { type Words, words } from '../../words'
import type { ChoiceField } from '../choice-field'
import type { PartKind } from '../field'
import { fixingOf, layerOf, openingsWith } from '../find'
import type { Opening, Project } from '../model'
import { singlePart } from '../opening-parts'
import { choiceField, yesOrNo } from './choice-field'
import { withOpening } from './tables'

const openingsOf = (project: Project, id: Id): readonly Opening[] => {
  const one =
    singlePart(project, 'sill', id) ??
    singlePart(project, 'threshold', id) ??
    singlePart(project, 'box', id) ??
    fixingOf(project, id) ??
    undefined
  return one ? [one.opening] : openingsWith(project, layerOf(project, id)?.wall.id ?? id)
}

/** Whether a part is there already and must stay: in every opening that has it. */
const stays = (of: PartKind, name: Words): ChoiceField =>
  choiceField({
    id: `${of}.stays`,
    name,
    of,
    choices: yesOrNo,
    because: words('what is there already and must stay', 'was schon da ist und bleiben muss'),
    isPlain: true,
    read: (project, id) => {
      const all = openingsOf(project, id)
      return specified(all.length > 0 && all.every(it => it.stays.includes(id)) ? 'yes' : 'no')
    },
    write: (project, id, to) =>
      openingsOf(project, id).reduce(
        (so, opening) => (to ? withOpening(so, opening.id, it => withStay(it, id, to.value)) : so),
        project,
      ),
  })

const withStay = (opening: Opening, id: Id, stay: 'yes' | 'no'): Opening => {
  const others = opening.stays.filter(one => one !== id)
  return { ...opening, stays: stay === 'yes' ? [...others, id] : others }
}

/** The parts of which somebody may say that they must stay. */
export const staysChoices: readonly ChoiceField[] = [
  stays('layer', words('Layer must stay', 'Schicht bleibt')),
  stays('frame', words('Frame must stay', 'Rahmen bleibt')),
  stays('sill', words('Sill must stay', 'Fensterbank bleibt')),
  stays('threshold', words('Threshold must stay', 'Schwelle bleibt')),
  stays('box', words('Box must stay', 'Kasten bleibt')),
  stays('fixing', words('Fixing must stay', 'Befestigung bleibt')),
]
