/** Columns that a text keeps to: a wide terminal, or a page in a fixed width of letters. */
export const columns = 100

/**
 * A text in lines of at most `columns`, broken at spaces only: what a no-break space holds stays together.
 * The first line begins with `first`, the others with as many spaces.
 */
export const wrapped = (first: string, text: string, width = columns): readonly string[] => {
  const indent = ' '.repeat([...first].length)
  const lines: string[] = []
  let line = first
  let isFresh = true
  for (const word of text.split(' ').filter(it => it !== '')) {
    if (!isFresh && width < [...line].length + 1 + [...word].length) {
      lines.push(line)
      line = indent
      isFresh = true
    }
    line += isFresh ? word : ` ${word}`
    isFresh = false
  }
  return [...lines, line.trimEnd()]
}
