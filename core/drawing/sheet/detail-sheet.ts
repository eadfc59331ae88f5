import { materialOf, openingOf, type Project, type ZonePlace } from '../../detail'
import type { Id } from '../../geometry'
import type { Section } from '../../section'
import { filled, type Language, words } from '../../words'
import { check, type Report } from '../../rules'
import { inkOfView } from '../ink/ink-drawing'
import type { Drawing, Mark, Palette, View } from '../mark'
import type { HeatPicture } from '../heat/picture'
import { drawSection } from '../section/draw-section'
import type { ListedPart } from '../section/listed-part'
import { chainsAcross, chainsThrough } from '../section/section-sizes'
import { standOf, usualWindow, zoneLook } from '../section/zone-view'
import type { LengthUnit } from '../sizes/lengths'
import { arrange, fittingScales } from './arrange'
import { keyElevation, keySize_mm } from './key-elevation'
import type { Paper } from './paper'
import { heading_mm, type LabelColumn, type Wanted } from './room'
import { checkRuler, sheetFrame } from './frame'
import { heatBlock, heatBlockHeight_mm } from './heat-block'
import { blockHeight_mm, blockMarks, heading, headingOf, titleOfCut } from './headings'
import { drawLabels, slotPitch_mm } from './labels'
import { drawLegend, legendHeight_mm, legendOf } from './legend'
import { legendMarks, notesMarks, notesOf, notesTall_mm } from './sheet-notes'
import { sideWords } from './side-words'
import type { TitleField } from './title-block'

/** What a sheet says beyond the model: nothing of it is read from a clock or guessed. */
export type SheetOptions = {
  readonly language: Language
  readonly palette: Palette
  /** fields of the title block; what is left out and not in the project prints as a line to write on */
  readonly title?: { readonly [F in TitleField]?: string }
  /** number of the sheet, `2 / 4` */
  readonly sheet?: string
  /** what lengths are written in; absent: millimetres */
  readonly unit?: LengthUnit
  /** absent: the smallest sheet that everything fits on */
  readonly paper?: 'A4' | 'A3'
  /** verdicts of the project; absent: they are found */
  readonly report?: Report
  /** the temperature field of the cut, drawn into it, with its scale and its surface in the place of the legend */
  readonly heat?: HeatPicture
  /** paper mm per model mm, one of `sheetScales`; absent: the largest that fits on the smallest sheet */
  readonly scale?: number
}

/** A sheet of one zone: its section true to scale with sizes, numbers and names, legend, notes and title block. */
export const detailSheet = (
  project: Project,
  place: ZonePlace,
  section: Section,
  options: SheetOptions,
): Drawing => {
  const { language, heat } = options
  const { look, bare, legend, notes, wanted, unit } = planOf(project, place, section, options)
  const on = arrange(wanted, options)
  const columns = on.columns.map(it => ({ ...it, pitch_mm: slotPitch_mm(look.parts, it.width_mm, language) }))
  const { view, layout } = drawSection(section, {
    ...bare,
    at: on.viewAt,
    scale: on.scale,
    show: { sizes: true, numbers: true },
    columns,
    ...(heat && { heat }),
  })
  const labels = drawLabels(look.parts, layout, columns, language)
  const noted = [
    ...legendMarks(
      on,
      heat
        ? heatBlock(heat, on.legend, language)
        : drawLegend(legend, on.legend.at, on.legend.width_mm, language),
    ),
    ...notesMarks(on, notes, language),
  ]
  const head = heading(project, place, on, { language, unit })
  const key = keyBeside(project, place, { ...on, view, columns, language })
  const title = headingOf(place)[language]
  return {
    size_mm: on.paper.size_mm,
    language,
    palette: options.palette,
    title: `${title}, ${openingOf(project, place.opening).name}`,
    says: saysOf(
      title,
      look.parts.map(it => `${it.number} ${it.name[language]}`),
      language,
    ),
    materials: materialsOf(project, section),
    marks: [
      view,
      ...sheetFrame(on.paper),
      ...checkRuler(on.paper, { language, unit }),
      ...head,
      ...sideWords(view, [...head, ...labels, ...noted, ...key], language),
      ...key,
      ...labels,
      ...noted,
      ...blockMarks(project, titleOfCut(project, place, on, options), on.paper, { language, rows: 0 }),
    ],
  }
}

/** Between the key elevation and what stands beside it. Ours. */
const besideKey_mm = 4

