import { readFile } from 'node:fs/promises'
import { extname } from 'node:path'
import { type Project, type ZonePlace, zonesOf } from '../../core/detail'
import {
  type Drawing,
  type SheetOptions,
  checkReport,
  cutsScales,
  cutsSheet,
  detailSheets,
  enlargedScales,
  heatQuestion,
  sheetProblems,
  sheetScales,
  solvedPicture,
  withWetZone,
} from '../../core/drawing'
import { type Fonts, type Format, formats, projectSheets } from '../../core/export'
import { jointBand } from '../../core/movement'
import { check } from '../../core/rules'
import { cutSection } from '../../core/section'
import { type ZoneStudy, studiedPlaces, studyZone } from '../../core/study'
import { type Result, ok, refused } from '../../core/units'
import { physicsDesk, sectionField, solveZone, wetZone } from '../../core/vapour'
import { type Some, type Words, filled, isSome, words } from '../../core/words'
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
export type SheetAsked = Pick<SheetOptions, 'language' | 'palette' | 'unit' | 'paper'> & {
  readonly scale?: string
  /** `none`, or the scale of the enlarged joint as it was typed, `1:1` */
  readonly enlarged?: string
  /** the temperature field in the place of tints and hatches */
  readonly shows?: 'parts' | 'heat' | 'vapour'
}

/**
 * Draws one zone, or several on one sheet, at their planned widths and writes the sheet. Refused on a paper or at a
 * scale where it does not fit, with a text that is longer than its field, and where the system does not let it be
 * written.
 */
export const writeSheet = async (
  project: Project,
  places: Some<ZonePlace>,
  target: Target,
  { scale, enlarged, shows, ...asked }: SheetAsked,
): Promise<Result<string>> => {
  const [first, ...more] = places
  const all = zonesOf(project).filter(it => it.opening === first.opening)
  const number = all.findIndex(it => it.zone.id === first.zone.id) + 1
  const options = {
    ...asked,
    report: check(project),
    sheet: isSome(more) ? '1 / 1' : `${number} / ${all.length}`,
  }
  const cuts: Some<ReturnType<typeof cutOf>> = [cutOf(project, first), ...more.map(it => cutOf(project, it))]
  const isSolved = shows === 'heat' || shows === 'vapour'
  if (isSolved && isSome(more)) return refused({ at: '--show', say: oneHeat })
  const heat = shows === 'heat' ? solvedPicture(heatQuestion(project, first, cuts[0].section)) : undefined
  if (heat && !heat.ok) return heat
  const joint = enlarged === undefined ? {} : { enlarged: enlargedOf(enlarged) }
  if (typeof joint.enlarged === 'number' && (isSome(more) || isSolved))
    return refused({ at: '--enlarged', say: oneEnlarged })
  // what is said of water stands under the heading, where an enlarged joint would move its cut to
  const once = shows === 'vapour' ? ({ enlarged: 'none' } as const) : joint
  const single = { ...options, ...once, ...(heat && { heat: heat.value }) }
  const scales = isSome(more)
    ? asked.paper === 'A4'
      ? []
      : cutsScales(project, cuts, options)
    : sheetScales(project, first, cuts[0].section, single)
  if (!isSome(scales)) return refused({ at: '--paper', say: filled(noPaper, asked.paper ?? 'A3') })
  const at = scaleAmong(scales, scale)
  if (!at.ok) return at
  const how = { ...single, ...at.value }
  const [drawing, ...further]: Some<Drawing> = isSome(more)
    ? [cutsSheet(project, cuts, how)]
    : detailSheets(project, first, cuts[0].section, how)
  if (typeof joint.enlarged === 'number' && !hasEnlarged(drawing)) {
    const fitting = enlargedScales.filter(it =>
      hasEnlarged(detailSheets(project, first, cuts[0].section, { ...how, enlarged: it })[0]),
    )
    const known = [...fitting.map(scaleName), 'none'].join(', ')
    return refused({ at: '--enlarged', say: filled(noEnlarged, enlarged ?? '', known) })
  }
  const problems = sheetProblems(project, drawing)
  if (isSome(problems)) return refused(...problems)
  const wet = shows === 'vapour' ? wetZoneAt(project, first) : undefined
  if (wet && !wet.ok) return wet
  return writeDrawings(project, [wet ? withWetZone(drawing, wet.value) : drawing, ...further], target)
}

/** Where water gathers in a cut in winter. */
const wetZoneAt = (project: Project, place: ZonePlace): Result<ReturnType<typeof wetZone>> => {
  const zone = solveZone(project, place, { purpose: 'surface-humidity' })
  if (!zone.ok) return zone
  const { vapourView, conditions, solved } = zone.value
  const field = sectionField(vapourView, solved.solution, conditions)
  return field.ok ? ok(wetZone(field.value)) : field
}

