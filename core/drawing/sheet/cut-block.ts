import type { Project, ZonePlace } from '../../detail'
import type { Point } from '../../geometry'
import type { Section } from '../../section'
import { filled, type Language, same } from '../../words'
import type { Mark, View, ViewMark } from '../mark'
import { placeView } from '../place-view'
import { drawSection, type Numbered, numberSection, sizesOf } from '../section/draw-section'
import type { ListedPart } from '../section/listed-part'
import { isThere } from '../section/listed-parts'
import { chainsAcross, chainsThrough } from '../section/section-sizes'
import { standOf, usualWindow, zoneLook } from '../section/zone-view'
import type { LengthUnit } from '../sizes/lengths'
import { heights } from '../text/lettering'
import { cutHeadingAt, scaleWords } from './headings'
import { text } from './marks'
import { noColumn, noReach, noRoom, reachOf, type Room, roomsOf, tries } from './cut-room'
import { type Level, levelAt, levelMarks, levelTakes_mm } from './level-mark'
import { sideWords } from './side-words'

/** One of several cuts on a sheet, with the letter of its plane. */
export type Cut = { readonly place: ZonePlace; readonly section: Section; readonly letter: string }

/** A cut with its title, its sizes and its numbers, to be put on a sheet: how large it is, and how it is drawn. */
export type CutBlock = {
  readonly size_mm: Point
  /** `at` is the lower left corner; marks stand beside the view */
  readonly draw: (at: Point) => { readonly view: View; readonly marks: readonly Mark[] }
}

/** What the title of a cut takes above it. */
const title_mm = 8

/** A cut at a scale: close, or with more room for its numbers where that keeps leaders from crossing. */
export type CutBlocks = {
  readonly close: CutBlock
  /**
   * the first of so many ways without a conflict, or the one with the fewest; none is laid out from the first on that is
   * too large
   */
  readonly roomy: (tries: number, fits?: (block: CutBlock) => boolean) => CutBlock
}

export const mostTries = tries.length

/** How a cut is shown, at whatever scale. */
type Shown = {
  readonly language: Language
  readonly unit: LengthUnit
  /** whether its title stands over it: a single cut has the title of its sheet */
  readonly titled: boolean
  /** what its numbers point at; absent: every part */
  readonly numbered?: readonly ListedPart[]
}

/** A cut at a scale. Numbers stand in one column beside it, off its chains, names in the list of parts. */
export const cutBlocks = (
  project: Project,
  cut: Cut,
  parts: readonly ListedPart[],
  how: Shown & {
    readonly scale: number
    /** whether levels stand beside it, where the model holds them */
    readonly levels: boolean
  },
): CutBlocks => scaledCut(project, cut, parts, how).at(how.scale, how.levels)

/** A cut that is tried at several scales, with its levels and without: what these have in common is laid out once. */
export type ScaledCut = {
  /** what it takes at a scale at the least: known without laying out a chain or a number */
  readonly least_mm: (scale: number) => Point
  readonly at: (scale: number, levels: boolean) => CutBlocks
}

