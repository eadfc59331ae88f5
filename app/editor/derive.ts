import type { Project, ZonePlace } from '../../core/detail'
import { type JointBand, jointBand } from '../../core/movement'
import { type Report, check } from '../../core/rules'
import { type JointState, type Section, cutSection } from '../../core/section'
import { placeOf } from './place'
import type { Session } from './session'

/** What follows from a session: which zone is on the board, where its joint can be, its cut, and every verdict. */
export type Derived = {
  readonly place: ZonePlace
  readonly band: JointBand
  readonly section: Section
  readonly report: Report
}

/**
 * A way to derive that remembers its last answers: as long as project and cut are the very same values, so are the
 * answers. Each window makes one.
 */
export const deriving = (): ((session: Session, state?: JointState) => Derived) => {
  const cut = remembering(cutOf)
  const judge = remembering((project: Project) => check(project))
  return ({ project, view }, state = 'planned') => ({
    ...cut(project, view.opening, view.side, state),
    report: judge(project),
  })
}

const cutOf = (
  project: Project,
  opening: Session['view']['opening'],
  side: Session['view']['side'],
  state: JointState,
): Omit<Derived, 'report'> => {
  const place = placeOf(project, { opening, side })
  const band = jointBand(project, opening, side, place.zone.id)
  return { place, band, section: cutSection(project, place, { state, width_mm: widthAt(band, state) }) }
}

/** The width of a joint at a state of it. */
export const widthAt = ({ planned_mm, moving_mm }: JointBand, state: JointState): number =>
  ({ planned: planned_mm, narrowest: moving_mm.min, widest: moving_mm.max })[state]

const remembering = <A extends readonly unknown[], R>(answer: (...asked: A) => R): ((...asked: A) => R) => {
  let last: { readonly asked: A; readonly answer: R } | undefined
  return (...asked) => {
    if (last === undefined || !asked.every((it, at) => Object.is(it, last?.asked[at])))
      last = { asked, answer: answer(...asked) }
    return last.answer
  }
}
