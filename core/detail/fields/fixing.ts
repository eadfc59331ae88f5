import { sideName, sides } from '../../kinds'
import { assumed } from '../../units'
import { filled, words } from '../../words'
import type { Field } from '../field'
import { fixingOf } from '../find'
import { plateOf_mm } from '../fixing'
import { numberField } from './number-field'
import { withFixing } from './tables'

export const screwDiameter = numberField({
  id: 'fixing.diameter',
  name: words('Screw diameter', 'Schraubendurchmesser'),
  of: 'fixing',
  unit: 'mm',
  read: (project, fixing) => fixingOf(project, fixing)?.fixing.diameter_mm,
  allowed: () => ({
    bounds: { unit: 'mm', min: 4, max: 16 },
    because: words('frame screws', 'Rahmenschrauben'),
  }),
  write: (project, fixing, to) =>
    withFixing(project, fixing, it => ({ ...it, diameter_mm: to ?? it.diameter_mm })),
})

export const screwEmbedment = numberField({
  id: 'fixing.embedment',
  name: words('Embedment', 'Verankerungstiefe'),
  of: 'fixing',
  unit: 'mm',
  read: (project, fixing) => fixingOf(project, fixing)?.fixing.embedment_mm,
  allowed: () => ({
    bounds: { unit: 'mm', min: 10, max: 300 },
    because: words('in the bearing layer, from the flank', 'in der tragenden Schicht, ab Leibung'),
  }),
  write: (project, fixing, to) =>
    withFixing(project, fixing, it => ({ ...it, embedment_mm: to ?? it.embedment_mm })),
})

export const screwAxis = numberField({
  id: 'fixing.axis',
  name: words('Screw axis from outer face', 'Schraubenachse ab Außenfläche'),
  of: 'fixing',
  unit: 'mm',
  read: (project, fixing) => fixingOf(project, fixing)?.fixing.axis_mm,
  allowed: () => ({
    bounds: { unit: 'mm', min: 10, max: 100 },
    because: words('within the depth of the frame', 'in der Tiefe des Rahmens'),
  }),
  write: (project, fixing, to) => withFixing(project, fixing, it => ({ ...it, axis_mm: to ?? it.axis_mm })),
})

const corner = numberField({
  id: 'fixing.corner',
  name: words('Corner distance, inner', 'Eckabstand, innen'),
  of: 'fixing',
  unit: 'mm',
  read: (project, fixing) => fixingOf(project, fixing)?.fixing.corner_mm,
  allowed: () => ({
    bounds: { unit: 'mm', min: 0, max: 1000 },
    because: words(
      'from the inner corner of the frame to the first axis',
      'von der Innenecke des Rahmens bis zur ersten Achse',
    ),
  }),
  write: (project, fixing, to) =>
    withFixing(project, fixing, ({ corner_mm: _, ...it }) => (to ? { ...it, corner_mm: to } : it)),
})

const resistance = numberField({
  id: 'fixing.resistance',
  name: words('Assessed resistance of one fixing', 'Zugelassener Widerstand je Befestigung'),
  of: 'fixing',
  unit: 'N',
  read: (project, fixing) => fixingOf(project, fixing)?.fixing.resistance_N,
  allowed: () => ({
    bounds: { unit: 'N', min: 1, max: 100_000 },
    because: words('design value out of its assessment', 'Bemessungswert aus der Zulassung'),
  }),
  write: (project, fixing, to) =>
    withFixing(project, fixing, ({ resistance_N: _, ...it }) => (to ? { ...it, resistance_N: to } : it)),
})

const lever = numberField({
  id: 'fixing.lever',
  name: words('Lever of the bracket', 'Hebelarm der Konsole'),
  of: 'fixing',
  unit: 'mm',
  read: (project, fixing) => fixingOf(project, fixing)?.fixing.lever_mm,
  allowed: () => ({
    bounds: { unit: 'mm', min: 10, max: 1000 },
    because: words(
      'from its tension screw to where it presses on the wall',
      'von der Zugschraube bis zum Druckpunkt an der Wand',
    ),
  }),
  write: (project, fixing, to) =>
    withFixing(project, fixing, ({ lever_mm: _, ...it }) => (to ? { ...it, lever_mm: to } : it)),
})

const plate = numberField({
  id: 'fixing.plate',
  name: words('Thickness of its metal', 'Dicke des Blechs'),
  of: 'fixing',
  unit: 'mm',
  has: (project, fixing) => {
    const kind = fixingOf(project, fixing)?.fixing.kind
    return kind === 'lug' || kind === 'bracket'
  },
  read: (project, fixing) => fixingOf(project, fixing)?.fixing.plate_mm,
  fallback: (project, fixing) => {
    const found = fixingOf(project, fixing)?.fixing
    return found && { ...assumed(plateOf_mm(found)), origin: 'practice', because: usualPlate }
  },
  allowed: () => ({
    bounds: { unit: 'mm', min: 0.5, max: 20 },
    because: words('of a lug or a bracket', 'einer Lasche oder Konsole'),
  }),
  write: (project, fixing, to) =>
    withFixing(project, fixing, ({ plate_mm: _, ...it }) => (to ? { ...it, plate_mm: to } : it)),
})
const usualPlate = words('as it is usually made', 'wie üblich gefertigt')

const counts = sides.map(side =>
  numberField({
    id: `fixing.count-${side}`,
    name: filled(words('Number of fixings, {0}', 'Anzahl Befestigungen, {0}'), sideName[side]),
    of: 'fixing',
    unit: 'one',
    read: (project, fixing) => fixingOf(project, fixing)?.fixing.counts?.[side],
    allowed: () => ({
      bounds: { unit: 'one', min: 0, max: 200 },
      because: words('along this side', 'an dieser Seite'),
    }),
    write: (project, fixing, to) =>
      withFixing(project, fixing, it => {
        const { [side]: _, ...others } = it.counts ?? {}
        // A count is of whole fixings: half a screw holds nothing.
        return { ...it, counts: to ? { ...others, [side]: { ...to, value: Math.round(to.value) } } : others }
      }),
  }),
)

/** Where fixings stand round the opening, and what one of them holds. */
export const fixingFields: readonly Field<number>[] = [corner, ...counts, resistance, lever, plate]
