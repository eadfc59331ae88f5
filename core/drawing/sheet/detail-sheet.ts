import { materialOf, openingOf, type Project, type ZonePlace } from '../../detail'
import type { Id } from '../../geometry'
import { sideName } from '../../kinds'
import { practiceOf } from '../../practice'
import type { Section } from '../../section'
import { filled, type Language, same, type Words, words } from '../../words'
import type { Drawing, Mark, Palette } from '../mark'
import { drawSection } from '../section/draw-section'
import { chainsAcross, chainsThrough } from '../section/section-sizes'
import { standOf, usualWindow, zoneLook } from '../section/zone-view'
import type { ListedPart } from '../section/listed-part'
import { heights } from '../text/lettering'
import { arrange, fittingScales, type Arrangement, type Wanted } from './arrange'
import { assumedAt, firstOf } from './assumed'
import { checkRuler, scaleBar, scaleBarLength_mm, sheetFrame } from './frame'
import { drawLabels, slotPitch_mm } from './labels'
import { drawLegend, type LegendEntry, legendHeight_mm, legendOf } from './legend'
import { line, text } from './marks'
import {
  assumedHeading,
  cautions,
  cautionsHeading,
  drawNotes,
  nothingAssumed,
  type Notes,
  notesHeight_mm,
} from './notes'
import { titleBlock_mm } from './paper'
import { sideWords } from './side-words'
import type { TitleField } from './title-block'

/** What a sheet says beyond the model: nothing of it is read from a clock or guessed. */
export type SheetOptions = {
  readonly language: Language
  readonly palette: Palette
  /** fields of the title block; what is left out and not in the project prints as a line to write on */
  readonly title?: { readonly [F in TitleField]?: string }
  readonly sheet?: string
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
  const { language } = options
  const { look, bare, legend, notes, wanted } = planOf(project, place, section, language)
  const on = arrange(wanted, options.scale)
  const columns = on.columns.map(it => ({ ...it, pitch_mm: slotPitch_mm(look.parts, it.width_mm, language) }))
  const { view, layout } = drawSection(section, {
    ...bare,
    at: on.viewAt,
    scale: on.scale,
    show: { sizes: true, numbers: true },
    columns,
  })
  const labels = drawLabels(look.parts, layout, columns, language)
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
      ...checkRuler(on.paper, language),
      ...heading(project, place, on, language),
      ...sideWords(view, labels, language),
      ...labels,
      ...legendMarks(on, legend, language),
      ...notesMarks(on, notes, language),
      titleBlockMark(project, place, on, options),
    ],
  }
}

/** The scales at which a sheet of a zone can be drawn, the largest first. */
export const sheetScales = (
  project: Project,
  place: ZonePlace,
  section: Section,
  language: Language,
): readonly number[] => fittingScales(planOf(project, place, section, language).wanted)

/** What stands on a sheet, and the room that it wants. */
const planOf = (project: Project, place: ZonePlace, section: Section, language: Language) => {
  const look = zoneLook(project, place, language)
  const stand = standOf[place.side]
  const window = usualWindow(project, place, section)
  const parts = new Map(look.parts.flatMap(it => it.of.map(of => [of, it] as const)))
  const bare = { ...look, ...stand, window, at: [0, 0] as const, show: { sizes: false, numbers: false } }
  const legend = legendOf(drawSection(section, { ...bare, scale: 0.5 }).view)
  const notes = notesOf(project, place)
  const wanted: Wanted = {
    window,
    stand,
    chains: {
      through: chainsThrough(section, window, parts, look.sizes).length,
      across: chainsAcross(section, parts, look.sizes).length,
    },
    coverTo_mm: coverTo_mm(section, look.parts),
    legendHeight_mm: width => legendHeight_mm(legend.length, width),
    notesHeight_mm: (width, beside) => notesTall_mm(notes, width, beside, language),
    labels: look.parts.length,
    labelPitch_mm: width => slotPitch_mm(look.parts, width, language),
  }
  return { look, bare, legend, notes, wanted }
}

const gap_mm = 4.4
const besideGap_mm = 1.6

const headings = {
  left: [words('Left jamb', 'Leibung links'), words('horizontal section', 'Horizontalschnitt')],
  right: [words('Right jamb', 'Leibung rechts'), words('horizontal section', 'Horizontalschnitt')],
  head: [words('Head', 'Sturz'), words('vertical section', 'Vertikalschnitt')],
  sill: [words('Sill', 'Brüstung'), words('vertical section', 'Vertikalschnitt')],
} as const

const headingOf = (place: ZonePlace): Words => filled(same('{0}, {1}'), ...headings[place.side])

const scaleWords = (scale: number): string => `1:${Math.round(1 / scale)}`

