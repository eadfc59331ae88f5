import type { Point } from '../../geometry'
import type { Section } from '../../section'
import { filled, type Language, type Words, words } from '../../words'
import { flatten } from '../flatten'
import type { Mark, View, ViewMark } from '../mark'
import { placeView } from '../place-view'
import type { Window } from '../section/clip'
import { drawSection, numberSection, type SectionLook } from '../section/draw-section'
import { type JointBox, jointChains, partsAtJoint, shownAt } from '../section/joint-window'
import type { ListedPart } from '../section/listed-part'
import { drawChains } from '../sizes/chain'
import { callout } from '../style/spacing'
import { heights, textWidth_mm } from '../text/lettering'
import { crossings } from './crossings'
import { reachOf } from './cut-room'
import { scaleWords } from './headings'
import { text } from './marks'
import { marginsWith, onPaper } from './room'
import { boxesOf, meet } from './side-words'

/** A section as its main view has it, and what is numbered in the enlarged joint. */
export type Enlarging = {
  readonly section: Section
  readonly look: Omit<SectionLook, 'window' | 'scale' | 'at' | 'show' | 'columns' | 'kept' | 'heat'>
  /** what its numbers point at; absent: the parts at the joint */
  readonly numbered?: readonly ListedPart[]
  /** the letter that names it */
  readonly letter: string
}

/** Round a view: nothing stands nearer to its edge. Paper mm. */
const edge_mm = 1
/** From the view to the circles, from one to the next, and what the heading takes. Ours. */
const way_mm = 5
const pitch_mm = 6.4
const offEnd_mm = 2.6
const heading_mm = 6.6

/** An enlarged joint, to be put on a sheet. */
export type EnlargedBlock = {
  readonly window: Window
  readonly size_mm: Point
  /** with how many leaders cross each other or strike words */
  readonly draw: (at: Point) => {
    readonly view: View
    readonly heading: readonly Mark[]
    readonly faults: number
  }
}

/** The part of a section that a window shows, with its chains, its numbers in a column, and its heading. */
export const enlargedBlock = (
  { section, look, numbered = partsAtJoint(look.parts), letter }: Enlarging,
  joint: JointBox,
  window: Window,
  scale: number,
): EnlargedBlock | undefined => {
  const parts = new Map(look.parts.flatMap(it => it.of.map(id => [id, it] as const)))
  const at0 = { ...look, window, scale, at: [0, 0] } as const
  const chains = jointChains(section, joint, { parts, sizes: look.sizes, window })
  const sizes = sizesOf(chains, { ...at0, show: noMarks })
  if (sizes === undefined) return undefined
  const [width, height] = onPaper({ window, stand: look }, scale)
  const margin = marginsWith(
    { left: edge_mm, right: edge_mm, top: edge_mm, bottom: edge_mm },
    reachOf(sizes, at0),
    [width, height],
  )
  const shown = shownAt(numbered, section, { window, scale })
  const level = look.turn_deg === 0
  const atLeft = level && look.mirrored
  // a jamb has its heading over its numbers, which stand beside it; head and sill have it over all
  const heading = headingOf(letter, scale, look.language)
  const headed = textWidth_mm(heading, heights.subtitle_mm, true)
  const needed = (shown.length - 1) * pitch_mm + 2 * offEnd_mm
  const extra = Math.max(0, needed - height + (level ? heading_mm : 0))
  const beside = Math.max(way_mm + callout.balloon_mm, level ? headed + 2 : 0)
  const [up, down] = level || look.mirrored ? [extra, 0] : [0, extra]
  const above = Math.max(margin.top, up)
  const below = Math.max(margin.bottom, down)
  const viewAt: Point = [margin.left + (atLeft ? beside : 0), below]
  const column = {
    side: atLeft ? 'left' : 'right',
    x: atLeft ? viewAt[0] - margin.left - way_mm : viewAt[0] + width + margin.right + way_mm,
    low: viewAt[1] + offEnd_mm - down,
    high: viewAt[1] + height - offEnd_mm + up - (level ? heading_mm : 0),
    pitch_mm,
  } as const
  const size_mm: Point = [
    margin.left + width + margin.right + beside,
    below + height + above + (level ? 0 : heading_mm),
  ]
  const headingAt: Point = level
    ? [atLeft ? 0 : viewAt[0] + width + margin.right + 2, viewAt[1] + height + up - heights.subtitle_mm]
    : [viewAt[0], size_mm[1] - heights.subtitle_mm]
  return {
    window,
    size_mm,
    draw: ([x, y]) => {
      const stands = { ...look, window, scale, at: [x + viewAt[0], y + viewAt[1]] as const }
      const { view } = drawSection(section, { ...stands, show: noMarks })
      const moved = { ...column, x: column.x + x, low: column.low + y, high: column.high + y }
      const numbers = numberSection(section, { ...stands, columns: [moved] }, sizes, shown)
      return {
        faults: crossings([...numbers.layout.leaders.values()].map(it => it.path)) + numbers.layout.struck,
        view: {
          ...view,
          enlarged: true,
          marks: [
            ...view.marks.filter(it => !(it.kind === 'path' && it.pen === 'break')),
            border(window),
            ...sizes,
            ...numbers.marks,
          ],
        },
        heading: [
          text(heading, [x + headingAt[0], y + headingAt[1]], { height_mm: heights.subtitle_mm, bold: true }),
        ],
      }
    },
  }
}

const noMarks = { sizes: false, numbers: false } as const

/** The chains of a joint round its window: the width at its outer end, at its inner one where words would meet; or nothing. */
const sizesOf = (
  { across, through }: ReturnType<typeof jointChains>,
  look: SectionLook,
): readonly ViewMark[] | undefined => {
  const { window, scale, language, unit = 'mm' } = look
  const on = { placement: placeView(look), scale, language, unit }
  const [low, high] = window
  const along = drawChains([through], { axis: 1, edge_mm: low[0], outwards: -1 }, on)
  const ends = [
    { axis: 0, edge_mm: low[1], outwards: -1 },
    { axis: 0, edge_mm: high[1], outwards: 1 },
  ] as const
  const flat = (marks: readonly ViewMark[]) => flatten({ ...look, kind: 'view', layer: 'sizes', marks })
  const wide = ends
    .map(end => drawChains([across], end, on))
    .find(it => !doMeet(flat(it), flat(along)) && !doMeet(flat(along), flat(it)))
  return wide && [...wide, ...along]
}

/** Whether words of some sizes meet what is drawn of others. */
const doMeet = (sizes: readonly ViewMark[], others: readonly ViewMark[]): boolean => {
  const boxes = others.flatMap(boxesOf)
  return sizes.some(it => {
    const [words] = it.kind === 'dimension' ? boxesOf(it) : []
    return words !== undefined && boxes.some(box => meet(words, box))
  })
}

const headingOf = (letter: string, scale: number, language: Language): string =>
  filled(detailWords, letter, scaleWords(scale))[language]

const detailWords: Words = words('Detail {0}  {1}', 'Einzelheit {0}  {1}')

/** The edge of what is shown, here and there. */
const border = ([low, high]: Window): ViewMark => ({
  kind: 'path',
  layer: 'sheet',
  pen: 'seen',
  closed: true,
  points: [low, [high[0], low[1]], high, [low[0], high[1]]],
})
