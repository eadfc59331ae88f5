import type { Flat, Ink } from './ink'

/** Lines nearer than this lie on each other. Ours. */
const same_mm = 1e-3

type Stretch = readonly [from: number, to: number]

/**
 * Takes out of level and upright lines what was drawn before: extension lines of neighbouring links and of outer chains
 * lie on each other, and a line that is drawn twice looks heavier on a screen.
 */
export const drawnOnce = (): ((inks: readonly Ink[]) => readonly Ink[]) => {
  const drawn = new Map<string, Stretch[]>()
  return inks =>
    inks.flatMap(ink => {
      if (ink.kind !== 'stroke' || ink.closed || ink.dash_mm.length > 0) return [ink]
      const lines = ink.lines.flatMap(line => restOf(line, ink.pen, drawn))
      return lines.length === 0 ? [] : [{ ...ink, lines }]
    })
}

const restOf = (line: Flat, pen: string, drawn: Map<string, Stretch[]>): readonly Flat[] => {
  const [x0 = 0, y0 = 0, x1 = 0, y1 = 0] = line
  const level = Math.abs(y1 - y0) < same_mm
  if (line.length !== 4 || (!level && Math.abs(x1 - x0) >= same_mm)) return [line]
  const name = `${pen} ${level ? 'y' : 'x'} ${Math.round((level ? y0 : x0) / same_mm)}`
  const before = drawn.get(name) ?? []
  const own: Stretch = level ? [Math.min(x0, x1), Math.max(x0, x1)] : [Math.min(y0, y1), Math.max(y0, y1)]
  drawn.set(name, [...before, own])
  const left = before.reduce<readonly Stretch[]>(
    (rest, taken) => rest.flatMap(it => without(it, taken)),
    [own],
  )
  return left.map(([from, to]) => (level ? [from, y0, to, y0] : [x0, from, x0, to]))
}

const without = ([from, to]: Stretch, [a, b]: Stretch): readonly Stretch[] => {
  const pieces: Stretch[] = [
    [from, Math.min(to, a)],
    [Math.max(from, b), to],
  ]
  return pieces.filter(it => it[1] - it[0] > same_mm)
}
