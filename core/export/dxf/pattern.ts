import type { Family, Hatch, Hatching } from '../../drawing'
import type { Point } from '../../geometry'
import type { Place } from './draft'
import type { Tags } from './tags'

/** One set of parallel lines of a hatch as a DXF defines it: a line, the step to the next, dashes (0 is a dot). */
export type PatternLine = {
  readonly angle_deg: number
  readonly base: Point
  readonly step: Point
  readonly dashes: readonly number[]
}

/** A third neighbour of one material has its hatch closer. */
const closerBy = 0.7

/** The straight lines of a hatch, in a space. Curved motifs have none. */
export const straightLines = (hatch: Hatch, hatching: Hatching, place: Place): readonly PatternLine[] =>
  (hatch.families ?? []).flatMap(it => linesOf(it, hatching, place))

/** The dots of a hatch as lines of dots, and how wide they are on paper; nothing where its motif is another. */
export const dotLines = (
  { motif }: Hatch,
  hatching: Hatching,
  place: Place,
): { readonly lines: readonly PatternLine[]; readonly diameter_mm: number } | undefined => {
  if (motif?.kind !== 'dots') return undefined
  const close = hatching.closer ? closerBy : 1
  const dotted: Family = {
    angle_deg: motif.angle_deg,
    pitch_mm: motif.row_mm,
    offset_mm: motif.offset_mm,
    dash_mm: [0, motif.step_mm * close],
    stagger_mm: motif.stagger_mm * close,
  }
  return { lines: linesOf(dotted, hatching, place), diameter_mm: motif.diameter_mm }
}

/** Staggered rows are two sets, every second row each: any stagger is then exact. */
const linesOf = (family: Family, hatching: Hatching, place: Place): readonly PatternLine[] => {
  const close = hatching.closer ? closerBy : 1
  const pitch = family.pitch_mm * close
  const offset = (family.offset_mm ?? 0) * close
  const dashes = (family.dash_mm ?? []).map((it, at) => (at % 2 === 0 ? it : -it) / place.scale)
  const stagger = family.stagger_mm ?? 0
  const rows = (across: number, along: number, step: number): PatternLine => ({
    ...placed(family.angle_deg, { across, along, step }, hatching, place),
    dashes,
  })
  return stagger === 0
    ? [rows(offset, 0, pitch)]
    : [rows(offset, 0, 2 * pitch), rows(offset + pitch, stagger, 2 * pitch)]
}

/** A row in the axes of its part, laid into the space as the hatch on the sheet is. */
const placed = (
  angle_deg: number,
  row: { readonly across: number; readonly along: number; readonly step: number },
  hatching: Hatching,
  place: Place,
): Omit<PatternLine, 'dashes'> => {
  const angle = (angle_deg * Math.PI) / 180
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)]
  const turn = (hatching.turn_deg * Math.PI) / 180
  const [c, s] = [Math.cos(turn), Math.sin(turn)]
  const mirror = hatching.mirrored ? -1 : 1
  const width = hatching.mirrored ? (hatching.size?.[0] ?? 0) : 0
  const toPaper = (u: number, v: number): Point => {
    const along = width + mirror * u
    return [hatching.origin[0] + along * c - v * s, hatching.origin[1] + along * s + v * c]
  }
  const paperAt = (along: number, across: number) =>
    place.at(toPaper(along * cos - across * sin, along * sin + across * cos))
  const base = paperAt(row.along, row.across)
  const next = paperAt(row.along, row.across + row.step)
  const on = paperAt(row.along + 1, row.across)
  const direction = (Math.atan2(on[1] - base[1], on[0] - base[0]) * 180) / Math.PI
  return { angle_deg: direction, base, step: [next[0] - base[0], next[1] - base[1]] }
}

/** The definition of a pattern inside a hatch. */
export const patternTags = (lines: readonly PatternLine[]): Tags => [
  [52, 0],
  [41, 1],
  [77, 0],
  [78, lines.length],
  ...lines.flatMap(({ angle_deg, base, step, dashes }): Tags => [
    [53, angle_deg],
    [43, base[0]],
    [44, base[1]],
    [45, step[0]],
    [46, step[1]],
    [79, dashes.length],
    ...dashes.map(it => [49, it] as const),
  ]),
]
