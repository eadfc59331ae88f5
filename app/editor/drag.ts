import { type Edit, type Project, fieldOf } from '../../core/detail'
import type { Point } from '../../core/geometry'
import { inWords, specified, writeQuantity } from '../../core/units'
import { type Some, type Words, filled, words } from '../../core/words'
import type { Grip } from './grips'
import { type Reach, type SnapKind, snapValue } from './snap'
import { catchesOf } from './catches'
import type { View } from './session'

/** What a drag has come to: the value, what caught it, and the action that shows it. */
export type Dragged = {
  readonly value_mm: number
  readonly snap?: SnapKind
  /** the pointer went where no geometry exists; the value stopped at the end of what is allowed */
  readonly stoppedBy?: Words
  readonly edits: Some<Edit>
  readonly says: Words
}

/** Without anything that catches, a value is taken to a tenth of a millimetre: what a field shows. */
const finest_mm = 0.1

/**
 * The value of a grip after the pointer moved, in model millimetres from where it took the grip. `project` is the one
 * that the drag began with: a drag is always said from its beginning.
 */
export const dragged = (
  project: Project,
  view: View,
  { grip, moved, reach }: { readonly grip: Grip; readonly moved: Point; readonly reach: Reach },
): Dragged => {
  const to_mm = grip.value_mm + moved[0] * grip.along[0] + moved[1] * grip.along[1]
  const caught = snapValue(to_mm, catchesOf(project, view, grip), reach)
  const wanted_mm = caught.kind ? caught.at : rounded(to_mm, finest_mm)
  const { value_mm, because } = withinAllowed(project, grip, wanted_mm)
  return {
    value_mm,
    ...(caught.kind && value_mm === wanted_mm ? { snap: caught.kind } : {}),
    ...(because ? { stoppedBy: because } : {}),
    edits: stating(grip, value_mm),
    says: saying(grip, value_mm),
  }
}

/** What a typed value makes of a grip in the middle of a drag. It is not held back: what is refused is said. */
export const typedAt = (grip: Grip, value_mm: number): Pick<Dragged, 'edits' | 'says'> => ({
  edits: stating(grip, value_mm),
  says: saying(grip, value_mm),
})

/** A step of a nudge from the value that the grip has now. */
export const nudged = (
  project: Project,
  { grip, by_mm }: { readonly grip: Grip; readonly by_mm: number },
): Omit<Dragged, 'snap'> => {
  const { value_mm, because } = withinAllowed(project, grip, rounded(grip.value_mm + by_mm, 1e-6))
  return {
    value_mm,
    ...(because ? { stoppedBy: because } : {}),
    edits: stating(grip, value_mm),
    says: saying(grip, value_mm),
  }
}

const stating = ({ at }: Grip, value_mm: number): Some<Edit> => [
  { kind: 'state', at, to: specified(value_mm) },
]

const saying = ({ at }: Grip, value_mm: number): Words =>
  filled(
    words('{0} {1}', '{0} {1}'),
    fieldOf(at.field)?.name ?? words('value', 'Wert'),
    inWords(language => writeQuantity(value_mm, 'mm', language)),
  )

const withinAllowed = (
  project: Project,
  { at }: Grip,
  wanted_mm: number,
): { readonly value_mm: number; readonly because?: Words } => {
  const allowed = fieldOf(at.field)?.allowed(project, at.part)
  const { min = -Infinity, max = Infinity } = allowed?.bounds ?? {}
  const value_mm = Math.min(max, Math.max(min, wanted_mm))
  return value_mm === wanted_mm || allowed === undefined
    ? { value_mm }
    : { value_mm, because: allowed.because }
}

const rounded = (value: number, step: number): number => Number((Math.round(value / step) * step).toFixed(6))
