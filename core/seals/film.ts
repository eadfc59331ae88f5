import { directionOf, type Id, lengthOf, type Line, type Point, type Region, startOf } from '../geometry'
import type { Plane } from '../kinds'
import type { Stated } from '../units'
import { words } from '../words'
import { body, drawnWidth_mm, turned } from './bay'
import { type Bay, type Bond, type End, type Grip, mostDepth_mm, type SealValue } from './seal-kind'

/** What every film over a joint states: its bonds on frame and wall, and the slack between them. */
export const bondFrame: SealValue = {
  id: 'membrane.bond-frame',
  key: 'bondFrame_mm',
  name: words('Bond on the frame', 'Klebung am Rahmen'),
  unit: 'mm',
  bounds: { unit: 'mm', min: 5, max: mostDepth_mm },
  within: 'depth',
  because: words('on the flank of the frame, before it is set', 'an der Rahmenflanke, vor dem Einbau'),
}
export const bondWall: SealValue = {
  id: 'membrane.bond-wall',
  key: 'bondWall_mm',
  name: words('Bond on the wall', 'Klebung an der Wand'),
  unit: 'mm',
  bounds: { unit: 'mm', min: 5, max: 300 },
  because: words('on the flank of the reveal, then round its edge', 'an der Leibung, dann um die Kante'),
}
export const slack: SealValue = {
  id: 'membrane.slack',
  key: 'slack_mm',
  name: words('Slack of the loop', 'Schlaufe'),
  unit: 'mm',
  bounds: { unit: 'mm', min: 0, max: 40 },
  because: words('length that the fold holds over the joint', 'Länge, die die Falte über der Fuge hält'),
}

/** How much of the reveal a film takes under the plaster, bonded or not; what is bonded where nobody says more. */
export const onReveal: SealValue = {
  id: 'membrane.on-reveal',
  key: 'onReveal_mm',
  name: words('Width on the reveal', 'Breite auf der Leibung'),
  unit: 'mm',
  bounds: { unit: 'mm', min: 5, max: 400 },
  because: words('bonded and loose, under the plaster', 'verklebt und lose, unter dem Putz'),
  fallback: it => {
    const bond = it['bondWall_mm']
    return {
      value: typeof bond === 'object' && typeof bond.value === 'number' ? bond.value : 0,
      why: words('as wide as its bond', 'so breit wie ihre Klebung'),
    }
  },
}

/** A film over a joint: bonded to the flank of the frame, across the joint with some slack, bonded to the wall. */
export type Film = {
  readonly id: Id
  readonly plane: Plane
  readonly bondFrame_mm: Stated<number>
  readonly bondWall_mm: Stated<number>
  readonly slack_mm?: Stated<number>
}

const slackOf = (it: Film): number => it.slack_mm?.value ?? 0

/** The depth that the fold of a film takes up in a joint. */
export const filmDepth_mm = (it: Film, width_mm: number): number => foldDepth_mm(width_mm, slackOf(it))

/** A film laid over its end of a joint: its path as a line, and the air that hangs in its fold. */
export const layFilm = (
  it: Film,
  bay: Bay,
  made: Pick<Line, 'thickness_mm' | 'lambda_W_mK' | 'sd_m'>,
): { readonly regions: readonly Region[]; readonly lines: readonly Line[] } => {
  const fold = foldPath(it, bay)
  // air before an outer film is in touch with the weather, air behind an inner one with nothing
  const vented = it.plane === 'outer' ? 'slightly' : 'closed'
  return {
    regions: slackOf(it) > 0 ? [body(it.id, 'fold', turned(fold), { kind: 'air', vented })] : [],
    lines: [{ id: `${it.id}.path`, part: it.id, path: [...onFrame(it, bay), ...fold, ...onWall(it, bay)], ...made }],
  } // prettier-ignore
}

/** Its end on the wall can be taken by hand. */
export const filmGrips = (it: Film, bay: Bay): readonly Grip[] => {
  const { lead, flank } = endOf(it, bay)
  const bond = [...[...lead, ...flank].slice(0, 1), ...onWall(it, bay)]
  const end = bond.at(-1)
  const before = bond.at(-2)
  return end && before ? [{ field: bondWall.id, at: end, along: directionOf(before, end) }] : []
}

