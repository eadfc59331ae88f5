import type { Project, ZonePlace } from '../../detail'
import type { Section } from '../../section'
import type { Language, Some } from '../../words'
import { check } from '../../rules'
import { inkOfView } from '../ink/ink-drawing'
import type { Drawing, Mark, View } from '../mark'
import { placeView } from '../place-view'
import { drawSection, sizesOf } from '../section/draw-section'
import type { ListedPart } from '../section/listed-part'
import { withSeenLayers } from '../section/listed-parts'
import { chainsAcross, chainsThrough } from '../section/section-sizes'
import { standOf, usualWindow, zoneLook } from '../section/zone-view'
import { arrange, fittingScales } from './arrange'
import { arrangedAtEnd, arrangedOver } from './arrange-over'
import { besideOf, reachOf } from './cut-room'
import { keyElevation, keySize_mm } from './key-elevation'
import type { Paper } from './paper'
import { type Arrangement, heading_mm, type LabelColumn, type Reach, type Wanted } from './room'
import { crossings } from './crossings'
import { type Enlarged, enlarge, isEnlarged, jointLetter } from './enlarged'
import { checkRuler, sheetFrame } from './frame'
import { heatBlock, heatBlockHeight_mm } from './heat-block'
import { blockHeight_mm, blockMarks, heading, headingOf, titleOfCut } from './headings'
import { drawLabels, labelBoxes, longestWord_mm, slotPitch_mm } from './labels'
import { drawLegend, legendHeight_mm, legendOf } from './legend'
import { legendMarks, notesMarks, notesOf, notesTall_mm } from './sheet-notes'
import { type Box, sideWords } from './side-words'
import { oneCutScales, oneCutSheet } from './one-cut-sheet'
import { levelAt, levelMarks, levelReach_mm, levelTakes_mm } from './level-mark'
import { listsSheet } from './lists-sheet'
import { materialsOf, saysOf, type SheetOptions, titleOf } from './sheet-options'
import { pad_mm } from './paper'

/** The first sheet of one zone: `detailSheets` without the second that it may have. */
export const detailSheet = (
  project: Project,
  place: ZonePlace,
  section: Section,
  options: SheetOptions,
): Drawing => detailSheets(project, place, section, options)[0]

/**
 * The sheets of one zone: its section true to scale with sizes, numbers and names, and what belongs to it in lists. On a
 * large sheet parts, revisions and notes stand beside the section. A small one has names and notes alone, and a second
 * sheet has the lists. The sheet of a temperature field has its scale in their place.
 */
export const detailSheets = (
  project: Project,
  place: ZonePlace,
  section: Section,
  options: SheetOptions,
): Some<Drawing> => {
  if (typeof options.enlarged !== 'number' || options.scale !== undefined)
    return sheetsAt(project, place, section, options)
  // an enlarged joint that is asked for may take its room from a cut that would fit at a larger scale
  for (const scale of sheetScales(project, place, section, options)) {
    const sheets = sheetsAt(project, place, section, { ...options, scale })
    if (sheets[0].marks.some(it => it.kind === 'view' && it.enlarged)) return sheets
  }
  return sheetsAt(project, place, section, options)
}

const sheetsAt = (
  project: Project,
  place: ZonePlace,
  section: Section,
  options: SheetOptions,
): Some<Drawing> => {
  const plan = planOf(project, place, section, options)
  const on = arrange(plan.wanted, options)
  const { scale } = on
  if (options.heat) return [labelledSheet(project, place, section, { ...options, plan, on })]
  if (options.paper !== 'A4' && (on.paper.name === 'A3' || scale < leastScale)) {
    const wanted = Math.max(scale, options.scale ?? leastScale)
    const sheet = oneCutSheet(project, place, section, options, [wanted, scale])
    if (sheet) return [sheet]
  }
  const second = listsSheet(project, { place, section }, { ...options, scale, ...numbered(options.sheet, 2) })
  if (second === undefined) return [labelledSheet(project, place, section, { ...options, plan, on })]
  return [
    labelledSheet(project, place, section, {
      ...options,
      ...numbered(options.sheet, 1),
      plan,
      on,
      sheetOf: ['1', '2'],
    }),
    second,
  ]
}

/** A cut on a large sheet is drawn at least so large where its lists leave room for that. Ours. */
const leastScale = 0.5

