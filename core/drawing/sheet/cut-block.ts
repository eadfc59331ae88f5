import type { Project, ZonePlace } from '../../detail'
import type { Point } from '../../geometry'
import type { Section } from '../../section'
import { filled, type Language, same } from '../../words'
import type { Mark, View, ViewMark } from '../mark'
import { placeView } from '../place-view'
import type { Column } from '../labels/lay-out'
import { drawSection, type Numbered, numberSection, sizesOf } from '../section/draw-section'
import type { ListedPart } from '../section/listed-part'
import { chainsAcross, chainsThrough } from '../section/section-sizes'
import { standOf, usualWindow, zoneLook } from '../section/zone-view'
import type { LengthUnit } from '../sizes/lengths'
import { callout } from '../style/spacing'
import { heights } from '../text/lettering'
import { cutHeading, scaleWords } from './headings'
import { text } from './marks'
import { levelAt, levelMarks, levelTakes_mm } from './level-mark'
import { margins, onPaper } from './room'
import { sideWords } from './side-words'

/** One of several cuts on a sheet, with the letter of its plane. */
export type Cut = {
  readonly place: ZonePlace
  readonly section: Section
  readonly letter: string
}

/** A cut with its title, its sizes and its numbers, to be put on a sheet: how large it is, and how it is drawn. */
export type CutBlock = {
  readonly size_mm: Point
  /** `at` is the lower left corner; marks stand beside the view */
  readonly draw: (at: Point) => {
    readonly view: View
    readonly marks: readonly Mark[]
  }
}

/** What the title of a cut takes above it, and words for inside and outside where they have no room beside it. */
const title_mm = 8
const sideWord_mm = 10
/** Numbers without words stand this far apart, and this far off a break line. Ours. */
const pitch_mm = 6.4
const offEnd_mm = 3

/** How far numbers stand off the picture, and how much higher their column is than it must be. */
type Try = { readonly way_mm: number; readonly more_mm: number }

/** At small scales leaders need room for their slopes: tried in this order until none crosses another. Ours. */
const tries: readonly Try[] = [
  { way_mm: 5.5, more_mm: 0 },
  { way_mm: 14, more_mm: 0 },
  { way_mm: 14, more_mm: 14 },
  { way_mm: 20, more_mm: 14 },
  { way_mm: 20, more_mm: 28 },
]

/** A cut at a scale: close, or with more room for its numbers where that keeps leaders from crossing. */
export type CutBlocks = {
  readonly close: CutBlock
  /** the first of so many ways without a conflict, or the one with the fewest */
  readonly roomy: (tries: number) => CutBlock
}

export const mostTries = tries.length

/** A cut at a scale. Numbers stand in one column beside it, off its chains, names in the list of parts. */
export const cutBlocks = (
  project: Project,
  { place, section, letter }: Cut,
  parts: readonly ListedPart[],
  how: {
    readonly scale: number
    readonly language: Language
    readonly unit: LengthUnit
    /** whether its title stands over it: a single cut has the title of its sheet */
    readonly titled: boolean
    /** whether levels stand beside it, where the model holds them */
    readonly levels: boolean
    /** what its numbers point at; absent: every part */
    readonly numbered?: readonly ListedPart[]
  },
): CutBlocks => {
  const { scale, language, unit, titled, levels } = how
  const level = levels ? levelAt(project, place, how) : undefined
  const shown = parts.filter(it => isThere(it, section))
  const numbered = how.numbered?.filter(it => isThere(it, section)) ?? shown
  const look = {
    ...zoneLook(project, place, language, unit),
    ...standOf[place.side],
    parts: shown,
    window: usualWindow(project, place, section),
    scale,
  }
  const byPart = new Map(shown.flatMap(it => it.of.map(of => [of, it] as const)))
  const chains = {
    through: chainsThrough(section, look.window, byPart, look.sizes).length,
    across: chainsAcross(section, byPart, look.sizes).length,
  }
  const at0 = { ...look, at: [0, 0] } as const
  const sizes = sizesOf(section, at0, byPart)
  const reach = reachOf(sizes, at0)
  const rooms = tries.map(it =>
    roomOf(it, {
      ...look,
      chains,
      reach,
      count: numbered.length,
      title_mm: titled ? title_mm : 0,
      level_mm: level ? levelTakes_mm(level) : 0,
    }),
  )
  // A way is laid out once, however often it is asked for.
  const laid: Numbered[] = []
  const numbersOf = (at: number): Numbered =>
    (laid[at] ??= numberSection(
      section,
      { ...at0, columns: [rooms[at]?.column ?? noColumn] },
      sizes,
      numbered,
    ))
  const blockOf = (at: number): CutBlock => {
    const { size_mm, viewAt, chains_mm } = rooms[at] ?? noRoom
    return {
      size_mm,
      draw: ([x, y]) => {
        const show = { sizes: true, numbers: false } as const
        const { view: bare } = drawSection(section, {
          ...look,
          at: [x + viewAt[0], y + viewAt[1]],
          show,
        })
        const view: View = {
          ...bare,
          marks: [...bare.marks, ...numbersOf(at).marks],
        }
        const beside = level
          ? levelMarks(level, [view.at[0] - chains_mm, placeView(view).toPaper([0, 0])[1]])
          : []
        const head = titled ? titleMarks({ place, letter, scale, language }, [x, y + size_mm[1] - 5]) : []
        return {
          view,
          marks: [
            ...head,
            ...beside,
            ...sideWords(view, [...head, ...beside], language, [
              [x, y],
              [x + size_mm[0], y + size_mm[1]],
            ]),
          ],
        }
      },
    }
  }
  return {
    close: blockOf(0),
    roomy: count => {
      let best = 0
      for (let at = 0; at < Math.min(count, tries.length); at++) {
        if (faultsOf(numbersOf(at)) < faultsOf(numbersOf(best))) best = at
        if (faultsOf(numbersOf(best)) === 0) break
      }
      return blockOf(best)
    },
  }
}

