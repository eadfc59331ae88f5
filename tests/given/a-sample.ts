import { type Project, type ZonePlace, samples, zonesOf } from '../../core/detail'
import type { Side } from '../../core/kinds'

/** A sample by the name of its file, and the first zone of one of its sides. */
export const aSample = (
  file: string,
  side: Side = 'left',
): { readonly project: Project; readonly place: ZonePlace } => {
  const project = samples.find(it => it.file === file)?.project
  const place = project && zonesOf(project).find(it => it.side === side)
  if (!project || !place) throw new Error(`no sample ${file} with a ${side}`)
  return { project, place }
}