/** The number of a sheet that goes on: `1 / 4` is `1.1 / 4` and `1.2 / 4`. */
const numbered = (sheet: string | undefined, page: number): { readonly sheet?: string } =>
  sheet === undefined ? {} : { sheet: sheet.replace(/^\d+/, it => `${it}.${page}`) }

type Planned = SheetOptions & {
  readonly plan: ReturnType<typeof planOf>
  readonly on: Arrangement
  /** which sheet of how many, where the lists stand on a second */
  readonly sheetOf?: readonly [string, string]
}

/** A section with the names of its parts beside it, legend, notes and title block. */
const labelledSheet = (
  project: Project,
  place: ZonePlace,
  section: Section,
  { plan, on: usual, ...options }: Planned,
): Drawing => {
  const { language, sheetOf } = options
  const { look, unit } = plan
  const { on, main, joint } = withJoint(project, place, section, { plan, on: usual, ...options })
  const { view, labels, noted, key, levels } = main
  const title = headingOf(project, place)[language]
  const head = heading(project, place, { ...on, ...(sheetOf && { sheetOf }) }, { language, unit })
  const seen: View = joint ? { ...view, marks: [...view.marks, ...joint.ring] } : view
  return {
    size_mm: on.paper.size_mm,
    language,
    palette: options.palette,
    title: titleOf(project, place, language),
    says: saysOf(title, look.parts, language, joint),
    materials: materialsOf(project, section),
    marks: [
      seen,
      ...(joint ? [joint.view] : []),
      ...sheetFrame(on.paper),
      ...checkRuler(on.paper, { language, unit }),
      ...head,
      ...(joint ? joint.heading : []),
      ...sideWords(seen, [...head, ...labels, ...levels, ...noted, ...key], language, {
        room: wordsRoomOn(on),
        kept: [...notesBoxes(on), ...main.columns, ...(joint ? [joint.box] : [])],
      }),
      ...key,
      ...levels,
      ...labels,
      ...noted,
      ...blockMarks(project, titleOfCut(project, place, on, options), on.paper, { language, rows: 0 }),
    ],
  }
}

/** A section with what stands beside it, arranged in one of several ways. */
const drawMain = (
  project: Project,
  place: ZonePlace,
  section: Section,
  { plan, on, language, heat }: Planned,
) => {
  const { look, bare, legendAt, notes, level } = plan
  const columns = on.columns.map(it => ({ ...it, pitch_mm: slotPitch_mm(look.parts, it.width_mm, language) }))
  const { view, layout } = drawSection(section, {
    ...bare,
    at: on.viewAt,
    scale: on.scale,
    show: { sizes: true, numbers: true },
    columns,
    ...(heat && { heat }),
  })
  return {
    view,
    /** how many leaders cross another or strike words */
    faults: crossings([...layout.leaders.values()].map(it => it.path)) + layout.struck,
    labels: drawLabels(look.parts, layout, columns, language),
    columns: labelBoxes(layout, columns),
    noted: [
      ...legendMarks(
        on,
        heat
          ? heatBlock(heat, on.legend, language)
          : drawLegend(legendAt(on.scale), on.legend.at, on.legend.width_mm, language),
      ),
      ...notesMarks(on, notes, language),
    ],
    key: keyBeside(project, place, { ...on, view, columns, language }),
    levels:
      level && on.levelX !== undefined
        ? levelMarks(level, [on.levelX, placeView(view).toPaper([0, 0])[1]], view.scale)
        : [],
  }
}

/** A section with its joint enlarged where it is wanted and has room: moved aside for it where that makes it larger. */
const withJoint = (project: Project, place: ZonePlace, section: Section, planned: Planned) => {
  const { plan, on: usual, enlarged, heat } = planned
  const main = drawMain(project, place, section, planned)
  const none = { on: usual, main, joint: undefined }
  if (heat || !isEnlarged(enlarged, usual.scale)) return none
  const upright = plan.bare.turn_deg === 270
  const other = upright ? arrangedAtEnd(usual, plan.wanted) : arrangedOver(usual, plan.wanted)
  let best: { on: Arrangement; main: ReturnType<typeof drawMain>; joint: Enlarged } | undefined
  for (const on of [usual, ...(other ? [other] : [])]) {
    const drawn = on === usual ? main : drawMain(project, place, section, { ...planned, on })
    if (on !== usual && drawn.faults > 0) continue
    const { labels, noted, key, levels } = drawn
    const joint = enlarge(
      { section, look: plan.bare, letter: jointLetter },
      drawn.view,
      {
        room: roomOn(on),
        marks: [drawn.view, ...labels, ...noted, ...key, ...levels],
        kept: notesBoxes(on),
      },
      enlarged,
    )
    if (joint && (best === undefined || joint.rank < best.joint.rank)) best = { on, main: drawn, joint }
  }
  return best ?? none
}

