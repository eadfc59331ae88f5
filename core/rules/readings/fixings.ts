import {
  fieldOf,
  type Fixing,
  membersAt,
  placedAt,
  profileOf,
  type SideFixings,
  sideFixings,
  wallDepths,
} from '../../detail'
import type { Stated } from '../../units'
import { type Words, words } from '../../words'
import type { Place } from '../place'
import { type Beneath, placed, type Reading, statedThere } from '../reading'

/** A stated value of the fixing that is asked about, under its field's name. */
export const ofFixing = (id: string, of: (it: Fixing) => Stated<number> | undefined): Reading<number> => {
  const name = fieldOf(id)?.name
  if (name === undefined) throw new Error(`A rule reads ${id}, and there is no such value`)
  return statedThere(
    { id, name },
    at => at.fixing?.id ?? at.opening.id,
    at => at.fixing && of(at.fixing),
  )
}

/** How the frame is held by the fixing that is asked about. */
export const fixingKind: Reading<Fixing['kind']> = placed({
  id: 'fixing.kind',
  name: words('Kind of fixing', 'Art der Befestigung'),
  compute: at => at.fixing?.kind,
})

/** Whether the fixing asked about is a bracket: its assessment holds for wall and offset, no table does. */
export const noBracket = (at: Place): true | Words => {
  if (at.fixing?.kind !== 'bracket') return true
  return words(
    'a bracket is assessed as a whole, with its offset',
    'eine Konsole wird als Ganzes bemessen, mit ihrer Auskragung',
  )
}

/** Where an axis stands in the bearing layer, from either free arris of it. */
export type EdgeDistance = {
  readonly position_mm: number
  readonly axis_mm: number
  readonly bearing_mm: number
  readonly outer_mm: number
  readonly inner_mm: number
  /** the smaller of those that count: the back of a nib is no free arris */
  readonly least_mm: number
}

/** Distance of an axis from the nearest free arris of the bearing layer: derived from where the frame stands. */
export const edgeDistance: Reading<EdgeDistance> = placed({
  id: 'fixing.edge',
  name: words('Edge distance', 'Randabstand'),
  compute: at => at.fixing && edgeOf(at, at.fixing),
  beneath: at => [
    { field: 'opening.position', part: at.opening.id, stated: at.opening.position_mm },
    { field: 'fixing.axis', part: at.fixing?.id ?? at.opening.id, stated: at.fixing?.axis_mm },
  ],
})

const edgeOf = ({ wall, opening }: Place, fixing: Fixing): EdgeDistance => {
  const { bearing_mm } = wallDepths(wall)
  const position_mm = opening.position_mm.value
  const axis_mm = fixing.axis_mm.value
  const outer_mm = position_mm + axis_mm
  const inner_mm = bearing_mm - outer_mm
  const { form } = wall.reveal
  const counting = [...(form === 'inner-rebate' ? [] : [outer_mm]), ...(form === 'outer-rebate' ? [] : [inner_mm])]
  return { position_mm, axis_mm, bearing_mm, outer_mm, inner_mm, least_mm: Math.min(...counting) }
} // prettier-ignore

/** How deep a fixing sits in the bearing layer: nothing where its axis passes beside it. */
export const embedment: Reading<number> = placed({
  id: 'fixing.embedment',
  name: words('Embedment in the bearing layer', 'Verankerung in der tragenden Schicht'),
  compute: at => {
    if (!at.fixing) return undefined
    const { outer_mm, inner_mm } = edgeOf(at, at.fixing)
    return outer_mm > 0 && inner_mm > 0 ? at.fixing.embedment_mm.value : 0
  },
  beneath: at => [
    {
      field: 'fixing.embedment',
      part: at.fixing?.id ?? at.opening.id,
      stated: at.fixing?.embedment_mm,
    },
  ],
})

/** The fixings of a side, where somebody has placed them. */
export const fixingsOfSide: Reading<SideFixings> = placed({
  id: 'opening.fixings',
  name: words('Fixings of the side', 'Befestigungen der Seite'),
  compute: at => sideFixings(at.opening, at.side, faceOf(at)),
  beneath: beneathSide,
})

/** What the fixings of a side hang on, stated or missing. */
function beneathSide(at: Place): readonly Beneath[] {
  const { opening, side } = at
  const [first] = placedAt(opening, side).concat(opening.fixings)
  if (!first) return [{ field: 'opening.fixings', part: opening.id, stated: undefined }]
  if (first.positions_mm?.[side]) return []
  return [
    { field: `fixing.count-${side}`, part: first.id, stated: first.counts?.[side] },
    { field: 'fixing.corner', part: first.id, stated: first.corner_mm },
  ]
}

/** Whether a side is held by brackets that are placed under what they carry: no table spreads them. */
export const isOnBrackets = ({ opening, side }: Place): boolean => {
  const placedThere = placedAt(opening, side)
  return placedThere.length > 0 && placedThere.every(it => it.kind === 'bracket' && it.positions_mm?.[side])
}

/** Outer edge of the frame to its edge at the sash. */
export const faceOf = ({ frame }: Place): number => profileOf(frame).face_mm

/** Whether a resistance to burglary is asked for. Not stated counts as no. */
export const burglaryAsked: Reading<'yes' | 'no'> = placed({
  id: 'opening.burglary',
  name: words('Resists burglary', 'Einbruchhemmend'),
  compute: at => at.opening.asked?.burglary?.value ?? 'no',
})

/** A member on a side with its nearest axes: before it and after it, from its axis. */
export type Held = {
  readonly half_mm: number
  readonly before_mm: number
  readonly after_mm: number
}

/** How near fixings stand to each mullion or transom of a side; the side's length where there is none. */
export const membersHeld: Reading<readonly Held[]> = placed({
  id: 'opening.members-held',
  name: words('Fixings beside mullions and transoms', 'Befestigungen neben Pfosten und Riegeln'),
  compute: at => {
    const side = sideFixings(at.opening, at.side, faceOf(at))
    return side && membersAt(at.opening, at.side).map(it => heldAt(side, it.at_mm.value, it.face_mm.value / 2))
  },
  beneath: beneathSide,
}) // prettier-ignore

const heldAt = ({ axes_mm, length_mm }: SideFixings, at_mm: number, half_mm: number): Held => ({
  half_mm,
  before_mm: Math.min(length_mm, ...axes_mm.filter(it => it < at_mm).map(it => at_mm - it)),
  after_mm: Math.min(length_mm, ...axes_mm.filter(it => it > at_mm).map(it => it - at_mm)),
})
