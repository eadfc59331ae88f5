import { detailSheet, type Drawing } from '../../../core/drawing'
import type { Language } from '../../../core/words'
import type { Readings } from './readings.svelte'
import { cutSection } from '../../../core/section'

/** The sheet of the cut that is looked at, always at the planned joint and on white. */
export const sheetOf = (readings: Readings, language: Language, palette: 'colour' | 'black'): Drawing => {
  const { project, place, band } = readings
  const section = cutSection(project, place, { state: 'planned', width_mm: band.planned_mm })
  return detailSheet(project, place, section, { language, palette })
}
