import { z } from 'zod'
import type { Id } from '../../geometry'
import { assumed, specified } from '../../units'
import { isSome, type Some, type Words, words } from '../../words'
import type { ChoiceField, Word } from '../choice-field'
import { materialOf, offeredMaterials, withMaterials } from '../edits/materials'
import type { PartKind } from '../field'
import { entryAt, layerOf } from '../find'
import type { Project } from '../model'
import { singlePart } from '../opening-parts'
import { boardName } from '../part-names'
import { choiceField } from './choice-field'
import { withBox, withLayer, withSill, withThreshold, withWall } from './tables'

const none: Word = { value: 'none', name: words('none', 'keine') }

/** A material out of the project or the library, or none where the part may be left out. */
const materialChoice = (it: {
  readonly id: string
  readonly name: Words
  readonly of: PartKind
  readonly because: Words
  readonly mayLack?: true
  readonly read: (project: Project, part: Id) => Id | undefined
  readonly write: (project: Project, part: Id, material: Id | undefined) => Project
}): ChoiceField => {
  const offered = (project: Project): Some<Word> => {
    const all = offeredMaterials(project)
    return it.mayLack || !isSome(all) ? [none, ...all] : all
  }
  return {
    ...choiceField({
      ...it,
      choices: [none],
      isPlain: true,
      read: () => undefined,
      write: project => project,
    }),
    schema: z.string(),
    allowed: project => ({ choices: offered(project), because: it.because }),
    read: (project, part) => specified(it.read(project, part) ?? none.value),
    write: (project, part, to) => {
      if (to === undefined || to.value === none.value)
        return it.mayLack ? it.write(project, part, undefined) : project
      if (materialOf(project, to.value) === undefined) return project
      return withMaterials(it.write(project, part, to.value))
    },
  }
}

/** Boards and closers begin this thick: ours, to be put right at once. */
const first_mm = { board: 20, edge: 40, lining: 30, sillBoard: 20, sillOverhang: 30 } as const

/** What the layers of a threshold are made of: none may lack. */
const laidOf = (
  key: 'base' | 'finish' | 'insulation' | 'paving',
  id: string,
  name: Words,
  because: Words,
): ChoiceField =>
  materialChoice({
    id,
    name,
    of: 'threshold',
    because,
    read: (project, threshold) => singlePart(project, 'threshold', threshold)?.part[key].material,
    write: (project, threshold, material) =>
      material === undefined
        ? project
        : withThreshold(project, threshold, it => ({ ...it, [key]: { ...it[key], material } })),
  })

const thresholdMaterials: readonly ChoiceField[] = [
  materialChoice({
    id: 'threshold.material',
    name: words('Profile is of', 'Profil aus'),
    of: 'threshold',
    because: words('of the profile that one steps over', 'des Profils, über das man tritt'),
    read: (project, threshold) => singlePart(project, 'threshold', threshold)?.part.material,
    write: (project, threshold, material) =>
      material === undefined
        ? project
        : withThreshold(project, threshold, it => ({ ...it, material })),
  }),
  laidOf('base', 'threshold.base-material', words('Base is of', 'Sockel aus'), words('what the profile stands on', 'worauf das Profil steht')),
  laidOf('finish', 'threshold.finish-material', words('Floor finish is of', 'Bodenbelag aus'), words('what one walks on inside', 'worauf man innen geht')),
  laidOf('insulation', 'threshold.insulation-material', words('Insulation in the floor is of', 'Dämmung im Fußboden aus'), words('below the screed', 'unter dem Estrich')),
  laidOf('paving', 'threshold.paving-material', words('Paving outside is of', 'Belag außen aus'), words('what one walks on outside', 'worauf man außen geht')),
] // prettier-ignore

/** What closers, boards, sills, thresholds and boxes are made of, and whether they are there at all. */
export const materialChoices: readonly ChoiceField[] = [
  materialChoice({
    id: 'layer.edge',
    name: words('What closes it at the opening', 'Was sie an der Öffnung schließt'),
    of: 'layer',
    because: words('a stud, a closer, a rigid frame', 'ein Stiel, ein Randprofil, ein fester Rahmen'),
    mayLack: true,
    read: (project, layer) => layerOf(project, layer)?.layer.edge?.material,
    write: (project, layer, material) =>
      withLayer(project, layer, ({ edge, ...it }) =>
        material === undefined
          ? it
          : { ...it, edge: { width_mm: edge?.width_mm ?? assumed(first_mm.edge), material } },
      ),
  }),
  materialChoice({
    id: 'reveal.board-material',
    name: boardName,
    of: 'wall',
    because: words('insulation under the finish of the reveal', 'Dämmung unter der Bekleidung der Leibung'),
    mayLack: true,
    read: (project, wall) => entryAt(project.walls, wall)?.reveal.board?.material,
    write: (project, wall, material) =>
      withWall(project, wall, ({ reveal: { board, ...reveal }, ...it }) => ({
        ...it,
        reveal:
          material === undefined
            ? reveal
            : {
                ...reveal,
                board: { thickness_mm: board?.thickness_mm ?? assumed(first_mm.board), material },
              },
      })),
  }),
  materialChoice({
    id: 'sill.material',
    name: words('Material of the sill', 'Baustoff der Fensterbank'),
    of: 'sill',
    because: words('of the outside sill', 'der äußeren Fensterbank'),
    read: (project, sill) => singlePart(project, 'sill', sill)?.part.material,
    write: (project, sill, material) =>
      material === undefined ? project : withSill(project, sill, it => ({ ...it, material })),
  }),
  materialChoice({
    id: 'sill.board',
    name: words('Inside board', 'Innenbank'),
    of: 'sill',
    because: words('what lies inside before the frame', 'was innen vor dem Rahmen liegt'),
    mayLack: true,
    read: (project, sill) => singlePart(project, 'sill', sill)?.part.board?.material,
    write: (project, sill, material) =>
      withSill(project, sill, ({ board, ...it }) =>
        material === undefined
          ? it
          : {
              ...it,
              board: {
                thickness_mm: assumed(first_mm.sillBoard),
                overhang_mm: assumed(first_mm.sillOverhang),
                ...board,
                material,
              },
            },
      ),
  }),
  ...thresholdMaterials,
  materialChoice({
    id: 'box.material',
    name: words('Walls of the box are of', 'Wandung des Kastens aus'),
    of: 'box',
    because: words('of its walls', 'seiner Wandung'),
    read: (project, box) => singlePart(project, 'box', box)?.part.material,
    write: (project, box, material) =>
      material === undefined ? project : withBox(project, box, it => ({ ...it, material })),
  }),
  materialChoice({
    id: 'box.lining-material',
    name: words('Insulation in the box is of', 'Dämmung im Kasten aus'),
    of: 'box',
    because: words('at the top, at the room side and on the lid', 'oben, zur Raumseite und auf dem Deckel'),
    mayLack: true,
    read: (project, box) => singlePart(project, 'box', box)?.part.lining?.material,
    write: (project, box, material) =>
      withBox(project, box, ({ lining, ...it }) =>
        material === undefined
          ? it
          : { ...it, lining: { thickness_mm: lining?.thickness_mm ?? assumed(first_mm.lining), material } },
      ),
  }),
]