const heading = (
  project: Project,
  place: ZonePlace,
  on: Arrangement,
  language: Language,
): readonly Mark[] => {
  const [x, y] = on.headingAt
  const [name, cut] = headings[place.side]
  const sub = filled(
    words('{0}, {1} · scale {2} · sizes in mm', '{0}, {1} · Maßstab {2} · Maße in mm'),
    openingOf(project, place.opening).name,
    cut,
    scaleWords(on.scale),
  )
  const right = on.paper.frame[1][0] - 10 - scaleBarLength_mm(on.scale)
  return [
    text(name[language], [x, y], { height_mm: heights.title_mm, bold: true }),
    text(sub[language], [x, y - 6.2], { height_mm: heights.subtitle_mm, faint: true }),
    ...scaleBar([right, y], on.scale),
  ]
}

const notesOf = (project: Project, place: ZonePlace): readonly Notes[] => {
  const assumed = firstOf(assumedAt(project, place), 6)
  const practice = practiceOf(project.practice)
  const rests = filled(
    words('Limits: {0}, edition {1}.', 'Grenzwerte: {0}, Ausgabe {1}.'),
    practice.name,
    practice.edition,
  )
  return [
    { heading: assumedHeading, notes: assumed.length > 0 ? assumed : [nothingAssumed], assumed: true },
    { heading: cautionsHeading, notes: [rests, ...cautions] },
  ]
}

const columnShare = 0.4

const noteWidths = (width_mm: number): readonly [number, number] => [
  width_mm * columnShare - 4,
  width_mm * (1 - columnShare),
]

const notesTall_mm = (
  notes: readonly Notes[],
  width_mm: number,
  beside: boolean,
  language: Language,
): number =>
  beside
    ? notes.reduce(
        (sum, it) => sum + notesHeight_mm(it, width_mm, language),
        (notes.length - 1) * besideGap_mm,
      )
    : Math.max(...notes.map((it, at) => notesHeight_mm(it, noteWidths(width_mm)[at] ?? width_mm, language)))

const legendMarks = (
  on: Arrangement,
  legend: readonly LegendEntry[],
  language: Language,
): readonly Mark[] => {
  const {
    at: [x, top],
    width_mm,
  } = on.legend
  return [
    line('field', [x - pad_mm, top + pad_mm], [x + width_mm + pad_mm, top + pad_mm]),
    ...[x - pad_mm, x + width_mm + pad_mm].map(side =>
      line('field', [side, top + pad_mm], [side, on.paper.frame[0][1]]),
    ),
    ...drawLegend(legend, [x, top], width_mm, language),
  ]
}

const notesMarks = (on: Arrangement, notes: readonly Notes[], language: Language): readonly Mark[] => {
  const {
    at: [x, top],
    width_mm,
    beside,
  } = on.notes
  if (!beside) {
    const widths = noteWidths(width_mm)
    return [
      line('field', [x - pad_mm, top + gap_mm / 2], [x + width_mm + pad_mm, top + gap_mm / 2]),
      ...notes.flatMap((it, at) =>
        drawNotes(it, [at === 0 ? x : x + width_mm * columnShare, top], widths[at] ?? width_mm, language),
      ),
    ]
  }
  let y = top
  return notes.flatMap(it => {
    const marks = drawNotes(it, [x, y], width_mm, language)
    y -= notesHeight_mm(it, width_mm, language) + besideGap_mm
    return marks
  })
}

/** The end of the wall before the frame: the largest place across that a layer reaches. */
const coverTo_mm = (section: Section, parts: readonly ListedPart[]): number => {
  const layers = new Set(parts.filter(it => it.role === 'layer').flatMap(it => it.of))
  return Math.max(
    0,
    ...section.regions.filter(it => layers.has(it.part)).flatMap(it => it.outline.map(([x]) => x)),
  )
}

/** Between the frame and what stands in it. */
const pad_mm = 3

const draft = words('Draft, not for construction', 'Entwurf, nicht zur Ausführung')
const detailDrawing = words('Detail drawing', 'Detailzeichnung')

const titleBlockMark = (project: Project, place: ZonePlace, on: Arrangement, options: SheetOptions): Mark => {
  const { title } = project
  const { language } = options
  const [right, low] = [on.paper.frame[1][0], on.paper.frame[0][1]]
  return {
    kind: 'symbol',
    layer: 'sheet',
    name: 'title-block',
    at: [right - titleBlock_mm[0], low],
    values: {
      owner: title.office,
      title: title.note,
      subtitle: `${openingOf(project, place.opening).name}, ${sideName[place.side][language]}`,
      creator: title.author,
      type: detailDrawing[language],
      status: draft[language],
      project: [title.name, title.place].filter(it => it !== '').join(', '),
      number: title.number,
      language,
      scale: scaleWords(on.scale),
      size: on.paper.name,
      sheet: options.sheet ?? '',
      ...options.title,
    },
  }
}

const saysOf = (title: string, parts: readonly string[], language: Language): string =>
  `${title}. ${filled(words('Parts from outside to inside: {0}.', 'Bauteile von außen nach innen: {0}.'), parts.join('; '))[language]}`

/** What each part is mostly made of. */
const materialsOf = (project: Project, section: Section): ReadonlyMap<Id, Id> => {
  const materials = new Map<Id, Id>()
  for (const { part, fill } of section.regions)
    if (fill.kind === 'material' && !materials.has(part) && materialOf(project, fill.material))
      materials.set(part, fill.material)
  return materials
}