/** Where the cut is taken, on sheets with room beside their view: an elevation with the plane of the cut. */
const keyBeside = (
  project: Project,
  { opening, side }: ZonePlace,
  on: {
    readonly paper: Paper
    readonly view: View
    readonly columns: readonly LabelColumn[]
    readonly language: Language
  },
): readonly Mark[] => {
  const [[x0], [x1, y1]] = on.paper.frame
  const sizes = inkOfView(on.view, { palette: 'black', language: on.language }).flatMap(it => it.inks)
  const taken = sizes.flatMap(it =>
    it.kind === 'stroke' ? it.lines.flatMap(line => line.filter((_, at) => at % 2 === 0)) : [],
  )
  const words = on.columns.map(it => (it.side === 'left' ? it.x - it.width_mm - 8 : it.x + it.width_mm + 8))
  const [left, right] = [Math.min(...taken, ...words), Math.max(...taken, ...words)]
  const [width, height] = keySize_mm
  const y = y1 - heading_mm - height - besideKey_mm
  const upright = side === 'head' || side === 'sill'
  const draw = (x: number) => keyElevation(project, opening, [{ letter: 'A', upright }], [x, y], on.language)
  if (left - x0 >= width + 2 * besideKey_mm) return draw(x0 + besideKey_mm)
  return x1 - right >= width + 2 * besideKey_mm ? draw(x1 - besideKey_mm - width) : []
}

/** The scales at which a sheet of a zone can be drawn, the largest first. */
export const sheetScales = (
  project: Project,
  place: ZonePlace,
  section: Section,
  options: Pick<SheetOptions, 'language' | 'unit' | 'report' | 'paper' | 'heat'>,
): readonly number[] => fittingScales(planOf(project, place, section, options).wanted, options.paper)

/** What stands on a sheet, and the room that it wants. */
const planOf = (
  project: Project,
  place: ZonePlace,
  section: Section,
  {
    language,
    unit = 'mm',
    report = check(project),
    heat,
  }: Pick<SheetOptions, 'language' | 'unit' | 'report' | 'heat'>,
) => {
  const look = zoneLook(project, place, language, unit)
  const stand = standOf[place.side]
  const window = usualWindow(project, place, section)
  const parts = new Map(look.parts.flatMap(it => it.of.map(of => [of, it] as const)))
  const bare = { ...look, ...stand, window, at: [0, 0] as const, show: { sizes: false, numbers: false } }
  const legend = legendOf(drawSection(section, { ...bare, scale: 0.5 }).view)
  const notes = notesOf(project, place, report, unit)
  const wanted: Wanted = {
    window,
    stand,
    chains: {
      through: chainsThrough(section, window, parts, look.sizes).length,
      across: chainsAcross(section, parts, look.sizes).length,
    },
    coverTo_mm: coverTo_mm(section, look.parts),
    legendHeight_mm: width => (heat ? heatBlockHeight_mm(width) : legendHeight_mm(legend.length, width)),
    notesHeight_mm: (width, beside) => notesTall_mm(notes, width, beside, language),
    labels: look.parts.length,
    labelPitch_mm: width => slotPitch_mm(look.parts, width, language),
    blockHeight_mm: blockHeight_mm(project, 0),
  }
  return { look, bare, legend, notes, wanted, unit }
}

/** The end of the wall and of the frame: the largest place across that a layer or the frame reaches. */
const coverTo_mm = (section: Section, parts: readonly ListedPart[]): number => {
  const fixed = new Set(
    [
      ...parts.filter(it => it.role === 'layer'),
      ...parts.filter(it => it.role === 'frame').slice(0, 1),
    ].flatMap(it => it.of),
  )
  return Math.max(
    0,
    ...section.regions.filter(it => fixed.has(it.part)).flatMap(it => it.outline.map(([x]) => x)),
  )
}

const saysOf = (title: string, parts: readonly string[], language: Language): string =>
  `${title}. ${filled(words('Parts from outside to inside: {0}.', 'Bauteile von außen nach innen: {0}.'), parts.join('; '))[language]}`

/** What each part is mostly made of. */
export const materialsOf = (project: Project, section: Section): ReadonlyMap<Id, Id> => {
  const materials = new Map<Id, Id>()
  for (const { part, fill } of section.regions)
    if (fill.kind === 'material' && !materials.has(part) && materialOf(project, fill.material))
      materials.set(part, fill.material)
  return materials
}
