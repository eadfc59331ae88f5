import { type Project, type ZonePlace, jointOf, zonesOf } from '../detail'
import { type Result, ok } from '../units'
import { type SectionVapour, type SolvedZone, sectionVapour, solveZone } from '../vapour'
import { type Sureness, surenessOf } from './sensitivities'

/** Heat and vapour of one zone, solved for a report. */
export type ZoneStudy = {
  readonly place: ZonePlace
  /** with the films for heat loss, and with those for surface humidity */
  readonly loss: SolvedZone
  readonly humid: SolvedZone
  readonly vapour: SectionVapour
  readonly sureness: Sureness
}

/** Solves all that a report says of heat and vapour in a zone. Problems: as for `solveZone`. */
export const studyZone = (project: Project, place: ZonePlace): Result<ZoneStudy> => {
  const loss = solveZone(project, place, { purpose: 'heat-loss' })
  if (!loss.ok) return loss
  const humid = solveZone(project, place, { purpose: 'surface-humidity' })
  if (!humid.ok) return humid
  const sureness = surenessOf(project, place)
  if (!sureness.ok) return sureness
  const vapour = sectionVapour(humid.value.vapourView, 'joint', humid.value.conditions)
  return ok({ place, loss: loss.value, humid: humid.value, vapour, sureness: sureness.value })
}

/** The zones that a report studies: the first of head, jamb and sill of each opening; a jamb like the other stands for both. */
export const studiedPlaces = (project: Project): readonly ZonePlace[] =>
  Object.keys(project.openings).flatMap(opening => {
    const all = zonesOf(project).filter(it => it.opening === opening)
    const first = (side: ZonePlace['side']) => all.find(it => it.side === side)
    const [left, right] = [first('left'), first('right')]
    const isSame = left && right && jointOf(project, left.zone) === jointOf(project, right.zone)
    return [first('head'), left, isSame ? undefined : right, first('sill')].flatMap(it => it ?? [])
  })
