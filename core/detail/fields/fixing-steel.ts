import { words } from '../../words'
import type { Field } from '../field'
import { fixingOf } from '../find'
import { numberField } from './number-field'
import { withFixing } from './tables'

const core = numberField({
  id: 'fixing.core',
  name: words('Core of the screw', 'Kern der Schraube'),
  of: 'fixing',
  unit: 'mm',
  read: (project, fixing) => fixingOf(project, fixing)?.fixing.core_mm,
  allowed: () => ({
    bounds: { unit: 'mm', min: 3, max: 16 },
    because: words('diameter below the thread', 'Durchmesser unter dem Gewinde'),
  }),
  write: (project, fixing, to) =>
    withFixing(project, fixing, ({ core_mm: _, ...it }) => (to ? { ...it, core_mm: to } : it)),
})

const steel = numberField({
  id: 'fixing.steel',
  name: words('Tensile strength of its steel', 'Zugfestigkeit ihres Stahls'),
  of: 'fixing',
  unit: 'N_mm2',
  read: (project, fixing) => fixingOf(project, fixing)?.fixing.steel_N_mm2,
  allowed: () => ({
    bounds: { unit: 'N_mm2', min: 300, max: 1400 },
    because: words('as declared by the product', 'nach Angabe des Produkts'),
  }),
  write: (project, fixing, to) =>
    withFixing(project, fixing, ({ steel_N_mm2: _, ...it }) => (to ? { ...it, steel_N_mm2: to } : it)),
})

/** What of a screw bends across the joint. */
export const fixingSteelFields: readonly Field<number>[] = [core, steel]
