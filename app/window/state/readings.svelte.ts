import { type Part, type Project, type ZonePlace, jointOf, partsOf } from '../../../core/detail'
import type { Id } from '../../../core/geometry'
import type { Side } from '../../../core/kinds'
import { type JointBand, jointBand } from '../../../core/movement'
import { practiceOf } from '../../../core/practice'
import { type Report, check, emptyMemory } from '../../../core/rules'
import { type JointState, type Section, cutSection } from '../../../core/section'
import { beingSolved, withHeat } from '../../../core/study'
import { type Grip, gripsOf, placeOf, type Session } from '../../editor'
import { type PartRow, partRows } from '../parts/rows'
import type { Board, Boards } from './board.svelte'
import { keepingLast } from './keeping-last'

/** All that the panels read: computed from the session, each piece once and only when what it rests on has changed. */
export type Readings = {
  readonly project: Project
  /** what is cut: the same value wherever the board is moved to */
  readonly view: Pick<Session['view'], 'opening' | 'side' | 'zone'>
  readonly place: ZonePlace
  readonly band: JointBand
  /** width at which the section is drawn: where the slider between cold and hot stands */
  readonly width_mm: number
  readonly section: Section
  readonly parts: readonly Part[]
  /** the parts list of the cut, with the verdicts that are about it */
  readonly rows: readonly PartRow[]
  readonly report: Report
  readonly grips: readonly Grip[]
  /** where the joint stands between cold (−1, widest) and hot (1, narrowest); 0 is planned */
  warmth: number
}

/**
 * The readings of the session under the hand, and of the one that the panels show. `heatNow` is what rules on heat and
 * vapour last said: they are worked out beside the window.
 */
export const newReadings = (
  board: Boards,
  heatNow: () => Report,
): { readonly live: Readings; readonly followed: Readings } => {
  const warmth = $state({ at: 0 })
  const shared: Shared = { warmth, heatNow, once: onceForBoth() }
  return { live: readingsOf(board, shared), followed: readingsOf(board.followed, shared) }
}

type Shared = {
  readonly warmth: { at: number }
  readonly heatNow: () => Report
  readonly once: ReturnType<typeof onceForBoth>
}

/** What both readings need of a project: the panels ask a moment later for what the board has just asked. */
const onceForBoth = () => ({
  cut: keepingLast((opening: Id, side: Side, zone: Id | undefined) => ({
    opening,
    side,
    ...(zone === undefined ? {} : { zone }),
  })),
  // A change of the project mostly leaves the zone as it is: the place is then the very same.
  place: keepingLast((opening: Id, side: Side, zone: ZonePlace['zone']): ZonePlace => ({
    opening,
    side,
    zone,
  })),
  band: keepingLast(jointBand),
  section: keepingLast((project: Project, place: ZonePlace, state: JointState, width_mm: number) =>
    cutSection(project, place, { state, width_mm }),
  ),
  parts: keepingLast(partsOf),
  grips: keepingLast(gripsOf),
})

const readingsOf = (board: Board, { warmth, heatNow, once }: Shared): Readings => {
  const project = $derived(board.now.project)
  // A view is a new value with every look; what the cut depends on is its opening and side.
  const opening = $derived(board.now.view.opening)
  const side = $derived(board.now.view.side)
  const zone = $derived(board.now.view.zone)
  const cut = $derived(once.cut(opening, side, zone))
  const zoneNow = $derived(placeOf(project, cut).zone)
  const place = $derived(once.place(opening, side, zoneNow))
  const band = $derived(once.band(project, opening, side, place.zone.id))
  const width_mm = $derived(widthAt(band, warmth.at))
  const state = $derived(warmth.at === 0 ? 'planned' : warmth.at < 0 ? 'widest' : 'narrowest')
  const section = $derived(once.section(project, place, state, width_mm))
  const parts = $derived(once.parts(project, place))
  const practice = $derived(practiceOf(project.practice))
  // Rules are asked anew only where they look at what has changed.
  const memory = emptyMemory()
  const own = $derived(check(project, practice, beingSolved, memory))
  const report = $derived(withHeat(own, heatNow()))
  const rows = $derived(partRows({ project, place, parts, band, report }))
  const grips = $derived(once.grips(project, cut))
  return {
    get project() {
      return project
    },
    get view() {
      return cut
    },
    get place() {
      return place
    },
    get band() {
      return band
    },
    get width_mm() {
      return width_mm
    },
    get section() {
      return section
    },
    get parts() {
      return parts
    },
    get rows() {
      return rows
    },
    get report() {
      return report
    },
    get grips() {
      return grips
    },
    get warmth() {
      return warmth.at
    },
    set warmth(to) {
      warmth.at = to
    },
  }
}

/** Cold opens the joint to its widest, heat closes it to its narrowest. */
const widthAt = ({ planned_mm, moving_mm }: JointBand, warmth: number): number =>
  warmth < 0
    ? planned_mm + (moving_mm.max - planned_mm) * -warmth
    : planned_mm + (moving_mm.min - planned_mm) * warmth

/** The joint of a place, as its type. */
export const jointAt = (readings: Readings) => jointOf(readings.project, readings.place.zone)