/** Between heading and legend. */
const roomOn = ({ paper, legend }: Arrangement): Box => {
  const [[x0], [x1, y1]] = paper.frame
  return [[x0, legend.at[1] + pad_mm], [x1, y1 - heading_mm]] // prettier-ignore
}

/** The same for words, which stand off the frame. */
const wordsRoomOn = (on: Arrangement): Box => {
  const [[x0, y0], [x1, y1]] = roomOn(on)
  return [[x0 + pad_mm, y0], [x1 - pad_mm, y1]] // prettier-ignore
}

/** The column of notes beside a view, down to the line below it: no other words stand among them. */
const notesBoxes = ({ notes, legend }: Arrangement): readonly Box[] => {
  const [x, y] = notes.at
  return notes.beside ? [[[x, legend.at[1]], [x + notes.width_mm, y]]] : [] // prettier-ignore
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
): readonly number[] => {
  const listed = options.heat || options.paper === 'A4' ? [] : oneCutScales(project, place, section, options)
  const labelled = fittingScales(planOf(project, place, section, options).wanted, options.paper)
  return [...new Set([...listed, ...labelled])].toSorted((a, b) => b - a)
}

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
  const zone = zoneLook(project, place, language, unit)
  const look = { ...zone, parts: withSeenLayers(zone.parts, section) }
  const stand = standOf[place.side]
  const window = usualWindow(project, place, section)
  const parts = new Map(look.parts.flatMap(it => it.of.map(of => [of, it] as const)))
  const bare = { ...look, ...stand, window, at: [0, 0] as const, show: { sizes: false, numbers: false } }
  const { view } = drawSection(section, { ...bare, scale: 0.5 })
  const legendAt = (scale: number) => legendOf(view, scale)
  const notes = notesOf(project, place, report, unit)
  const level = heat ? undefined : levelAt(project, place, { language, unit, section })
  // a scale is asked for on several sheets
  const chains = new Map<number, { readonly reach: Reach; readonly beside: readonly [number, number] }>()
  const chainsAt = (scale: number) => {
    const known = chains.get(scale)
    if (known) return known
    const at0 = { ...bare, scale }
    const sizes = sizesOf(section, at0, parts)
    const beside = withLevels(besideOf(sizes, at0), level && levelReach_mm(level, scale, window[0][0]))
    const found = { reach: reachOf(sizes, at0), beside }
    chains.set(scale, found)
    return found
  }
  const wanted: Wanted = {
    window,
    stand,
    chains: {
      through: chainsThrough(section, window, parts, look.sizes).length,
      across: chainsAcross(section, parts, look.sizes).length,
    },
    coverTo_mm: coverTo_mm(section, look.parts),
    legendHeight_mm: (width, scale) =>
      heat ? heatBlockHeight_mm(width) : legendHeight_mm(legendAt(scale).length, width),
    notesHeight_mm: (width, beside) => notesTall_mm(notes, width, beside, language),
    labels: look.parts.length,
    longestWord_mm: longestWord_mm(look.parts, language),
    labelPitch_mm: width => slotPitch_mm(look.parts, width, language),
    blockHeight_mm: blockHeight_mm(project, 0),
    level_mm: level ? levelTakes_mm(level) : 0,
    reach: scale => chainsAt(scale).reach,
    beside: scale => chainsAt(scale).beside,
  }
  return { look, bare, legendAt, notes, level, wanted, unit }
}

/** The heights of chains beside a view with those of its levels, which stand further out. */
const withLevels = (
  [low, high]: readonly [number, number],
  levels: readonly [number, number] | undefined,
): readonly [number, number] => (levels ? [Math.min(low, levels[0]), Math.max(high, levels[1])] : [low, high])

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