export const scaledCut = (
  project: Project,
  { place, section, letter }: Cut,
  parts: readonly ListedPart[],
  how: Shown,
): ScaledCut => {
  const { language, unit, titled } = how
  const shown = parts.filter(it => isThere(it, section))
  const numbered = how.numbered?.filter(it => isThere(it, section)) ?? shown
  const look = {
    ...zoneLook(project, place, language, unit),
    ...standOf[place.side],
    parts: shown,
    window: usualWindow(project, place, section),
  }
  const byPart = new Map(shown.flatMap(it => it.of.map(of => [of, it] as const)))
  const wanted = {
    ...look,
    chains: {
      through: chainsThrough(section, look.window, byPart, look.sizes).length,
      across: chainsAcross(section, byPart, look.sizes).length,
    },
    count: numbered.length,
    title_mm: titled ? title_mm : 0,
  }
  const laidAt = (scale: number): Laid => {
    const at0 = { ...look, scale, at: [0, 0] } as const
    const sizes = sizesOf(section, at0, byPart)
    const rooms = roomsOf({ ...wanted, scale, reach: reachOf(sizes, at0) })
    // A way is laid out once, however often it is asked for.
    const laid: Numbered[] = []
    return {
      sizes,
      rooms,
      numbersOf: at =>
        (laid[at] ??= numberSection(
          section,
          { ...at0, columns: [rooms[at]?.column ?? noColumn] },
          sizes,
          numbered,
        )),
    }
  }
  const known = new Map<number, Laid>()
  const blocksAt = (scale: number, level: Level | undefined): CutBlocks => {
    const { sizes, rooms, numbersOf } = known.get(scale) ?? laidAt(scale)
    known.set(scale, { sizes, rooms, numbersOf })
    const level_mm = level ? levelTakes_mm(level) : 0
    const blockOf = (at: number): CutBlock => {
      const { size_mm, viewAt, chains_mm } = rooms[at] ?? noRoom
      const taken_mm: Point = [size_mm[0] + level_mm, size_mm[1]]
      return {
        size_mm: taken_mm,
        draw: ([x, y]) => {
          const viewStands: Point = [x + level_mm + viewAt[0], y + viewAt[1]]
          const { view: bare } = drawSection(section, { ...look, scale, at: viewStands, show: noSizes })
          const view: View = { ...bare, marks: [...bare.marks, ...sizes, ...numbersOf(at).marks] }
          const beside = level
            ? levelMarks(level, [view.at[0] - chains_mm, placeView(view).toPaper([0, 0])[1]], scale)
            : []
          const head = titled
            ? titleMarks({ project, place, letter, scale, language }, [x, y + size_mm[1] - 5])
            : []
          return {
            view,
            marks: [
              ...head,
              ...beside,
              ...sideWords(view, [...head, ...beside], language, {
                room: [
                  [x, y],
                  [x + taken_mm[0], y + taken_mm[1]],
                ],
              }),
            ],
          }
        },
      }
    }
    return {
      close: blockOf(0),
      roomy: (count, fits = () => true) => {
        let best = 0
        for (let at = 0; at < Math.min(count, tries.length); at++) {
          if (at > 0 && !fits(blockOf(at))) break
          if (faultsOf(numbersOf(at)) < faultsOf(numbersOf(best))) best = at
          if (faultsOf(numbersOf(best)) === 0) break
        }
        return blockOf(best)
      },
    }
  }
  return {
    least_mm: scale => roomsOf({ ...wanted, scale, reach: noReach })[0]?.size_mm ?? [0, 0],
    at: (scale, levels) => blocksAt(scale, levels ? levelAt(project, place, { ...how, section }) : undefined),
  }
}

/** What is laid out of a cut at a scale: its chains, the rooms of its tries, its numbers in each. */
type Laid = {
  readonly sizes: readonly ViewMark[]
  readonly rooms: readonly Room[]
  readonly numbersOf: (at: number) => Numbered
}

const noSizes = { sizes: false, numbers: false } as const

const faultsOf = ({ layout }: Numbered): number => layout.conflicts + layout.struck

/** The title of a cut with the letter of its plane, and its scale below. */
const titleMarks = (
  {
    project,
    place,
    letter,
    scale,
    language,
  }: Pick<Cut, 'place' | 'letter'> & {
    readonly project: Project
    readonly scale: number
    readonly language: Language
  },
  [x, y]: Point,
): readonly Mark[] => {
  const [name, cut] = cutHeadingAt(project, place)
  const title = filled(same(letter === '' ? '{0}' : `${letter}   {0}`), name)[language]
  return [
    text(title, [x, y], { height_mm: heights.subtitle_mm, bold: true }),
    text(`${cut[language]} · ${scaleWords(scale)}`, [x, y - 4.4], { faint: true }),
  ]
}
