import { type Project, samples } from '../../../core/detail'
import { type Beside, besideScales, besideSheet } from '../../../core/drawing'
import type { Id } from '../../../core/geometry'
import type { Side } from '../../../core/kinds'
import { check, type Report } from '../../../core/rules'
import { same, type Words } from '../../../core/words'
import { type Drawn, plannedCut, type SheetChoices } from './drawn'

/** An opening that may stand beside the one that is looked at: of the same project, or of a sample. */
export type Other = { readonly key: string; readonly name: Words; readonly of: Project; readonly opening: Id }

/** The openings of a project but one, as they may stand beside that. */
export const othersIn = (project: Project, opening: Id): readonly Other[] =>
  openingsOf(project).filter(it => it.opening !== opening)

/** The openings of another file. */
export const othersInFile = (project: Project): readonly Other[] =>
  openingsOf(project).map(it => ({ ...it, key: `file ${it.key}` }))

const openingsOf = (project: Project): readonly Other[] =>
  Object.values(project.openings).map(it => ({
    key: it.id,
    name: same(it.name || it.id),
    of: project,
    opening: it.id,
  }))

/** The first opening of every sample. */
export const otherSamples: readonly Other[] = samples.flatMap(({ file, name, project }) => {
  const [opening] = Object.keys(project.openings)
  return opening === undefined ? [] : [{ key: `sample ${file}`, name, of: project, opening }]
})

/** What a comparison is drawn from: the opening that is looked at with its side, and its verdicts without those on heat. */
type From = { readonly project: Project; readonly opening: Id; readonly side: Side; readonly report: Report }

/**
 * Draws the cut of a side of two openings beside each other, the one that is looked at first or second; nothing where one
 * has no such side, or nothing fits.
 */
export const drawnBeside = (
  { project, opening, side, report }: From,
  other: Other,
  { language, palette, unit, scale, enlarged, isFirst }: SheetChoices & { readonly isFirst: boolean },
): Drawn => {
  const own = plannedCut(project, opening, side)
  const beside = plannedCut(other.of, other.opening, side)
  if (own === undefined || beside === undefined) return { pages: [], scales: [] }
  const reportBeside = other.of === project ? report : check(other.of)
  const here: Beside = { project, report, ...own }
  const there: Beside = { project: other.of, report: reportBeside, ...beside }
  const pair = isFirst ? ([here, there] as const) : ([there, here] as const)
  const options = { language, palette, unit, sheet: '1 / 1', titled: isFirst ? 0 : 1 } as const
  const scales = besideScales(pair, options)
  const chosen = {
    ...(scale !== undefined && scales.includes(scale) && { scale }),
    ...(enlarged !== undefined && { enlarged }),
  }
  return { pages: scales.length === 0 ? [] : [besideSheet(pair, { ...options, ...chosen })], scales }
}