/** The scale that was typed, among those at which a sheet fits; nothing where none was. */
export const scaleAmong = (
  scales: readonly number[],
  scale: string | undefined,
): Result<{ readonly scale?: number }> => {
  if (scale === undefined) return ok({})
  const chosen = scales.find(it => scaleName(it) === scale.replaceAll(' ', ''))
  return chosen === undefined
    ? refused({ at: '--scale', say: filled(noScale, scale, scales.map(scaleName).join(', ')) })
    : ok({ scale: chosen })
}

/** A zone at its planned joint, cut. */
export const cutOf = (project: Project, place: ZonePlace) => {
  const { planned_mm } = jointBand(project, place.opening, place.side, place.zone.id)
  return { place, section: cutSection(project, place, { state: 'planned', width_mm: planned_mm }) }
}

/** Writes the check of a project as pages; with heat, the sums of each zone and a sheet of its temperature field too. */
export const writeReport = async (
  project: Project,
  target: Target,
  { withHeat, ...look }: Pick<SheetOptions, 'language' | 'palette'> & { readonly withHeat: boolean },
): Promise<Result<string>> => {
  if (!withHeat) return writeDrawings(project, checkReport(project, check(project), look), target)
  const report = check(project, undefined, physicsDesk())
  const studies: ZoneStudy[] = []
  const sheets: Drawing[] = []
  for (const place of studiedPlaces(project)) {
    const study = studyZone(project, place)
    if (!study.ok) return study
    const { section } = study.value.humid
    const heat = solvedPicture(heatQuestion(project, place, section))
    if (!heat.ok) return heat
    studies.push(study.value)
    const sheet = { ...look, report, sheet: `H${sheets.length + 1}`, heat: heat.value }
    const fitting = sheetScales(project, place, section, { ...sheet, paper: 'A4' })
    sheets.push(...detailSheets(project, place, section, isSome(fitting) ? { ...sheet, paper: 'A4' } : sheet))
  }
  const [first, ...more] = checkReport(project, report, { ...look, studies })
  return writeDrawings(project, [first, ...more, ...sheets], target)
}

/**
 * Writes sheets of a project with the project in them: into one file, or where the format holds one sheet, further ones
 * into files beside it with their numbers behind its name.
 */
export const writeDrawings = async (
  project: Project,
  drawings: Some<Drawing>,
  { to, format }: Target,
): Promise<Result<string>> => {
  const fonts = await fontsOf(format.fonts)
  const write = async (path: string, some: Some<Drawing>) =>
    writeWhole(path, await format.write(projectSheets(project, some), fonts))
  const [first, ...more] = drawings
  if (format.holds === 'sheets') return write(to, drawings)
  const paths: string[] = []
  for (const [at, drawing] of [first, ...more].entries()) {
    const written = await write(at === 0 ? to : besideName(to, at + 1), [drawing])
    if (!written.ok) return written
    paths.push(written.value)
  }
  return ok(paths.join('\n'))
}

/** `jamb.svg` goes on in `jamb-2.svg`. */
const besideName = (to: string, number: number): string => {
  const ending = extname(to)
  return `${to.slice(0, to.length - ending.length)}-${number}${ending}`
}

/** A scale as it stands on a sheet: paper to model. */
const scaleName = (scale: number): string => (scale > 1 ? `${scale}:1` : `1:${Math.round(1 / scale)}`)

/** The scale of an enlarged joint as it was typed. */
export const enlargedOf = (typed: string): number | 'none' =>
  enlargedScales.find(it => scaleName(it) === typed) ?? 'none'

/** Whether a sheet has an enlarged joint. */
export const hasEnlarged = ({ marks }: Drawing): boolean =>
  marks.some(it => it.kind === 'view' && it.enlarged)

const noScale = words(
  '“{0}” is no scale at which this cut fits on a sheet; it fits at {1}',
  '„{0}“ ist kein Maßstab, in dem dieser Schnitt auf ein Blatt passt; er passt in {1}',
)
const oneHeat = words(
  'heat is drawn for one cut at a time',
  'Wärme wird immer nur für einen Schnitt gezeichnet',
)
const noEnlarged = words(
  'the joint does not fit beside this cut at {0}, or would not be larger there; what can be asked for: {1}',
  'die Fuge passt in {0} nicht neben diesen Schnitt oder wäre dort nicht größer; gewählt werden kann: {1}',
)
const oneEnlarged = words(
  'the joint is drawn enlarged beside one cut with its parts; ask for one cut without its heat',
  'die Fuge wird neben einem Schnitt mit seinen Bauteilen vergrößert gezeichnet; gefragt ist ein Schnitt ohne seine Wärme',
)
const noPaper = words('this does not fit on {0} at any scale', 'das passt in keinem Maßstab auf {0}')

const fontsOf = async (names: readonly string[]): Promise<Fonts> =>
  new Map(
    await Promise.all(names.map(async name => [name, await readFile(new URL(name, fontFolder))] as const)),
  )

/** Where the fonts of the sheet lie, seen from this file and from what it is bundled into in out/cli alike. */
const fontFolder = new URL('../../assets/fonts/', import.meta.url)

const noFormat = words('“{0}” names no format; there are {1}', '„{0}“ nennt kein Format; es gibt {1}')

const wrong = (say: Words) => refused({ at: '', say })
