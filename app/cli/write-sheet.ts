import { readFile } from 'node:fs/promises'
import { extname } from 'node:path'
import { type Project, type ZonePlace, saveProject } from '../../core/detail'
import { type Drawing, type SheetOptions, detailSheet, sheetScales } from '../../core/drawing'
import { type Fonts, type Format, type Sheets, formats } from '../../core/export'
import { jointBand } from '../../core/movement'
import { cutSection } from '../../core/section'
import { type Result, ok, refused } from '../../core/units'
import { type Words, filled, words } from '../../core/words'
import { writeWhole } from './write-file'

/** Where a sheet is written, and in which format. */
export type Target = { readonly to: string; readonly format: Format }

/** The place that was typed for a sheet; the ending of its name chooses the format, and its version if one is asked for. */
export const targetOf = (to: unknown, version?: unknown): Result<Target> => {
  if (typeof to !== 'string') return wrong(words('a file is needed', 'eine Datei wird gebraucht'))
  const alike = formats.filter(it => `.${it.extension}` === extname(to).toLowerCase())
  const format = alike.find(it => it.id === `${it.extension}-${String(version)}`) ?? alike[0]
  const known = [...new Set(formats.map(it => `.${it.extension}`))].join(', ')
  return format ? ok({ to, format }) : wrong(filled(noFormat, to, known))
}

/** How a sheet is asked for; `scale` as it was typed, `1:2`. */
export type SheetAsked = Pick<SheetOptions, 'language' | 'palette'> & { readonly scale?: string }

/**
 * Draws a zone at its planned width and writes the sheet. Refused at a scale at which it does not fit on any sheet, and
 * where the system does not let it be written.
 */
export const writeSheet = async (
  project: Project,
  place: ZonePlace,
  { to, format }: Target,
  { scale, ...look }: SheetAsked,
): Promise<Result<string>> => {
  const { planned_mm } = jointBand(project, place.opening, place.side, place.zone.id)
  const section = cutSection(project, place, { state: 'planned', width_mm: planned_mm })
  const scales = sheetScales(project, place, section, look)
  const chosen = scales.find(it => scaleName(it) === scale?.replaceAll(' ', ''))
  if (scale !== undefined && chosen === undefined)
    return refused({ at: '--scale', say: filled(noScale, scale, scales.map(scaleName).join(', ')) })
  const drawing = detailSheet(project, place, section, { ...look, ...(chosen && { scale: chosen }) })
  return writeWhole(to, await format.write(sheetsOf(project, drawing), await fontsOf(format.fonts)))
}

/** A scale as it stands on a sheet: paper to model. */
const scaleName = (scale: number): string => `1:${Math.round(1 / scale)}`

const noScale = words(
  '“{0}” is no scale at which this cut fits on a sheet; it fits at {1}',
  '„{0}“ ist kein Maßstab, in dem dieser Schnitt auf ein Blatt passt; er passt in {1}',
)

const sheetsOf = (project: Project, drawing: Drawing): Sheets => {
  const { author, number, name, office } = project.title
  return {
    drawings: [drawing],
    information: {
      title: drawing.title,
      author,
      subject: number,
      keywords: [name, office].filter(Boolean),
      // A project keeps no day of its revision yet, and the day of writing would change the bytes.
      dated: '',
    },
    model: saveProject(project),
  }
}

const fontsOf = async (names: readonly string[]): Promise<Fonts> =>
  new Map(
    await Promise.all(names.map(async name => [name, await readFile(new URL(name, fontFolder))] as const)),
  )

/** Where the fonts of the sheet lie, seen from this file and from what it is bundled into in out/cli alike. */
const fontFolder = new URL('../../assets/fonts/', import.meta.url)

const noFormat = words('“{0}” names no format; there are {1}', '„{0}“ nennt kein Format; es gibt {1}')

const wrong = (say: Words) => refused({ at: '', say })
