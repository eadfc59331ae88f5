import {
  humidityClassName,
  humidityClasses,
  humidity_pct,
  roomAir,
  roomUseName,
  roomUses,
  vapourExcess_Pa,
  vapour_Pa,
} from '../../air'
import type { Id } from '../../geometry'
import { assumed } from '../../units'
import { filled, words } from '../../words'
import type { ChoiceField } from '../choice-field'
import type { Field, Known } from '../field'
import { entryAt } from '../find'
import type { Project, Room } from '../model'
import { choiceField, wordsFrom } from './choice-field'
import { numberField } from './number-field'
import { airRange, humidityRange, site, siteFields } from './site'
import { withOpening } from './tables'

const roomOf = (project: Project, opening: Id): Room => entryAt(project.openings, opening)?.room ?? {}

const use = choiceField({
  id: 'opening.room-use',
  name: words('Use of the room', 'Nutzung des Raums'),
  of: 'opening',
  choices: wordsFrom(roomUses, roomUseName),
  because: words('it sets the air that surfaces are judged in', 'sie bestimmt die Raumluft der Beurteilung'),
  surveyed: true,
  read: (project, opening) => roomOf(project, opening).use,
  write: (project, opening, to) => withRoom(project, opening, 'use', to),
})

const humidityClass = choiceField({
  id: 'opening.humidity-class',
  name: words('Humidity class of the room', 'Feuchteklasse des Raums'),
  of: 'opening',
  choices: wordsFrom(humidityClasses, humidityClassName),
  because: words('classes of EN ISO 13788', 'Klassen der EN ISO 13788'),
  surveyed: true,
  read: (project, opening) => roomOf(project, opening).humidityClass,
  write: (project, opening, to) => withRoom(project, opening, 'humidityClass', to),
})

/** The words of the air of a room. */
export const roomChoices: readonly ChoiceField[] = [
  {
    ...use,
    fallback: () => ({ ...assumed('dwelling'), origin: 'practice', because: roomUseName.dwelling }),
  },
  {
    ...humidityClass,
    fallback: (project, opening) => ({
      ...assumed(roomAir[useOf(project, opening)].humidityClass),
      origin: 'practice',
      because: roomUseName[useOf(project, opening)],
    }),
  },
]

const insideTemperature = numberField({
  id: 'opening.inside-temperature',
  name: words('Inside temperature', 'Innentemperatur'),
  of: 'opening',
  unit: 'C',
  surveyed: true,
  read: (project, opening) => roomOf(project, opening).inside_C,
  fallback: (project, opening) => ({
    ...assumed(roomAir[useOf(project, opening)].inside_C),
    origin: 'practice',
    because: roomUseName[useOf(project, opening)],
  }),
  allowed: () => ({ bounds: airRange, because: words('temperature of air', 'Temperatur von Luft') }),
  write: (project, opening, to) => withRoom(project, opening, 'inside_C', to),
})

const insideHumidity = numberField({
  id: 'opening.inside-humidity',
  name: words('Inside humidity', 'Raumluftfeuchte'),
  of: 'opening',
  unit: 'pct',
  surveyed: true,
  read: (project, opening) => roomOf(project, opening).inside_pct,
  fallback: (project, opening) => humidityOf(project, opening),
  allowed: () => ({
    bounds: humidityRange,
    because: words('relative humidity of air', 'relative Luftfeuchte'),
  }),
  write: (project, opening, to) => withRoom(project, opening, 'inside_pct', to),
})

/** The numbers of the air of a room. */
export const roomFields: readonly Field<number>[] = [insideTemperature, insideHumidity]

/** What a room is used for: stated, else a dwelling. */
export const useOf = (project: Project, opening: Id) => roomOf(project, opening).use?.value ?? 'dwelling'

/** The humidity that a standard sets for the use, unless a class is stated; else that of the class in winter. */
const humidityOf = (project: Project, opening: Id): Known<number> => {
  const room = roomOf(project, opening)
  const air = roomAir[useOf(project, opening)]
  if (!room.humidityClass && air.inside_pct !== undefined)
    return { ...assumed(air.inside_pct), origin: 'practice', because: roomUseName[useOf(project, opening)] }
  const of = room.humidityClass?.value ?? air.humidityClass
  const [outside_C, outside_pct] = siteFields.map(
    it => (it.read(project, site) ?? it.fallback(project, site))?.value ?? 0,
  )
  const inside_Pa = vapour_Pa(outside_C ?? 0, outside_pct ?? 0) + vapourExcess_Pa(of, outside_C ?? 0)
  const inside_C = room.inside_C?.value ?? air.inside_C
  return {
    ...assumed(Math.min(100, Math.max(1, humidity_pct(inside_C, inside_Pa)))),
    origin: 'computed',
    because: filled(words('humidity class {0}', 'Feuchteklasse {0}'), humidityClassName[of]),
  }
}

const withRoom = <K extends keyof Room>(
  project: Project,
  opening: Id,
  key: K,
  to: Room[K] | undefined,
): Project =>
  withOpening(project, opening, it => {
    const { [key]: _was, ...rest } = it.room ?? {}
    // Leaving one statement out leaves the others as they are.
    const others = rest as Room
    return { ...it, room: to ? { ...others, [key]: to } : others }
  })
