import { readFileSync } from 'node:fs'
import { type Project, type Sample, samples, saveProject, type ZonePlace, zonesOf } from '../../core/detail'
import { detailSheet, type Drawing, type Palette } from '../../core/drawing'
import type { Fonts, Sheets } from '../../core/export'
import { jointBand } from '../../core/movement'
import { cutSection } from '../../core/section'
import type { Language } from '../../core/words'

/** The fonts of the sheets, by their names. */
export const sheetFonts: Fonts = new Map(
  ['RobotoCondensed-Regular.ttf', 'RobotoCondensed-Bold.ttf'].map(name => [
    name,
    new Uint8Array(readFileSync(`assets/fonts/${name}`)),
  ]),
)

/** The sheet of a zone of a project, as it is issued. */
export const sheetOf = (
  project: Project,
  place: ZonePlace,
  how: { readonly language: Language; readonly palette: Palette },
): Drawing => {
  const { planned_mm } = jointBand(project, place.opening, place.side, place.zone.id)
  return detailSheet(
    project,
    place,
    cutSection(project, place, { state: 'planned', width_mm: planned_mm }),
    how,
  )
}

/** A sheet of a sample: its name says which, so that a table of tests can be read. */
export type SampleSheet = {
  readonly name: string
  readonly sample: Sample
  readonly place: ZonePlace
  readonly drawing: Drawing
}

/** The sheets of all zones of all samples. */
export const sampleSheets = (how: {
  readonly language: Language
  readonly palette: Palette
}): readonly SampleSheet[] =>
  samples.flatMap(sample =>
    zonesOf(sample.project).map(place => ({
      name: `${sample.file}, ${place.side}, ${how.language}, ${how.palette}`,
      sample,
      place,
      drawing: sheetOf(sample.project, place, how),
    })),
  )

/** Sheets ready to be written, with a project attached. */
export const sheetsOf = (drawing: Drawing, ...more: readonly Drawing[]): Sheets => ({
  drawings: [drawing, ...more],
  information: {
    title: 'Leibung links, Maßstab 1:2',
    author: 'Zeichenbüro Neun',
    subject: 'Detailzeichnung W-07',
    keywords: ['Leibung', 'W-07'],
    dated: '2026-03-14',
  },
  model: saveProject(firstSample().project),
})

/** The first of the samples. */
export const firstSample = (): Sample => {
  const [first] = samples
  if (first === undefined) throw new Error('there is no sample')
  return first
}

/** A jamb of the first of the samples. */
export const firstPlace = (): { readonly project: Project; readonly place: ZonePlace } => {
  const { project } = firstSample()
  const place = zonesOf(project).find(it => it.side === 'left')
  if (place === undefined) throw new Error('an opening has a left jamb')
  return { project, place }
}
