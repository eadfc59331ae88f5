import type { Outline } from '../../geometry'
import { type Language, words } from '../../words'
import type { Drawing, Mark, ViewMark } from '../mark'
import { clipLine } from '../section/clip'
import { text } from '../sheet/marks'
import { heights } from '../text/lettering'

/** The sheet with the zone where water gathers drawn round in its views, and told to whoever cannot see it. */
export const withWetZone = (drawing: Drawing, zone: readonly Outline[]): Drawing => ({
  ...drawing,
  says: `${drawing.says} ${said(zone, drawing.language)}.`,
  marks: [
    ...drawing.marks.map((mark): Mark =>
      mark.kind === 'view'
        ? {
            ...mark,
            marks: [...mark.marks, ...zone.flatMap(it => ringMarks(it, mark.window))],
          }
        : mark,
    ),
    ...underHeading(drawing, said(zone, drawing.language)),
  ],
})

/** A line of words below the heading of the sheet: its title, and what is drawn how. */
const underHeading = ({ marks, size_mm }: Drawing, words: string): readonly Mark[] => {
  const titles = marks.flatMap(it =>
    it.kind === 'text' && it.height_mm >= heights.subtitle_mm && it.at[1] > size_mm[1] - headingRoom_mm
      ? [it.at]
      : [],
  )
  const [x, low] = [Math.min(...titles.map(at => at[0])), Math.min(...titles.map(at => at[1]))]
  return titles.length > 0 ? [text(words, [x, low - below_mm])] : []
}

/** So far below the upper edge a heading reaches, and so far below it its note stands. */
const headingRoom_mm = 32
const below_mm = 5.5

/** A ring as lines that end where the window does. */
const ringMarks = (ring: Outline, window: Parameters<typeof clipLine>[1]): readonly ViewMark[] => {
  const [first] = ring
  if (!first) return []
  return clipLine([...ring, first], window).map(points => ({
    kind: 'path',
    layer: 'isotherms',
    pen: 'curve',
    points,
    closed: false,
  }))
}

const said = (zone: readonly Outline[], language: Language): string =>
  (zone.length > 0
    ? words(
        'Drawn round: where water gathers in winter, an estimate',
        'Umrandet: wo im Winter Tauwasser anfällt, eine Abschätzung',
      )
    : words('No water gathers in winter', 'Im Winter fällt kein Tauwasser an'))[language]
