import { type Part, type Project, type ZonePlace, jointOf, partsOf } from '../../../core/detail'
import { type JointBand, jointBand } from '../../../core/movement'
import { practiceOf } from '../../../core/practice'
import { type Report, check, emptyMemory } from '../../../core/rules'
import { type Section, cutSection } from '../../../core/section'
import { beingSolved, withHeat } from '../../../core/study'
import { type Grip, gripsOf, placeOf, type Session } from '../../editor'
import { type PartRow, partRows } from '../parts/rows'
import type { Board } from './board.svelte'

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

/** Where the joint stands between cold and hot, for all who read the same session. */
export const newWarmth = (): { at: number } => {
  const warmth = $state({ at: 0 })
  return warmth
}

/** `heatNow` is what rules on heat and vapour last said: they are worked out beside the window. */
export const newReadings = (board: Board, warmth: { at: number }, heatNow: () => Report): Readings => {
  const project = $derived(board.now.project)
  // A view is a new value with every look; what the cut depends on is its opening and side.
  const opening = $derived(board.now.view.opening)
  const side = $derived(board.now.view.side)
  const zone = $derived(board.now.view.zone)
  const cut = $derived({ opening, side, ...(zone === undefined ? {} : { zone }) })
  const place = $derived(placeOf(project, cut))
  const band = $derived(jointBand(project, opening, side, place.zone.id))
  const width_mm = $derived(widthAt(band, warmth.at))
  const state = $derived(warmth.at === 0 ? 'planned' : warmth.at < 0 ? 'widest' : 'narrowest')
  const section = $derived(cutSection(project, place, { state, width_mm }))
  const parts = $derived(partsOf(project, place))
  const practice = $derived(practiceOf(project.practice))
  // Rules are asked anew only where they look at what has changed.
  const memory = emptyMemory()
  const own = $derived(check(project, practice, beingSolved, memory))
  const report = $derived(withHeat(own, heatNow()))
  const rows = $derived(partRows({ project, place, parts, band, report }))
  const grips = $derived(gripsOf(project, cut))
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
