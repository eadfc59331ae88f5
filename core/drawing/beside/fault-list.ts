import type { Point } from '../../geometry'
import { filled, type Language, words } from '../../words'
import type { Mark } from '../mark'
import { text } from '../sheet/marks'
import { balloon } from '../sheet/parts-list'
import { callout } from '../style/spacing'
import { heights, linesOf } from '../text/lettering'
import type { Fault } from './faults'

/** A list of faults in columns of one width: how high it is, and how it is drawn from its upper left corner. */
export type FaultList = { readonly height_mm: number; readonly draw: (at: Point) => readonly Mark[] }

/** The letters of the two details, on their titles and in the list. */
export const detailLetters = ['A', 'B'] as const

const heading_mm = 5.2
const pitch_mm = 3.7
/** Between two entries, between two columns, and where words stand in an entry. Ours. */
const apart_mm = 2.6
const between_mm = 6
const words_mm = callout.balloon_mm + 2
const said_mm = words_mm + 4

/** The faults that are listed, those beyond them as a number, in so many columns over a width. */
export const faultList = (
  faults: readonly Fault[],
  more: number,
  on: { readonly width_mm: number; readonly columns: number; readonly language: Language },
): FaultList => {
  const { language, columns } = on
  const width_mm = (on.width_mm - (columns - 1) * between_mm) / columns
  const entries = [
    ...faults.map(it => entryOf(it, width_mm, language)),
    ...(faults.length === 0 ? [lineEntry(noFault[language], width_mm)] : []),
    ...(more > 0 ? [lineEntry(filled(furtherFaults, more)[language], width_mm)] : []),
  ]
  const placed = inColumns(entries, columns)
  const tall = Math.max(0, ...placed.map(column => heightOf(column)))
  return {
    height_mm: heading_mm + tall,
    draw: ([x, top]) => [
      text(heading[language], [x, top - heights.subtitle_mm], { height_mm: heights.subtitle_mm, bold: true }),
      ...placed.flatMap((column, at) => {
        let y = top - heading_mm
        return column.flatMap(entry => {
          const marks = entry.draw([x + at * (width_mm + between_mm), y])
          y -= entry.height_mm + apart_mm
          return marks
        })
      }),
    ],
  }
}

const heading = words('Faults', 'Fehler')
const noFault = words(
  'none: both details meet every rule here',
  'keine: beide Details erfüllen hier jede Regel',
)
const furtherFaults = words('and {0} more, see the check report', 'und {0} weitere, siehe Prüfbericht')

/** Number, title and part, then what each of the details says. */
const entryOf = ({ number, title, part, told }: Fault, width_mm: number, language: Language): FaultList => {
  const name = linesOf(title[language], width_mm - words_mm, heights.note_mm, true)
  const about = part ? linesOf(part[language], width_mm - words_mm, heights.note_mm) : []
  const said = told.map(it =>
    linesOf(it.say[language].replaceAll('s_d', 'sd'), width_mm - said_mm, heights.note_mm),
  )
  const rows = name.length + about.length + said.reduce((sum, it) => sum + it.length, 0)
  return {
    height_mm: rows * pitch_mm,
    draw: ([x, top]) => {
      let foot = top + pitch_mm - heights.note_mm - 0.6
      const next = () => (foot -= pitch_mm)
      return [
        ...balloon(number, [x + callout.balloon_mm / 2, top - heights.note_mm / 2 - 0.6]),
        ...name.map(it => text(it, [x + words_mm, next()], { bold: true })),
        ...about.map(it => text(it, [x + words_mm, next()], { faint: true })),
        ...said.flatMap((lines, at) =>
          lines.flatMap((it, row) => {
            const y = next()
            return [
              ...(row === 0 ? [text(detailLetters[at] ?? '', [x + words_mm, y], { bold: true })] : []),
              text(it, [x + said_mm, y]),
            ]
          }),
        ),
      ]
    },
  }
}

const lineEntry = (said: string, width_mm: number): FaultList => {
  const lines = linesOf(said, width_mm, heights.note_mm)
  return {
    height_mm: lines.length * pitch_mm,
    draw: ([x, top]) => lines.map((it, at) => text(it, [x, top - heights.note_mm - 0.6 - at * pitch_mm])),
  }
}

const heightOf = (column: readonly FaultList[]): number =>
  column.reduce((sum, it) => sum + it.height_mm, 0) + Math.max(0, column.length - 1) * apart_mm

/** Entries in their order over columns, the highest as low as can be. */
const inColumns = (entries: readonly FaultList[], columns: number): readonly (readonly FaultList[])[] => {
  const least = Math.max(0, ...entries.map(it => it.height_mm))
  for (let limit = least; ; limit += 1) {
    const placed = filledTo(entries, limit)
    if (placed.length <= columns) return placed
  }
}

const filledTo = (entries: readonly FaultList[], limit_mm: number): readonly (readonly FaultList[])[] =>
  entries.reduce<readonly (readonly FaultList[])[]>((columns, it) => {
    const last = columns.at(-1)
    return last && heightOf([...last, it]) <= limit_mm
      ? [...columns.slice(0, -1), [...last, it]]
      : [...columns, [it]]
  }, [])
