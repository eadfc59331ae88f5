import { monthName } from '../../air'
import { type Conditions, type Project, layerOf, materialOf, partsOf, type ZonePlace } from '../../detail'
import type { Band } from '../../units'
import { filled, isSome, same, type Words, words } from '../../words'
import type { Along, Planes, SectionVapour } from '../../vapour'
import { type Table, decimals, empty } from './table'

/** s_d of both planes as ranges, and both ratios: smallest inside over largest outside, and the other way round. */
export const planesTable = ({ inner, outer, ratio }: Planes): Table => ({
  title: words('Planes of the joint', 'Ebenen der Fuge'),
  head: [empty, words('dry', 'trocken'), words('humid', 'feucht')],
  rows: [
    [words('inner plane, s_d in m', 'innere Ebene, s_d in m'), range(inner?.winter), range(inner?.summer)],
    [words('outer plane, s_d in m', 'äußere Ebene, s_d in m'), range(outer?.winter), range(outer?.summer)],
    [words('smallest inner ÷ largest outer', 'kleinster innen ÷ größter außen'), number(ratio?.winter.min), number(ratio?.summer.min)],
    [words('largest inner ÷ smallest outer', 'größter innen ÷ kleinster außen'), number(ratio?.winter.max), number(ratio?.summer.max)],
  ],
  notes: [],
}) // prettier-ignore

const range = (it: Band | undefined): Words => {
  if (!it) return unknown
  return it.min === it.max ? decimals(it.min, 2) : filled(same('{0}–{1}'), decimals(it.min, 2), decimals(it.max, 2)) // prettier-ignore
}
const number = (it: number | undefined): Words => (it === undefined ? unknown : decimals(it, it < 10 ? 2 : 0))
const unknown = words('not known', 'unbekannt')

/** What a part of a path is called: its material, else what the parts list calls it. */
const nameOf = (project: Project, place: ZonePlace, part: string): Words => {
  const layer = layerOf(project, part)?.layer
  const material = layer && materialOf(project, layer.material)
  return material?.name ?? partsOf(project, place).find(it => it.id === part)?.name ?? words('air', 'Luft')
}

/** Layers of the path and the winter profile, outside first. */
export const profileTable = (project: Project, place: ZonePlace, { path, winter }: Along): Table => ({
  title: words('Winter profile through the path', 'Winterprofil durch den Weg'),
  head: [words('behind', 'hinter'), same('d, mm'), same('R, m²K/W'), same('s_d, m'), same('θ, °C'), same('psat, Pa'), same('p, Pa')],
  rows: winter.profile.faces.map((face, i) => {
    const layer = path.layers[i - 1]
    return [
      layer ? nameOf(project, place, layer.part) : words('outer surface', 'äußere Oberfläche'),
      layer && layer.thickness_mm > 0 ? decimals(layer.thickness_mm, 1) : empty,
      layer && layer.thickness_mm > 0 ? decimals(layer.resistance_m2K_W, 3) : empty,
      layer ? decimals(winter.taken_m[i - 1] ?? 0, 2) : empty,
      decimals(face.temperature_C, 1),
      decimals(face.saturation_Pa, 0),
      decimals(winter.taut_Pa[i] ?? face.vapour_Pa, 0),
    ]
  }),
  notes: [estimate],
}) // prettier-ignore

/** The two periods of DIN 4108-3 with the sum worked by hand. */
export const periodsTable = (project: Project, place: ZonePlace, { path, periods }: Along): Table => ({
  title: words('Two periods, DIN 4108-3', 'Zwei Perioden, DIN 4108-3'),
  head: [empty, same('Δp, Pa'), same('s_d, m'), words('days', 'Tage'), same('kg/m²')],
  rows: [
    ...periods.sum.map(it => [termName[it.what], decimals(it.from_Pa - it.to_Pa, 1), decimals(it.sd_m, 3), decimals(it.days, 0), decimals(it.amount_kg_m2, 3)]),
    [words('gathers in the cold period', 'Tauwasser in der kalten Periode'), empty, empty, empty, decimals(periods.gathers_kg_m2, 3)],
    [words('can dry in the warm period', 'kann in der warmen Periode trocknen'), empty, empty, empty, decimals(periods.dries_kg_m2, 3)],
  ],
  notes: [
    ...periods.faces.map(it =>
      filled(words('water gathers behind {0}: {1} kg/m²', 'Tauwasser hinter {0}: {1} kg/m²'), nameOf(project, place, path.layers[it.after - 1]?.part ?? ''), decimals(it.gathers_kg_m2, 3)),
    ),
    words(
      'amount = 2·10⁻¹⁰ kg/(m·s·Pa) × 86 400 s × days × Δp ÷ s_d; climate of the periods from memory',
      'Menge = 2·10⁻¹⁰ kg/(m·s·Pa) × 86 400 s × Tage × Δp ÷ s_d; Klima der Perioden aus dem Gedächtnis',
    ),
    estimate,
  ],
}) // prettier-ignore

const termName: Readonly<Record<Along['periods']['sum'][number]['what'], Words>> = {
  towards: words('from inside to the water', 'von innen zum Tauwasser'),
  onwards: words('from the water outwards', 'vom Tauwasser nach außen'),
  'to-outside': words('dries outwards', 'trocknet nach außen'),
  'to-inside': words('dries inwards', 'trocknet nach innen'),
}

/** The year of EN ISO 13788: each month with what gathers or dries, and what lies there at its end. */
export const yearTable = ({ year }: Along, conditions: Conditions): Table => ({
  title: words('Year by months, EN ISO 13788', 'Jahr nach Monaten, EN ISO 13788'),
  head: [empty, words('outside, °C', 'außen, °C'), words('pe, Pa', 'pe, Pa'), words('pi, Pa', 'pi, Pa'), words('gathers, kg/m²', 'fällt an, kg/m²'), words('lies there, kg/m²', 'liegt dort, kg/m²')],
  rows: year.rows.map(it => [
    monthName[it.month],
    decimals(it.outside_C, 1),
    decimals(it.outside_Pa, 0),
    decimals(it.inside_Pa, 0),
    decimals(sum(it.gathered_kg_m2), 3),
    decimals(sum(it.lies_kg_m2), 3),
  ]),
  notes: [
    ...(year.rows.length === 0 ? [words('no water gathers in any month', 'in keinem Monat fällt Tauwasser an')] : []),
    ...(year.left_kg_m2 > 0 ? [filled(words('{0} kg/m² stay after a year: water accumulates', '{0} kg/m² bleiben nach einem Jahr: Wasser sammelt sich an'), decimals(year.left_kg_m2, 3))] : []),
    ...(isSome(conditions.yearAssumed)
      ? [filled(words('{0} of 24 monthly means are assumed: those of a cool inland year of no place', '{0} von 24 Monatsmitteln sind angenommen: die eines kühlen Binnenjahrs von keinem Ort'), conditions.yearAssumed.length)]
      : []),
    estimate,
  ],
}) // prettier-ignore

const sum = (all: readonly number[]): number => all.reduce((so, it) => so + it, 0)

/** Where the path lies. */
export const pathWords = ({ at_mm }: Pick<SectionVapour, 'at_mm'>): Words =>
  filled(
    words('path {0} mm from the reveal across the joint', 'Weg {0} mm ab Leibung quer zur Fuge'),
    decimals(at_mm, 1),
  )

const estimate = words(
  'an estimate in one dimension: diffusion alone, no air flow, no capillary water, no storage',
  'eine eindimensionale Abschätzung: nur Diffusion, keine Luftströmung, kein Kapillarwasser, keine Speicherung',
)
