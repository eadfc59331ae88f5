import {
  addedPartName,
  choicesOf,
  fieldsOf,
  frameOf,
  jointOf,
  known,
  knownChoice,
  partsOf,
  type Project,
  wallOf,
  zonesOf,
} from '../../detail'
import type { Id } from '../../geometry'
import { kindOf } from '../../seals'
import { basisName, inWords, writeQuantity } from '../../units'
import { same, type Words } from '../../words'

/** A value that goes into the check: what it is called, its value, and what it rests on. */
export type Input = {
  readonly name: Words
  readonly value: Words
  readonly basis: Words
  readonly assumed: boolean
}

/** The values of a part that are known, under the name of the part. Values of parts that are shared stand once. */
export type PartInputs = { readonly part: Words; readonly values: readonly Input[] }

/** Every known value of a project in the order of its openings: opening, wall and layers, frame, joints and seals, fixings. */
export const inputsOf = (project: Project): readonly PartInputs[] => {
  const parts = new Map<Id, Words>()
  for (const opening of Object.values(project.openings)) {
    parts.set(opening.id, same(opening.name))
    const wall = wallOf(project, opening.id)
    parts.set(wall.id, same(wall.name))
    for (const it of wall.layers) parts.set(it.id, project.materials[it.material]?.name ?? same(it.material))
    const frame = frameOf(project, opening.id)
    parts.set(frame.id, same(frame.name))
    for (const place of zonesOf(project).filter(it => it.opening === opening.id)) {
      const joint = jointOf(project, place.zone)
      parts.set(joint.id, same(joint.name))
      for (const it of joint.seals) parts.set(it.id, kindOf(it).name)
      for (const it of partsOf(project, place))
        if (it.kind === 'fixing' || it.kind === 'sill') parts.set(it.id, it.name)
        else if (it.kind === 'threshold') parts.set(it.id, addedPartName.threshold)
    }
  }
  return [...parts].flatMap(([id, part]) => {
    const values = valuesOf(project, id)
    return values.length === 0 ? [] : [{ part: capital(part), values }]
  })
}

const valuesOf = (project: Project, part: Id): readonly Input[] => [
  ...fieldsOf(project, part).flatMap((field): Input[] => {
    const value = known(project, { field: field.id, part })
    if (value === undefined) return []
    return [
      {
        name: field.name,
        value: inWords(language => writeQuantity(value.value, field.unit, language)),
        basis: basisName[value.basis],
        assumed: value.basis === 'assumed',
      },
    ]
  }),
  ...choicesOf(project, part).flatMap((choice): Input[] => {
    const value = knownChoice(project, { field: choice.id, part })
    if (value === undefined) return []
    const word = choice.allowed(project, part).choices.find(it => it.value === value.value)
    return [
      {
        name: choice.name,
        value: word?.name ?? same(String(value.value)),
        basis: basisName[value.basis],
        assumed: value.basis === 'assumed',
      },
    ]
  }),
]

/** A name begins with a capital where it heads a list. */
const capital = (it: Words): Words => ({
  en: it.en.charAt(0).toUpperCase() + it.en.slice(1),
  de: it.de.charAt(0).toUpperCase() + it.de.slice(1),
})
