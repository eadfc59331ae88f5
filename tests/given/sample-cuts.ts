import { type Project, type Sample, samples, zonesOf } from '../../core/detail'
import { type Cut, cutsSheet, type Drawing, type SheetOptions } from '../../core/drawing'
import { jointBand } from '../../core/movement'
import { cutSection } from '../../core/section'
import { isSome, type Some } from '../../core/words'

/** Head, left jamb and sill of the first opening of a project, each at its planned joint. */
export const cutsOf = (project: Project): Some<Omit<Cut, 'letter'>> => {
  const places = zonesOf(project)
  const cuts = (['head', 'left', 'sill'] as const).flatMap(side => {
    const place = places.find(it => it.side === side)
    if (place === undefined) return []
    const { planned_mm } = jointBand(project, place.opening, side, place.zone.id)
    return [{ place, section: cutSection(project, place, { state: 'planned', width_mm: planned_mm }) }]
  })
  if (!isSome(cuts)) throw new Error('an opening has sides')
  return cuts
}

/** The sheet of head, jamb and sill of each sample. */
export const sampleCuts = (
  options: SheetOptions,
  only: readonly Sample[] = samples,
): readonly { readonly name: string; readonly project: Project; readonly drawing: Drawing }[] =>
  only.map(({ file, project }) => ({
    name: `${file}, ${options.language}, ${options.palette}, ${options.unit ?? 'mm'}`,
    project,
    drawing: cutsSheet(project, cutsOf(project), options),
  }))
