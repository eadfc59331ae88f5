import {
  fieldsOf,
  frameOf,
  jointOf,
  known,
  openingOf,
  type Project,
  wallOf,
  winterValues,
  type ZonePlace,
} from '../../detail'
import type { Id } from '../../geometry'
import { inWords, noBreak, writeNumber, writeQuantity } from '../../units'
import { filled, type Words, words } from '../../words'
import { lengthSign, type LengthUnit, writeLength } from '../sizes/lengths'

/**
 * Every value at a zone that rests on an assumption, with its number, in the order of the parts. The air on both sides is
 * left to what is computed with it: a sheet with heat writes it beside its scale.
 */
export const assumedAt = (project: Project, place: ZonePlace, unit: LengthUnit = 'mm'): readonly Words[] => {
  const opening = openingOf(project, place.opening)
  const wall = wallOf(project, place.opening)
  const joint = jointOf(project, place.zone)
  const parts: readonly Id[] = [
    wall.id,
    ...wall.layers.map(it => it.id),
    frameOf(project, place.opening).id,
    opening.id,
    joint.id,
    ...joint.seals.map(it => it.id),
    ...opening.fixings.map(it => it.id),
    ...(opening.threshold && place.side === 'sill' ? [opening.threshold.id] : []),
  ]
  const air = new Set(winterValues(opening.id).map(it => it.field))
  return parts.flatMap(part =>
    fieldsOf(project, part).flatMap(field => {
      if (air.has(field.id)) return []
      const value = known(project, { field: field.id, part })
      if (value?.basis !== 'assumed') return []
      const amount =
        field.unit === 'mm'
          ? inWords(language => `${writeLength(value.value, unit, language)}${noBreak}${lengthSign[unit]}`)
          : unit === 'inch' && field.unit === 'mm_m'
            ? inWords(language => `${writeNumber(value.value, language)}${noBreak}‰`)
            : inWords(language => writeQuantity(value.value, field.unit, language))
      return [filled(words('{0}: {1}', '{0}: {1}'), field.name, amount)]
    }),
  )
}

/** The first of many, and how many more there are. */
export const firstOf = (all: readonly Words[], most: number): readonly Words[] =>
  all.length <= most
    ? all
    : [
        ...all.slice(0, most - 1),
        filled(
          words('and {0} more, see the check report', 'und {0} weitere, siehe Prüfbericht'),
          `${all.length - most + 1}`,
        ),
      ]
