import { type Project, zonesOf } from '../../../core/detail'
import {
  checkReport,
  cutsScales,
  cutsSheet,
  detailSheets,
  type Drawing,
  heatQuestion,
  type LengthUnit,
  type Palette,
  sheetScales,
  solvedPicture,
} from '../../../core/drawing'
import type { Id } from '../../../core/geometry'
import { type Side, sides } from '../../../core/kinds'
import { jointBand } from '../../../core/movement'
import { needsHeat, type Report } from '../../../core/rules'
import { cutSection } from '../../../core/section'
import { isSome, type Language, type Some } from '../../../core/words'
import type { Readings } from '../state/readings.svelte'

/** What can be drawn of an opening: the cut of a side, three cuts together, a cut beside that of another opening, the check report. */
export type SheetKind = Side | 'cuts' | 'beside' | 'report'
export const sheetKinds: Some<SheetKind> = ['head', 'left', 'right', 'sill', 'cuts', 'beside', 'report']
/** Sheets of the opening by itself. */
export const ownKinds: Some<Exclude<SheetKind, 'beside'>> = [
  'head',
  'left',
  'right',
  'sill',
  'cuts',
  'report',
]

/** How a sheet is asked for; without a paper or a scale, the smallest sheet and the largest scale that fit. */
export type SheetChoices = {
  readonly palette: Palette
  readonly language: Language
  readonly unit: LengthUnit
  readonly paper: 'A4' | 'A3' | undefined
  readonly scale: number | undefined
  /** at which scale the joint of a cut is drawn once more; absent: where the cut is small */
  readonly enlarged: number | 'none' | undefined
  /** parts with their hatches, or the temperature field of a single cut in their place */
  readonly shows: 'parts' | 'heat'
}

/** Drawn pages with the scales that they could have; no page where nothing fits on the paper that is asked for. */
export type Drawn = { readonly pages: readonly Drawing[]; readonly scales: readonly number[] }

type From = Pick<Readings, 'project' | 'view' | 'report'>

/** Draws a sheet of the opening that is looked at, always at its planned joint and on white. */
export const drawnSheet = (
  { project, view, report }: From,
  kind: Exclude<SheetKind, 'beside'>,
  asked: SheetChoices,
): Drawn => {
  const { language, palette, unit, paper, enlarged } = asked
  if (kind === 'report') return { pages: checkReport(project, report, { language, palette }), scales: [] }
  const cutAt = (side: Side) => plannedCut(project, view.opening, side) ?? []
  const options = { language, palette, unit, report: withoutHeat(report), ...(paper && { paper }) }
  if (kind === 'cuts') {
    const cuts = (['head', 'left', 'sill'] as const).flatMap(cutAt)
    if (!isSome(cuts)) return { pages: [], scales: [] }
    const scales = paper === 'A4' ? [] : cutsScales(project, cuts, options)
    const scale = scaleOf(asked, scales)
    return {
      pages: scales.length === 0 ? [] : [cutsSheet(project, cuts, { ...options, ...scale, sheet: '1 / 1' })],
      scales,
    }
  }
  const cut = plannedCut(project, view.opening, kind)
  if (cut === undefined) return { pages: [], scales: [] }
  const { place, section } = cut
  const heat = asked.shows === 'heat' ? solvedPicture(heatQuestion(project, place, section)) : undefined
  // A cut whose heat cannot be solved has no such sheet.
  if (heat && !heat.ok) return { pages: [], scales: [] }
  const single = {
    ...options,
    ...(heat && { heat: heat.value }),
    ...(enlarged !== undefined && { enlarged }),
  }
  const scales = sheetScales(project, place, section, single)
  const sheet = `${sides.indexOf(kind) + 1} / ${sides.length}`
  return {
    pages:
      scales.length === 0
        ? []
        : detailSheets(project, place, section, { ...single, ...scaleOf(asked, scales), sheet }),
    scales,
  }
}

/** The first zone of a side of an opening at its planned joint, cut. */
export const plannedCut = (project: Project, opening: Id, side: Side) => {
  const place = zonesOf(project).find(it => it.opening === opening && it.side === side)
  if (place === undefined) return undefined
  const { planned_mm } = jointBand(project, opening, side, place.zone.id)
  return { place, section: cutSection(project, place, { state: 'planned', width_mm: planned_mm }) }
}

const scaleOf = ({ scale }: SheetChoices, scales: readonly number[]): { readonly scale?: number } =>
  scale !== undefined && scales.includes(scale) ? { scale } : {}

/** The name that a sheet is offered under: letters and digits of its number, and what it shows. */
export const exportName = (number: string, shows: string, extension: string): string =>
  `${number.replace(/[^\p{L}\p{N}-]+/gu, '-').replace(/^-+|-+$/g, '') || 'detail'}-${shows}.${extension}`

/**
 * What is said of a cut without solving its heat. An answer that comes later must not change a sheet: the same project
 * gives the same sheet here and at the command line; verdicts on heat stand in the check report.
 */
export const withoutHeat = (report: Report): Report => ({
  ...report,
  findings: report.findings.filter(it => !needsHeat.includes(it.rule)),
})
