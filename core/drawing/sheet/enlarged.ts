import type { Mark, View, ViewMark } from '../mark'
import { placeView } from '../place-view'
import { jointBox, jointWindow, type Round } from '../section/joint-window'
import { enlargedBlock, type Enlarging } from './enlarged-block'
import { freePlace, takenIn, windowOn, wordsIn } from './free-room'
import { ringBox, ringOn } from './ring'
import type { Box } from './side-words'

/** Scales of an enlarged joint (ISO 5455, reported): the first that fits. Twice its size is drawn only where asked for. */
export const enlargedScales = [2, 1, 0.5] as const
const proposedScales: readonly number[] = [1, 0.5]

/** A joint is enlarged without being asked for where its main view is smaller than this. Ours. */
const enlargedBelow = 0.5

/** Whether a joint is drawn once more beside its view of a scale. */
export const isEnlarged = (asked: number | 'none' | undefined, scale: number): boolean =>
  asked === undefined ? scale < enlargedBelow : asked !== 'none'

/** Planes of cuts are A, B, C; what is enlarged is named from the end of the alphabet. Common practice. */
export const jointLetter = 'X'

/** An enlarged joint is at least so many times as large as in its main view. Ours. */
const leastTimes = 2

/**
 * What is shown round a joint, in mm of the model: as much as has room, first of the wall and the frame, then beyond the
 * ends. Ours.
 */
const rounds: readonly Round[] = [
  { wall_mm: 30, frame_mm: 44, ends_mm: 12 },
  { wall_mm: 30, frame_mm: 44, ends_mm: 5 },
  { wall_mm: 20, frame_mm: 30, ends_mm: 12 },
  { wall_mm: 20, frame_mm: 30, ends_mm: 5 },
  { wall_mm: 12, frame_mm: 18, ends_mm: 12 },
  { wall_mm: 12, frame_mm: 18, ends_mm: 5 },
  { wall_mm: 8, frame_mm: 12, ends_mm: 4 },
]

/** The enlarged joint of a cut on its sheet: its view, its heading, and the ring round the same part in the main view. */
export type Enlarged = {
  readonly scale: number
  /** how far down the list of what is tried it stands: less is better */
  readonly rank: number
  /** the room that it takes */
  readonly box: Box
  readonly view: View
  readonly heading: readonly Mark[]
  readonly ring: readonly ViewMark[]
}

/**
 * The enlarged joint of a view at the largest of some scales, with as much round it as has room in what is free;
 * nothing where it has none.
 */
export const enlarge = (
  of: Enlarging,
  main: View,
  {
    room,
    marks,
    kept,
  }: { readonly room: Box; readonly marks: readonly Mark[]; readonly kept: readonly Box[] },
  asked?: number | 'none',
  /** the first rank that is tried: two joints that are compared show as much round them */
  fromRank = 0,
): Enlarged | undefined => {
  const parts = new Map(of.look.parts.flatMap(it => it.of.map(id => [id, it] as const)))
  const joint = jointBox(of.section, parts)
  if (joint === undefined) return undefined
  const scales = (typeof asked === 'number' ? [asked] : proposedScales).filter(
    it => it >= leastTimes * main.scale,
  )
  const middle = placeView(main).toPaper([
    (joint.low[0] + joint.high[0]) / 2,
    (joint.low[1] + joint.high[1]) / 2,
  ])
  const words = wordsIn(marks)
  const free = takenIn(room, marks, [...kept, windowOn(main)])
  const tries = scales.flatMap(scale => rounds.map(round => ({ scale, round })))
  for (const [rank, { scale, round }] of tries.entries()) {
    if (rank < fromRank) continue
    const block = enlargedBlock(of, joint, jointWindow(of.section, joint, round, sliver_mm / scale), scale)
    const at = block && freePlace(free, block.size_mm, middle)
    if (block === undefined || at === undefined) continue
    const drawn = block.draw(at)
    if (drawn.faults > 0) continue
    const box: Box = [at, [at[0] + block.size_mm[0], at[1] + block.size_mm[1]]]
    const ring = ringBox(main, block.window)
    const around = takenIn(room, marks, [...kept, box, ring])
    const { view, heading } = drawn
    return { scale, rank, box, view, heading, ring: ringOn(main, ring, of.letter, { taken: around, words }) }
  }
  return undefined
}

/** What would be thinner along the edge of the view is left out. Ours. */
const sliver_mm = 1.6
