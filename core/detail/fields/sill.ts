import type { Id } from '../../geometry'
import type { Stated, Unit } from '../../units'
import { type Words, words } from '../../words'
import type { Allowed } from '../allowed/position'
import type { Field } from '../field'
import type { Project } from '../model'
import { singlePart } from '../opening-parts'
import type { Sill } from '../sill'
import { numberField } from './number-field'
import { withSill } from './tables'

type Value = {
  readonly id: string
  readonly name: Words
  readonly unit: Unit
  readonly allowed: Allowed
  readonly has?: (sill: Sill) => boolean
  readonly of: (sill: Sill) => Stated<number> | undefined
  readonly with: (sill: Sill, to: Stated<number>) => Sill
}

const lengths = (min: number, max: number, because: Words): Allowed => ({
  bounds: { unit: 'mm', min, max },
  because,
})

const values: readonly Value[] = [
  {
    id: 'sill.slope',
    name: words('Fall of the sill', 'Gefälle der Fensterbank'),
    unit: 'deg',
    allowed: {
      bounds: { unit: 'deg', min: -10, max: 45 },
      because: words('outwards positive', 'nach außen positiv'),
    },
    of: it => it.slope_deg,
    with: (it, slope_deg) => ({ ...it, slope_deg }),
  },
  {
    id: 'sill.overhang',
    name: words('Overhang', 'Überstand'),
    unit: 'mm',
    allowed: lengths(0, 200, words('beyond the finished outer face', 'über die fertige Außenfläche')),
    of: it => it.overhang_mm,
    with: (it, overhang_mm) => ({ ...it, overhang_mm }),
  },
  {
    id: 'sill.upstand',
    name: words('Upstand at the frame', 'Aufkantung am Rahmen'),
    unit: 'mm',
    allowed: lengths(0, 80, words('height against the frame', 'Höhe am Rahmen')),
    of: it => it.upstand_mm,
    with: (it, upstand_mm) => ({ ...it, upstand_mm }),
  },
  {
    id: 'sill.thickness',
    name: words('Sheet thickness', 'Blechdicke'),
    unit: 'mm',
    allowed: lengths(0.5, 60, words('of the outside sill', 'der äußeren Fensterbank')),
    of: it => it.thickness_mm,
    with: (it, thickness_mm) => ({ ...it, thickness_mm }),
  },
  {
    id: 'sill.end-dam',
    name: words('End dam', 'Seitliche Aufkantung'),
    unit: 'mm',
    allowed: lengths(0, 80, words('height at the ends', 'Höhe an den Enden')),
    of: it => it.endDam_mm,
    with: (it, endDam_mm) => ({ ...it, endDam_mm }),
  },
  {
    id: 'sill.end-gap',
    name: words('Gap at the ends', 'Fuge an den Enden'),
    unit: 'mm',
    allowed: lengths(0, 40, words('between end dam and render', 'zwischen Aufkantung und Putz')),
    of: it => it.endGap_mm,
    with: (it, endGap_mm) => ({ ...it, endGap_mm }),
  },
  {
    id: 'sill.length',
    name: words('Length in one piece', 'Länge in einem Stück'),
    unit: 'mm',
    allowed: lengths(100, 12_000, words('between both end dams', 'zwischen beiden Aufkantungen')),
    of: it => it.length_mm,
    with: (it, length_mm) => ({ ...it, length_mm }),
  },
  {
    id: 'sill.throat',
    name: words('Drip groove from the wall', 'Abtropfnut ab Wand'),
    unit: 'mm',
    allowed: lengths(0, 200, words('from the finished outer face', 'ab fertiger Außenfläche')),
    of: it => it.throat_mm,
    with: (it, throat_mm) => ({ ...it, throat_mm }),
  },
  {
    id: 'sill.board-thickness',
    name: words('Thickness of the inside board', 'Dicke der Innenbank'),
    unit: 'mm',
    has: it => it.board !== undefined,
    allowed: lengths(5, 80, words('of the board inside', 'der Fensterbank innen')),
    of: it => it.board?.thickness_mm,
    with: (it, thickness_mm) => (it.board ? { ...it, board: { ...it.board, thickness_mm } } : it),
  },
  {
    id: 'sill.board-overhang',
    name: words('Overhang of the inside board', 'Überstand der Innenbank'),
    unit: 'mm',
    has: it => it.board !== undefined,
    allowed: lengths(0, 400, words('beyond the finished inner face', 'über die fertige Innenfläche')),
    of: it => it.board?.overhang_mm,
    with: (it, overhang_mm) => (it.board ? { ...it, board: { ...it.board, overhang_mm } } : it),
  },
]

export const sillFields: readonly Field<number>[] = values.map(value =>
  numberField({
    id: value.id,
    name: value.name,
    of: 'sill',
    unit: value.unit,
    ...(value.has ? { has: (project, part) => hasIn(project, part, value) } : {}),
    read: (project, part) => {
      const found = singlePart(project, 'sill', part)
      return found && value.of(found.part)
    },
    allowed: () => value.allowed,
    write: (project, part, to) =>
      to === undefined ? project : withSill(project, part, it => value.with(it, to)),
  }),
)

const hasIn = (project: Project, part: Id, value: Value): boolean => {
  const found = singlePart(project, 'sill', part)
  return found !== undefined && value.has?.(found.part) === true
}