const faultsOf = ({ layout }: Numbered): number => layout.conflicts + layout.struck

/** How large a cut is with the room of a try, where its view stands in that, and its column of numbers from the view. */
type Room = {
  readonly size_mm: Point
  readonly viewAt: Point
  readonly column: Column
  /** how far chains reach to the left of the view */
  readonly chains_mm: number
}

const noColumn: Column = { side: 'right', x: 0, low: 0, high: 0, pitch_mm }
const noRoom: Room = {
  size_mm: [0, 0],
  viewAt: [0, 0],
  column: noColumn,
  chains_mm: 0,
}

/** A column starts at the end where no chains stand and grows past the other only where it must. */
const roomOf = (
  { way_mm, more_mm }: Try,
  of: Pick<View, 'turn_deg' | 'mirrored' | 'window' | 'scale'> & {
    readonly chains: { readonly through: number; readonly across: number }
    readonly reach: readonly [low: Point, high: Point]
    readonly count: number
    readonly title_mm: number
    /** what a level takes beside the chains */
    readonly level_mm: number
  },
): Room => {
  const stand = { turn_deg: of.turn_deg, mirrored: of.mirrored }
  const usual = margins({ stand, chains: of.chains })
  const [width, height] = onPaper({ window: of.window, stand }, of.scale)
  const [low, high] = of.reach
  const margin = {
    left: Math.max(usual.left, -low[0]),
    right: Math.max(usual.right, high[0] - width),
    top: Math.max(usual.top, high[1] - height),
    bottom: Math.max(usual.bottom, -low[1]),
  }
  const level = of.turn_deg === 0
  const extra = Math.max(0, (of.count - 1) * pitch_mm + more_mm + 2 * offEnd_mm - height)
  const [up, down] = level || of.mirrored ? [extra, 0] : [0, extra]
  const above = Math.max(margin.top, up) + (level ? sideWord_mm : 0)
  const below = Math.max(margin.bottom, down)
  // chains through the wall stand at its cut end: numbers at the other
  const atLeft = level && of.mirrored
  const column: Column = {
    side: atLeft ? 'left' : 'right',
    x: atLeft ? -margin.left - way_mm : width + margin.right + way_mm,
    low: offEnd_mm - down,
    high: height - offEnd_mm + up,
    pitch_mm,
  }
  const beside = way_mm + callout.balloon_mm
  return {
    chains_mm: margin.left,
    size_mm: [
      of.level_mm + margin.left + width + margin.right + beside,
      below + height + above + of.title_mm,
    ],
    viewAt: [of.level_mm + margin.left + (atLeft ? beside : 0), below],
    column,
  }
}

/** How far chains reach, raised words included: lower left and upper right corner, from the corner of the view. */
const reachOf = (
  sizes: readonly ViewMark[],
  on: Parameters<typeof placeView>[0],
): readonly [Point, Point] => {
  const { toPaper } = placeView(on)
  const places = sizes.flatMap((mark): readonly Point[] =>
    mark.kind === 'dimension'
      ? [mark.line, mark.text].map(toPaper)
      : mark.kind === 'path'
        ? mark.points.map(toPaper)
        : [],
  )
  const off = heights.size_mm + 0.8
  return [
    [Math.min(0, ...places.map(it => it[0] - off)), Math.min(0, ...places.map(it => it[1] - off))],
    [Math.max(0, ...places.map(it => it[0])), Math.max(0, ...places.map(it => it[1] + off))],
  ]
}

/** The title of a cut with the letter of its plane, and its scale below. */
const titleMarks = (
  {
    place,
    letter,
    scale,
    language,
  }: Pick<Cut, 'place' | 'letter'> & {
    readonly scale: number
    readonly language: Language
  },
  [x, y]: Point,
): readonly Mark[] => {
  const [name, cut] = cutHeading(place.side)
  const title = filled(same(letter === '' ? '{0}' : `${letter}   {0}`), name)[language]
  return [
    text(title, [x, y], { height_mm: heights.subtitle_mm, bold: true }),
    text(`${cut[language]} · ${scaleWords(scale)}`, [x, y - 4.4], {
      faint: true,
    }),
  ]
}

/** Whether a part is in a section at all: a list of several cuts has parts that one of them lacks. */
const isThere = (part: ListedPart, section: Section): boolean =>
  section.regions.some(it => part.of.includes(it.part)) ||
  section.lines.some(it => part.of.includes(it.part)) ||
  section.seen.some(it => part.of.includes(it.part))
