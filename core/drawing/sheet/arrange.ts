import type { Point } from '../../geometry'
import { noReach } from './cut-room'
import { columnsOf, liftOf } from './label-columns'
import { pad_mm, a3, a4, type Paper } from './paper'
import {
  acrossOf,
  type Arrangement,
  type Attempt,
  belowOf,
  gap_mm,
  heading_mm,
  isUpright,
  labels_mm,
  marginsAt,
  noteColumnOf,
  onPaper,
  type Wanted,
} from './room'

/** Preferred scales (ISO 5455, reported), with the sheet: a larger sheet before a scale that hides the joint. Ours. */
const attempts: readonly Attempt[] = [
  { paper: a4, scale: 1, notes: 'below' },
  { paper: a4, scale: 0.5, notes: 'below' },
  { paper: a4, scale: 0.5, notes: 'column' },
  { paper: a3, scale: 0.5, notes: 'below' },
  { paper: a3, scale: 0.5, notes: 'aside' },
  { paper: a4, scale: 0.2, notes: 'below' },
  { paper: a3, scale: 0.2, notes: 'below' },
  { paper: a4, scale: 0.1, notes: 'below' },
]

/** Further sheets that are tried only where their scale or their paper is asked for. */
const onlyAsked: readonly Attempt[] = [
  { paper: a4, scale: 0.2, notes: 'column' },
  { paper: a3, scale: 1, notes: 'below' },
  { paper: a3, scale: 1, notes: 'column' },
  { paper: a3, scale: 0.1, notes: 'below' },
]

/** A scale and a paper that were asked for; absent: the first that fits. */
export type Asked = { readonly scale?: number; readonly paper?: Paper['name'] }

/**
 * The first sheet and scale that everything fits on, among those of a scale where one is asked for; a wall too large
 * for all of them gets the last.
 */
export const arrange = (wanted: Wanted, asked: Asked): Arrangement => {
  const tried = triedFor(asked)
  let last: Arranged | undefined
  for (const attempt of tried.length === 0 ? attempts : tried) {
    last = arrangedOn(attempt, wanted)
    if (last.fits) break
  }
  if (last === undefined) throw new Error('no sheet to choose from')
  return last.arrangement
}

const triedFor = ({ scale, paper }: Asked): readonly Attempt[] =>
  scale === undefined && paper === undefined
    ? attempts
    : [...attempts, ...onlyAsked].filter(
        it => (scale ?? it.scale) === it.scale && (paper ?? it.paper.name) === it.paper.name,
      )

/** The scales at which everything fits on some sheet, the largest first. */
export const fittingScales = (wanted: Wanted, paper?: Paper['name']): readonly number[] => {
  const fitting = [...attempts, ...onlyAsked].filter(
    it => (paper === undefined || it.paper.name === paper) && arrangedOn(it, wanted).fits,
  )
  return [...new Set(fitting.map(it => it.scale))].toSorted((a, b) => b - a)
}

type Arranged = { readonly fits: boolean; readonly arrangement: Arrangement }

/** With labels on both sides of a head or sill where they have room there, else on one. */
const arrangedOn = (attempt: Attempt, wanted: Wanted): Arranged => {
  const both = arrangedLevelled({ ...attempt, sides: 'both' }, wanted)
  return both.fits || !isUpright(wanted) ? both : arrangedLevelled({ ...attempt, sides: 'one' }, wanted)
}

/** With its level where that has room, else without. What does not fit without chains does not fit with them. */
const arrangedLevelled = (attempt: Attempt, wanted: Wanted): Arranged => {
  const bare = arrangedAs(attempt, { ...wanted, level_mm: 0, reach: () => noReach })
  if (!bare.fits) return bare
  const withLevel = wanted.level_mm > 0 ? arrangedAs(attempt, wanted) : undefined
  return withLevel?.fits ? withLevel : arrangedAs(attempt, { ...wanted, level_mm: 0 })
}

const arrangedAs = (attempt: Attempt, wanted: Wanted): Arranged => {
  const { paper, scale } = attempt
  const across = acrossOf(attempt, wanted)
  const noteColumn = attempt.notes === 'column' ? noteColumnOf(across, wanted, scale) : undefined
  const below = belowOf(attempt, wanted, noteColumn)
  const [, height] = onPaper(wanted, scale)
  const margin = marginsAt(wanted, scale)
  const [[x0], [, y1]] = paper.frame
  const tall = y1 - below.foot - heading_mm - margin.top - margin.bottom - height
  const lowest = below.foot + margin.bottom
  const usual = liftOf(attempt, wanted, across, { lowest, foot: below.foot, tall, share: lift })
  const viewAt: Point = [across.viewX, lowest + Math.max(0, Math.min(usual, tall - above_mm))]
  const columns = columnsOf(attempt, wanted, across, {
    viewAt,
    foot: below.foot,
    notes_mm: noteColumn ? below.notes_mm + onFoot_mm + 6 : 0,
  })
  const room = columns.reduce(
    (sum, it) =>
      sum + Math.max(0, Math.floor((it.high - it.low) / wanted.labelPitch_mm(across.words) + 1e-6) + 1),
    0,
  )
  return {
    fits: across.words >= leastWords_mm(wanted) && tall >= 0 && wanted.labels <= room,
    arrangement: {
      paper,
      scale,
      viewAt,
      columns,
      ...(wanted.level_mm > 0 && { levelX: across.viewX - margin.left }),
      legend: { at: [below.x, below.top], width_mm: below.width_mm },
      notes: noteColumn
        ? {
            at: [noteColumn.x, below.foot + below.notes_mm + onFoot_mm],
            width_mm: noteColumn.width_mm,
            beside: true,
          }
        : { at: [below.x, below.top - below.legend_mm - gap_mm], width_mm: below.width_mm, beside: false },
      headingAt: [x0 + pad_mm + 1, y1 - 8],
    },
  }
}

const leastWords_mm = ({ longestWord_mm }: Wanted): number =>
  Math.min(labels_mm.least, Math.max(labels_mm.narrowest, longestWord_mm))

/** Notes in the column of labels stand on the line over the legend. */
const onFoot_mm = 2

/** A view stands a little below the middle of its room, clear of the heading. Ours. */
const lift = 0.4
/** Words of a narrow first layer stand beyond the end of its chain, below the heading. Ours. */
const above_mm = 8
