import type { Flat, Ink, InkGroup } from '../../../core/drawing'

/**
 * Ink on its way from a worker: what is drawn as it is, all its coordinates in one array that is handed over, not
 * copied. Lines of one pen are drawn in one go.
 */
export type PackedInk = { readonly inks: readonly PackedOne[]; readonly places: Float32Array }

type PackedOne =
  | (Omit<Extract<Ink, { kind: 'fill' }>, 'loops'> & { readonly runs: readonly number[] })
  | (Omit<Extract<Ink, { kind: 'stroke' }>, 'lines'> & { readonly runs: readonly number[] })
  | Extract<Ink, { kind: 'rings' | 'discs' | 'letters' | 'picture' }>

/** Packs groups of ink in their order. */
export const packed = (groups: readonly InkGroup[]): PackedInk => {
  const inks = groups.flatMap(group => joined(group.inks))
  const lines = inks.flatMap(linesOf)
  const places = new Float32Array(lines.reduce((sum, line) => sum + line.length, 0))
  let at = 0
  for (const line of lines) {
    places.set(line, at)
    at += line.length
  }
  return { inks: inks.map(packOne), places }
}

/** The ink again, its coordinates as parts of the one array. */
export const unpacked = ({ inks, places }: PackedInk): readonly Ink[] => {
  let at = 0
  const taken = (runs: readonly number[]): readonly Flat[] =>
    runs.map(length => {
      const line = places.subarray(at, at + length)
      at += length
      // Painting reads places by their index alone, which a typed array gives as an array does.
      return line as unknown as Flat
    })
  return inks.map((it): Ink => {
    if (it.kind === 'fill') {
      const { runs, ...rest } = it
      return { ...rest, loops: taken(runs) }
    }
    if (it.kind === 'stroke') {
      const { runs, ...rest } = it
      return { ...rest, lines: taken(runs) }
    }
    return it
  })
}

const linesOf = (it: Ink): readonly Flat[] =>
  it.kind === 'fill' ? it.loops : it.kind === 'stroke' ? it.lines : []

const packOne = (it: Ink): PackedOne => {
  if (it.kind === 'fill') {
    const { loops, ...rest } = it
    return { ...rest, runs: loops.map(loop => loop.length) }
  }
  if (it.kind === 'stroke') {
    const { lines, ...rest } = it
    return { ...rest, runs: lines.map(line => line.length) }
  }
  return it
}

type Stroke = Extract<Ink, { kind: 'stroke' }>

/** Strokes that follow each other with the same pen become one. */
const joined = (inks: readonly Ink[]): readonly Ink[] => {
  const all: Ink[] = []
  let open: { of: Stroke; lines: Flat[] } | undefined
  const close = (): void => {
    if (open) all.push({ ...open.of, lines: open.lines })
    open = undefined
  }
  for (const ink of inks) {
    if (ink.kind !== 'stroke') {
      close()
      all.push(ink)
    } else if (open && open.of.pen === ink.pen && open.of.closed === ink.closed) open.lines.push(...ink.lines)
    else {
      close()
      open = { of: ink, lines: [...ink.lines] }
    }
  }
  close()
  return all
}
