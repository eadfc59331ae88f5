/** A run of code points from the first on, with their widths; 0 is a code point that the font lacks. */
export type Block = readonly [first: number, widths: readonly number[]]

/** Widths by letter. */
export const tableOf = (blocks: readonly Block[]): ReadonlyMap<string, number> =>
  new Map(
    blocks.flatMap(([first, widths]) =>
      widths.flatMap((width, at): [string, number][] =>
        width === 0 ? [] : [[String.fromCodePoint(first + at), width]],
      ),
    ),
  )
