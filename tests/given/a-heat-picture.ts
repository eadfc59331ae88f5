import { jointOf, type Project, samples, type ZonePlace, zonesOf } from '../../core/detail'
import { type HeatPicture, heatQuestion, solvedPicture } from '../../core/drawing'
import type { Side } from '../../core/kinds'
import { cutSection, type Section } from '../../core/section'

/** A cut of a sample with its heat solved. */
export const aHeatPicture = (
  file: string,
  side: Side,
): {
  readonly project: Project
  readonly place: ZonePlace
  readonly section: Section
  readonly picture: HeatPicture
} => {
  const project = samples.find(it => it.file === file)?.project
  const place = project && zonesOf(project).find(it => it.side === side)
  if (!project || !place) throw new Error(`no sample ${file} with a ${side}`)
  const width_mm = jointOf(project, place.zone).planned_mm.value
  const section = cutSection(project, place, { state: 'planned', width_mm })
  const solved = solvedPicture(heatQuestion(project, place, section))
  if (!solved.ok) throw new Error(JSON.stringify(solved.problems))
  return { project, place, section, picture: solved.value }
}
