import type { Id } from '../../geometry'
import type { Bounds, Stated } from '../../units'
import { type Words, words } from '../../words'
import type { Asked } from '../asked'
import type { Field } from '../field'
import { entryAt } from '../find'
import type { Project } from '../model'
import { numberField } from './number-field'
import { withOpening } from './tables'

type Amount = 'mass_kg' | 'sillHeight_mm' | 'fall_mm'

const askedField = (key: Amount, id: string, name: Words, bounds: Bounds, because: Words) =>
  numberField({
    id,
    name,
    of: 'opening',
    unit: bounds.unit,
    read: (project, opening) => entryAt(project.openings, opening)?.asked?.[key],
    allowed: () => ({ bounds, because }),
    write: (project, opening, to) => withAsked(project, opening, key, to),
  })

/** What is told of an opening beside its geometry, as numbers. */
export const askedFields: readonly Field<number>[] = [
  askedField(
    'mass_kg',
    'opening.mass',
    words('Mass of the element', 'Masse des Elements'),
    { unit: 'kg', min: 1, max: 5000 },
    words('frame, sashes and glass', 'Rahmen, Flügel und Glas'),
  ),
  askedField(
    'sillHeight_mm',
    'opening.sill-height',
    words('Height of the sill above the floor', 'Brüstungshöhe über Fußboden'),
    { unit: 'mm', min: -500, max: 5000 },
    words('from the finished floor inside', 'ab Oberkante Fußboden innen'),
  ),
  askedField(
    'fall_mm',
    'opening.fall',
    words('Fall outside', 'Absturzhöhe außen'),
    { unit: 'mm', min: 0, max: 500_000 },
    words('from the floor inside to the ground outside', 'vom Fußboden innen bis zum Gelände außen'),
  ),
]

const withAsked = (project: Project, opening: Id, key: Amount, to: Stated<number> | undefined): Project =>
  withOpening(project, opening, ({ asked, ...it }) => {
    const { [key]: _, ...rest } = asked ?? {}
    // Leaving one amount out of what is asked leaves the others as they are.
    const others = rest as Asked
    return { ...it, asked: to ? { ...others, [key]: to } : others }
  })
