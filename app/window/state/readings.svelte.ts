import { type Part, type Project, type ZonePlace, jointOf, partsOf } from '../../../core/detail'
import type { Id } from '../../../core/geometry'
import type { Side } from '../../../core/kinds'
import { type JointBand, jointBand } from '../../../core/movement'
import { practiceOf } from '../../../core/practice'
import { type Report, check, emptyMemory } from '../../../core/rules'
import { type JointState, type Section, cutSection } from '../../../core/section'
import { beingSolved, withHeat } from '../../../core/study'
import { type Grip, gripsOf, placeOf, type Session } from '../../editor'
import { type Stretch, stretchesOf } from '../all-round/stretches'
import { type PartRow, partRows } from '../parts/rows'
import { type Board, type Boards, inEachTurn, type Turn } from './board.svelte'
import { keepingLast } from './keeping-last'
import { steadyList } from './steady'

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
  /** the three planes along the four sides of the opening */
  readonly stretches: readonly Stretch[]
  readonly report: Report
  readonly grips: readonly Grip[]
  /** where the joint stands between cold (−1, widest) and hot (1, narrowest); 0 is planned */
  warmth: number
}

/**
 * The readings of the session under the hand, and of those that the panels show. `heatNow` is what rules on heat and
 * vapour last said: they are worked out beside the window.
 */
export const newReadings = (
  board: Boards,
  heatNow: () => Report,
): { readonly live: Readings; readonly followed: Readonly<Record<Turn, Readings>> } => {
  const warmth = $state({ at: 0 })
  const shared: Shared = { warmth, heatNow, once: onceForAll() }
  return {
    live: readingsOf(board, shared),
    followed: inEachTurn(turn => readingsOf(board.followed[turn], shared)),
  }
}

type Shared = {
  readonly warmth: { at: number }
  readonly heatNow: () => Report
  readonly once: ReturnType<typeof onceForAll>
}

/**
 * What all readings need of a project, each worked out once: the panels ask some frames later for what the board has
 * asked. Rules are asked anew only where they look at what has changed.
 */
const onceForAll = () => {
  const memory = emptyMemory()
  const keepRows = steadyList<PartRow>(it => it.part.id)
  const keepStretches = steadyList<Stretch>(it => `${it.plane} ${it.side}`)
  return {
    cut: kept((opening: Id, side: Side, zone: Id | undefined) => ({
      opening,
      side,
      ...(zone === undefined ? {} : { zone }),
    })),
    // A change of the project mostly leaves the zone as it is: the place is then the very same.
    place: kept((opening: Id, side: Side, zone: ZonePlace['zone']): ZonePlace => ({ opening, side, zone })),
    band: kept(jointBand),
    section: kept((project: Project, place: ZonePlace, state: JointState, width_mm: number) =>
      cutSection(project, place, { state, width_mm }),
    ),
    parts: kept(partsOf),
    grips: kept(gripsOf),
    own: kept((project: Project) => check(project, practiceOf(project.practice), beingSolved, memory)),
    report: kept(withHeat),
    rows: kept(
      (project: Project, place: ZonePlace, parts: readonly Part[], band: JointBand, report: Report) =>
        keepRows(partRows({ project, place, parts, band, report })),
    ),
    stretches: kept((...of: Parameters<typeof stretchesOf>) => keepStretches(stretchesOf(...of))),
  }
}

/** So many frames the last panel of a round is behind the board at most. *Ours*. */
const frames = 8
const kept = <In extends readonly unknown[], Out>(of: (...given: In) => Out) => keepingLast(of, frames)

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
  const report = $derived(once.report(once.own(project), heatNow()))
  const rows = $derived(once.rows(project, place, parts, band, report))
  const stretches = $derived(once.stretches(project, opening, report, place.zone.id))
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
    get stretches() {
      return stretches
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
