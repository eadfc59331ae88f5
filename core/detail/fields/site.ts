import {
  climateIds,
  climateName,
  type Month,
  monthName,
  months,
  trialYear,
  usualGround_C,
  winterOfDin,
} from '../../air'
import { assumed, type Bounds, type Stated } from '../../units'
import { filled, type Words, words } from '../../words'
import type { ChoiceField } from '../choice-field'
import type { Field, Known } from '../field'
import type { Project, Site } from '../model'
import { choiceField, wordsFrom } from './choice-field'
import { numberField } from './number-field'

/** The name under which the climate of the place is a part: a project has one. */
export const site = 'site'

/** Air is nowhere hotter or colder than this where people build: ours. */
export const airRange = { unit: 'C', min: -60, max: 60 } as const satisfies Bounds
export const humidityRange = { unit: 'pct', min: 1, max: 100 } as const satisfies Bounds
const airBecause = words('temperature of air', 'Temperatur von Luft')
const humidityBecause = words('relative humidity of air', 'relative Luftfeuchte')

const climate = choiceField({
  id: 'site.climate',
  name: words('Winter climate', 'Winterklima'),
  of: 'site',
  choices: wordsFrom(climateIds, climateName),
  because: words('what surfaces are judged in', 'worin Oberflächen beurteilt werden'),
  surveyed: true,
  read: project => project.site?.climate,
  write: (project, _, to) =>
    withSite(project, ({ climate: _was, ...rest }) => (to ? { ...rest, climate: to } : rest)),
})

export const siteChoices: readonly ChoiceField[] = [
  {
    ...climate,
    fallback: () => ({
      ...assumed('din-4108'),
      origin: 'practice',
      because: words('the climate of the standard', 'das Klima der Norm'),
    }),
  },
]

type Amount = 'outside_C' | 'outside_pct' | 'ground_C'

const amount = (
  key: Amount,
  { id, name, because, bounds }: { id: string; name: Words; because: Words; bounds: Bounds },
  fallback: (project: Project) => Known<number>,
): Field<number> =>
  numberField({
    id,
    name,
    of: 'site',
    unit: bounds.unit,
    surveyed: true,
    read: project => project.site?.[key],
    fallback,
    allowed: () => ({ bounds, because }),
    write: (project, _, to) =>
      withSite(project, ({ [key]: _was, ...rest }) => (to ? { ...rest, [key]: to } : rest)),
  })

const outsideTemperature = amount(
  'outside_C',
  {
    id: 'site.outside-temperature',
    name: words('Outside temperature in winter', 'Außentemperatur im Winter'),
    because: airBecause,
    bounds: airRange,
  },
  project => winterOf(project, 'outside_C'),
)
const outsideHumidity = amount(
  'outside_pct',
  {
    id: 'site.outside-humidity',
    name: words('Outside humidity in winter', 'Außenluftfeuchte im Winter'),
    because: humidityBecause,
    bounds: humidityRange,
  },
  project => winterOf(project, 'outside_pct'),
)
const groundTemperature = amount(
  'ground_C',
  {
    id: 'site.ground-temperature',
    name: words('Temperature of the ground', 'Temperatur des Erdreichs'),
    because: words('under a threshold, as a yearly mean', 'unter einer Schwelle, im Jahresmittel'),
    bounds: airRange,
  },
  () => ({
    ...assumed(usualGround_C),
    origin: 'practice',
    because: words('a yearly mean', 'ein Jahresmittel'),
  }),
)

/** The winter that is used: of the standard, or of the coldest month of the year. */
const winterOf = (project: Project, key: 'outside_C' | 'outside_pct'): Known<number> => {
  if (project.site?.climate?.value !== 'coldest-month')
    return { ...assumed(winterOfDin[key]), origin: 'practice', because: climateName['din-4108'] }
  const coldest = months.toSorted(
    (a, b) => monthIn(project, 'outside_C', a).value - monthIn(project, 'outside_C', b).value,
  )[0]
  const { value } = monthIn(project, key, coldest ?? 'january')
  return { ...assumed(value), origin: 'computed', because: monthName[coldest ?? 'january'] }
}

/** A monthly mean: stated, else that of the year for trying. */
const monthIn = (project: Project, key: 'outside_C' | 'outside_pct', month: Month): Known<number> => {
  const stated = project.site?.year?.[key]?.[month]
  return stated
    ? { ...stated, origin: 'file' }
    : { ...assumed(trialYear[month][key]), origin: 'practice', because: trial }
}

const trial = words(
  'a cool inland year to try with, of no place',
  'ein kühles Binnenjahr zum Probieren, von keinem Ort',
)

const monthField = (key: 'outside_C' | 'outside_pct', month: Month): Field<number> => {
  const isTemperature = key === 'outside_C'
  const bounds: Bounds = isTemperature ? airRange : humidityRange
  return numberField({
    id: `site.${isTemperature ? 'temperature' : 'humidity'}-${month}`,
    name: filled(isTemperature ? meanTemperature : meanHumidity, monthName[month]),
    of: 'site',
    unit: bounds.unit,
    surveyed: true,
    read: project => project.site?.year?.[key]?.[month],
    fallback: project => monthIn(project, key, month),
    allowed: () => ({ bounds, because: isTemperature ? airBecause : humidityBecause }),
    write: (project, _, to) =>
      withSite(project, it => ({ ...it, year: { ...it.year, [key]: withMonth(it, key, month, to) } })),
  })
}

const withMonth = (
  it: Site,
  key: 'outside_C' | 'outside_pct',
  month: Month,
  to: Stated<number> | undefined,
) => {
  const { [month]: _was, ...rest } = it.year?.[key] ?? {}
  return to ? { ...rest, [month]: to } : rest
}

const meanTemperature = words('Outside temperature, {0}', 'Außentemperatur, {0}')
const meanHumidity = words('Outside humidity, {0}', 'Außenluftfeuchte, {0}')

/** Climate of the place: its winter, its ground, and the twelve months. */
export const siteFields: readonly Field<number>[] = [
  outsideTemperature,
  outsideHumidity,
  groundTemperature,
  ...months.map(it => monthField('outside_C', it)),
  ...months.map(it => monthField('outside_pct', it)),
]

const withSite = (project: Project, change: (it: Site) => Site): Project => ({
  ...project,
  site: change(project.site ?? {}),
})
