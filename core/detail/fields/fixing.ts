import { words } from '../../words'
import { fixingOf } from '../find'
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
