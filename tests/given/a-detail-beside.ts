import type { Project } from '../../core/detail'
import type { Beside } from '../../core/drawing'
import type { Side } from '../../core/kinds'
import { jointBand } from '../../core/movement'
import { check } from '../../core/rules'
import { cutSection } from '../../core/section'
import { aSample } from './a-sample'

/** A cut of a sample, or of what is made of it, to be put beside another. */
export const aDetail = (
  file: string,
  side: Side = 'left',
  from: (it: Project) => Project = it => it,
): Beside => {
  const { project: sample, place } = aSample(file, side)
  const project = from(sample)
  const { planned_mm } = jointBand(project, place.opening, side, place.zone.id)
  const section = cutSection(project, place, { state: 'planned', width_mm: planned_mm })
  return { project, place, section, report: check(project) }
}
