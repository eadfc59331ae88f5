import type { Table } from '../../../core/study'
import type { Language } from '../../../core/words'
import { wrapped } from './wrap'

/** Tables one below the other, columns in line, notes under them. */
export const tablesText = (tables: readonly Table[], language: Language): string =>
  tables.map(it => `${tableLines(it, language).join('\n')}\n`).join('\n')

const tableLines = ({ title, head, rows, notes }: Table, language: Language): readonly string[] => {
  const cells = [head, ...rows].map(row => row.map(it => it[language]))
  const widths = head.map((_, column) => Math.max(0, ...cells.map(row => [...(row[column] ?? '')].length)))
  const line = (row: readonly string[]) =>
    row
      .map((cell, column) =>
        column === 0
          ? padded(cell, widths[0] ?? 0)
          : `${' '.repeat((widths[column] ?? 0) - [...cell].length)}${cell}`,
      )
      .join('  ')
      .trimEnd()
  const [first = [], ...more] = cells
  return [
    title[language],
    '─'.repeat([...title[language]].length),
    ...(rows.length === 0 ? [] : [line(first), ...more.map(line)]),
    ...notes.flatMap(it => wrapped('– ', it[language])),
  ]
}

const padded = (text: string, width: number): string =>
  text + ' '.repeat(Math.max(0, width - [...text].length))
