import { detailSheet, type Drawing, sheetScales, type SheetOptions } from '../../../core/drawing'
import { cutSection } from '../../../core/section'
import type { Readings } from './readings.svelte'

/** What is chosen of a sheet: how it is printed, and at which of the scales that fit; nothing: the largest on the smallest sheet. */
export type SheetChoice = Pick<SheetOptions, 'language' | 'palette'> & { readonly scale?: number }

/** The sheet of the cut that is looked at, always at the planned joint and on white, and the scales that it can have. */
export const sheetOf = (
  { project, place, band, report }: Readings,
  { scale, ...look }: SheetChoice,
): { readonly drawing: Drawing; readonly scales: readonly number[] } => {
  const section = cutSection(project, place, { state: 'planned', width_mm: band.planned_mm })
  const options = { ...look, report }
  const scales = sheetScales(project, place, section, options)
  const chosen = scale !== undefined && scales.includes(scale) ? { scale } : {}
  return { drawing: detailSheet(project, place, section, { ...options, ...chosen }), scales }
}
