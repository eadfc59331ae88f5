import { expect, test } from 'vitest'
import {
  addedParts,
  applyEdit,
  choicesOf,
  fieldsOf,
  openingOf,
  partIds,
  partKindOf,
  partsOf,
  type Project,
  samples,
} from '../../core/detail'
import { sides } from '../../core/kinds'
import { jointBand } from '../../core/movement'
import { gripsOf, placeOf } from '../../app/editor'
import { fieldsOfPart } from '../../app/window/fields/fields-of-part'
import { partRows } from '../../app/window/parts/rows'

/** A sample with one of every part that can be added to an opening. */
const withEverything = (project: Project): Project => {
  const [into = ''] = Object.keys(project.openings)
  return addedParts.reduce((so, part) => {
    const found = applyEdit(so, { kind: 'add', into, part })
    return found.ok ? found.value : so
  }, project)
}

/** Every value of every part that stands in the fields of some row of the parts list of some cut. */
const inFields = (project: Project): ReadonlySet<string> => {
  const seen = new Set<string>()
  for (const opening of Object.keys(project.openings))
    for (const side of sides)
      for (const { id: zone } of openingOf(project, opening).sides[side]) {
        const cut = { opening, side, zone }
        const place = placeOf(project, cut)
        const grips = gripsOf(project, cut)
        const rows = partRows({
          project,
          place,
          parts: partsOf(project, place),
          band: jointBand(project, opening, side, zone),
          report: { findings: [], notApplicable: [] },
        })
        for (const { part } of rows)
          for (const { rows: lines } of fieldsOfPart(project, place, grips, part.id).groups)
            for (const { at } of lines) seen.add(`${at.part} ${at.field}`)
      }
  return seen
}

/** Typed beside the fields: the range of a joint in one line, a zone among zones. */
const elsewhere = (field: string): boolean =>
  ['joint.planned', 'joint.tolerance', 'zone.joint', 'zone.end'].includes(field)

test('whatever can be stated of a part stands in the fields of some row of the parts list', () => {
  const kinds = new Set<string>()
  for (const sample of samples) {
    const project = withEverything(sample.project)
    const seen = inFields(project)
    for (const part of partIds(project)) {
      kinds.add(partKindOf(project, part) ?? '')
      for (const { id } of [...fieldsOf(project, part), ...choicesOf(project, part)])
        expect(elsewhere(id) || seen.has(`${part} ${id}`), `${sample.file}: ${id} of ${part}`).toBe(true)
    }
  }
  expect([...kinds].sort()).toEqual(
    expect.arrayContaining([
      'block',
      'box',
      'fixing',
      'frame',
      'layer',
      'mullion',
      'opening',
      'seal',
      'sill',
      'wall',
    ]),
  )
})
