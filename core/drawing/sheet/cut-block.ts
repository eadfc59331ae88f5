import type { Project, ZonePlace } from '../../detail'
import type { Point } from '../../geometry'
import type { Section } from '../../section'
import { filled, type Language, same } from '../../words'
import type { Mark, View } from '../mark'
import type { Column } from '../labels/lay-out'
import { drawSection } from '../section/draw-section'
import type { ListedPart } from '../section/listed-part'
import { chainsAcross, chainsThrough } from '../section/section-sizes'
import { standOf, usualWindow, zoneLook } from '../section/zone-view'
import type { LengthUnit } from '../sizes/lengths'
import { callout } from '../style/spacing'
import { heights } from '../text/lettering'
import { cutHeading, scaleWords } from './headings'
import { text } from './marks'
import { margins, onPaper } from './room'
import { sideWords } from './side-words'

/** One of several cuts on a sheet, with the letter of its plane. */
export type Cut = { readonly place: ZonePlace; readonly section: Section; readonly letter: string }

/** A cut with its title, its sizes and its numbers, to be put on a sheet: how large it is, and how it is drawn. */
export type CutBlock = {
  readonly size_mm: Point
  /** `at` is the lower left corner; marks stand beside the view */
  readonly draw: (at: Point) => { readonly view: View; readonly marks: readonly Mark[] }
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

/** The first of some ways without a conflict, or the one with the fewest. */
const leastConflicts = <T>(ways: readonly (() => T)[], conflictsIn: (it: T) => number): T => {
  let best: { readonly it: T; readonly conflicts: number } | undefined
  for (const way of ways) {
    const it = way()
    const conflicts = conflictsIn(it)
    if (best === undefined || conflicts < best.conflicts) best = { it, conflicts }
    if (conflicts === 0) break
  }
  if (best === undefined) throw new Error('no way to number a cut')
  return best.it
}

/** A cut at a scale. Numbers stand in one column at its right, names in the list of parts. */
export const cutBlock = (
  project: Project,
  { place, section, letter }: Cut,
  parts: readonly ListedPart[],
  how: {
    readonly scale: number
    readonly language: Language
    readonly unit: LengthUnit
    readonly tries: number
  },
): CutBlock => {
  const { scale, language, unit } = how
  const look = { ...zoneLook(project, place, language, unit), parts }
  const stand = standOf[place.side]
  const window = usualWindow(project, place, section)
  const byPart = new Map(parts.flatMap(it => it.of.map(of => [of, it] as const)))
  const chains = {
    through: chainsThrough(section, window, byPart, look.sizes).length,
    across: chainsAcross(section, byPart, look.sizes).length,
  }
  const margin = margins({ stand, chains })
  const [width, height] = onPaper({ window, stand }, scale)
  const level = stand.turn_deg === 0
  const shown = parts.filter(it => isThere(it, section))
  const column_mm = (shown.length - 1) * pitch_mm
  /** How a try shares the room: above and below the view, and the column of numbers seen from the view. */
  const shared = ({ way_mm, more_mm }: Try) => {
    // a column starts at the end where no chains stand and grows past the other only where it must
    const extra = Math.max(0, column_mm + more_mm + 2 * offEnd_mm - height)
    const up = level || stand.mirrored ? extra : 0
    const down = level || stand.mirrored ? 0 : extra
    return {
      above: Math.max(margin.top, up) + (level ? sideWord_mm : 0),
      below: Math.max(margin.bottom, down),
      column: {
        side: 'right',
        x: width + margin.right + way_mm,
        low: offEnd_mm - Math.max(0, down),
        high: height - offEnd_mm + up,
        pitch_mm,
      },
    } as const
  }
  const drawnAt = (at: Point, column: Column, sizes: boolean) =>
    drawSection(section, {
      ...look,
      ...stand,
      window,
      scale,
      at,
      show: { sizes, numbers: true },
      columns: [{ ...column, x: column.x + at[0], low: column.low + at[1], high: column.high + at[1] }],
    })
  const { above, below, column } = leastConflicts(
    tries.slice(0, how.tries).map(it => () => shared(it)),
    it => drawnAt([0, 0], it.column, false).layout.conflicts,
  )
  const size_mm: Point = [margin.left + column.x + callout.balloon_mm, below + height + above + title_mm]
  return {
    size_mm,
    draw: ([x, y]) => {
      const { view } = drawnAt([x + margin.left, y + below], column, true)
      const titleAt: Point = [x, y + size_mm[1] - 5]
      const [name, cut] = cutHeading(place.side)
      const title = filled(same(letter === '' ? '{0}' : `${letter}   {0}`), name)[language]
      const head = [
        text(title, titleAt, { height_mm: heights.subtitle_mm, bold: true }),
        text(`${cut[language]} · ${scaleWords(scale)}`, [titleAt[0], titleAt[1] - 4.4], { faint: true }),
      ]
      return { view, marks: [...head, ...sideWords(view, head, language)] }
    },
  }
}

/** Whether a part is in a section at all: a list of several cuts has parts that one of them lacks. */
const isThere = (part: ListedPart, section: Section): boolean =>
  section.regions.some(it => part.of.includes(it.part)) ||
  section.lines.some(it => part.of.includes(it.part)) ||
  section.seen.some(it => part.of.includes(it.part))