export const filmBonds = (it: Film): readonly Bond[] => [
  { to: 'wall', width_mm: it.bondWall_mm.value },
  { to: 'frame', width_mm: it.bondFrame_mm.value },
]

/** How wide a film has to be cut. */
export const girth_mm = (it: Film, bay: Bay): number =>
  it.bondFrame_mm.value + drawnWidth_mm(bay) + slackOf(it) + lead_mm(endOf(it, bay)) + it.bondWall_mm.value

const lead_mm = ({ lead, flank }: End): number => lengthOf([...lead, ...flank.slice(0, 1)])

const isOuter = (it: Film): boolean => it.plane === 'outer'
const endOf = (it: Film, bay: Bay): End => (isOuter(it) ? bay.ends.outer : bay.ends.inner)

/** Even, so that the lowest place is one; no multiple of four, as on the turn of the curve a place is a corner or not by rounding. */
const foldSteps = 14

/** One wave across the joint, hanging by `depth`: (1 − cos) / 2, from the frame to the wall. */
const wave = (width_mm: number, depth_mm: number): readonly Point[] =>
  Array.from({ length: foldSteps + 1 }, (_, i): Point => {
    const t = i / foldSteps
    return [width_mm * (1 - t), (depth_mm * (1 - Math.cos(2 * Math.PI * t))) / 2]
  })

/** How far the wave rises from one of its places to the next, for a depth of one. */
const rises = Array.from({ length: foldSteps }, (_, i): number => {
  const at = (step: number): number => (1 - Math.cos((2 * Math.PI * step) / foldSteps)) / 2
  return at(i + 1) - at(i)
})

/** How long the wave is that `wave` draws; asked for at every trial depth, so it draws none. */
const waveLength = (width_mm: number, depth_mm: number): number =>
  rises.reduce((sum, rise) => sum + Math.hypot(width_mm / foldSteps, rise * depth_mm), 0)

/** How deep a fold hangs so that its path is longer than the joint by the slack: bisection to a thousandth. */
const foldDepth_mm = (width_mm: number, slack_mm: number): number => {
  if (slack_mm <= 0) return 0
  let low = 0
  let high = width_mm + slack_mm
  while (high - low > 1e-3) {
    const middle = (low + high) / 2
    if (waveLength(width_mm, middle) < width_mm + slack_mm) low = middle
    else high = middle
  }
  return high
}

/** Across the joint at its own end, the fold hanging into the joint. */
const foldPath = (it: Film, bay: Bay): readonly Point[] => {
  const width_mm = drawnWidth_mm(bay)
  const wall = bay.wallFace[0][0]
  const [at, into] = isOuter(it) ? [bay.from_mm, 1] : [bay.to_mm, -1]
  if (slackOf(it) <= 0) return [[wall + width_mm, at], [wall, at]] // prettier-ignore
  const depth_mm = into * foldDepth_mm(width_mm, slackOf(it))
  return wave(width_mm, depth_mm).map(([x, y]): Point => [wall + x, at + y])
}

/** The bond on the frame: along its flank, from inside the joint to its own end. */
const onFrame = (it: Film, bay: Bay): readonly Point[] => {
  const frame = bay.frameFace[0][0]
  const bond_mm = it.bondFrame_mm.value
  return [[frame, isOuter(it) ? Math.min(bay.to_mm, bay.from_mm + bond_mm) : Math.max(bay.from_mm, bay.to_mm - bond_mm)]] // prettier-ignore
}

/**
 * The bond on the wall: along the flank of the reveal, then round its edge. A film that another one lies before begins
 * within the joint and follows its flank to the end first.
 */
const onWall = (it: Film, bay: Bay): readonly Point[] => {
  const { lead, flank } = endOf(it, bay)
  const path = [...lead, ...startOf(flank, it.bondWall_mm.value)]
  const ownEnd_mm = isOuter(it) ? bay.from_mm : bay.to_mm
  return path[0]?.[1] === ownEnd_mm ? path.slice(1) : path
}
