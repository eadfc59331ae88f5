import type { Point } from '../../geometry'
import type { Mark } from '../mark'
import { type CutBlock, cutBlocks } from '../sheet/cut-block'
import { line } from '../sheet/marks'
import { pad_mm, a3 } from '../sheet/paper'
import type { SheetOptions } from '../sheet/sheet-options'
import type { Box } from '../sheet/side-words'
import { listedParts } from '../section/listed-parts'
import { noteIn } from '../sizes/lengths'
import { type FaultList, faultList } from './fault-list'
import { type Beside, type Fault, faultNumbers, faultsOf, type Pair } from './faults'
import { stripHeight_mm } from './foot-strip'

/** How a sheet of two details is asked for: it has one paper, and the verdicts come with the details. */
export type BesideOptions = Omit<SheetOptions, 'report' | 'paper' | 'heat'> & {
  /** whose project fills the title block; absent: that of the first detail */
  readonly titled?: 0 | 1
}

/** ISO 5455, reported. */
export const scales = [0.5, 0.2, 0.1] as const
const heading_mm = 17
/** The name of a detail with the line below it. */
const name_mm = 10.5
/** Between two details and beside a list that stands between them. Ours. */
const apart_mm = 4
/** A list between two details is at least so wide. Ours. */
const narrow_mm = 62
const widest_mm = 118
/** So many faults are listed at the most, fewer where there is no room: a scale that shows the joint comes first. Ours. */
const mostListed = [Infinity, 14, 10, 7, 5, 3, 0] as const

/** Where everything of a sheet of two details stands. Paper mm. */
export type Arranged = {
  readonly scale: number
  readonly details: readonly {
    readonly block: CutBlock
    readonly at: Point
    readonly titleAt: Point
    /** all that is its own of the sheet, below its name */
    readonly room: Box
  }[]
  readonly list: FaultList
  readonly listAt: Point
  /** lines that part the list from the details */
  readonly lines: readonly Mark[]
  readonly listed: readonly Fault[]
  /** the foot of all that, where the legend begins */
  readonly low: number
}

/**
 * The largest scale at which both details fit with their faults between them or below; with fewer faults where they must
 * be. Numbers have so many tries of more room, where that fits as well.
 */
export const arrangedAt = (
  pair: Pair,
  { language, unit = 'mm', titled = 0 }: Pick<BesideOptions, 'language' | 'unit' | 'titled'>,
  { tried, tries }: { readonly tried: readonly number[]; readonly tries: number },
): Arranged | undefined => {
  const faults = faultsOf(pair)
  const low = a3.frame[0][1] + stripHeight_mm(pair, pair[titled].project, language)
  for (const most of mostListed.filter((it, at) => at === 0 || it < faults.length))
    for (const scale of tried) {
      const listed = faults.slice(0, most)
      const listOf: ListOf = on => faultList(listed, faults.length - listed.length, { ...on, language })
      const blocks = pair.map((it, at) =>
        cutBlocks(it.project, { ...it, letter: '' }, partsAt(it, unit), {
          scale,
          language,
          unit,
          titled: false,
          levels: false,
          numbered: faultNumbers(listed, it, at === 0 ? 0 : 1),
        }),
      )
      const put = (of: readonly CutBlock[]): Arranged | undefined => {
        const found = between(of, low, listOf) ?? below(of, low, listOf)
        return found && { ...found, scale, low, listed }
      }
      const close = put(blocks.map(it => it.close))
      if (close) return tries === 0 ? close : (put(blocks.map(it => it.roomy(tries))) ?? close)
    }
  return undefined
}

const partsAt = ({ project, place }: Beside, unit: NonNullable<BesideOptions['unit']>) =>
  listedParts(project, place).map(it => ({ ...it, note: noteIn(it.note, unit) }))

type Put = Omit<Arranged, 'scale' | 'low' | 'listed'>
type ListOf = (on: { readonly width_mm: number; readonly columns: number }) => FaultList

/** The list between the two details, from the heading down to the title block. */
const between = ([a, b]: readonly CutBlock[], low: number, listOf: ListOf): Put | undefined => {
  if (!a || !b) return undefined
  const [[x0], [x1, y1]] = a3.frame
  const top = y1 - heading_mm
  const spare = x1 - x0 - a.size_mm[0] - b.size_mm[0] - 2 * pad_mm - 4 * apart_mm
  if (spare < narrow_mm) return undefined
  const width_mm = Math.min(widest_mm, spare)
  const list = listOf({ width_mm, columns: 1 })
  const room = top - low - name_mm - pad_mm
  if (Math.max(a.size_mm[1], b.size_mm[1]) > room || list.height_mm + pad_mm > top - low) return undefined
  const share = (spare - width_mm) / 2
  const aX = x0 + pad_mm + share / 2
  const listX = x0 + pad_mm + share + a.size_mm[0] + 2 * apart_mm
  const bX = listX + width_mm + 2 * apart_mm + share / 2
  const lineAt = (x: number) => line('field', [x, top], [x, low])
  return {
    details: [a, b].map((block, at) => ({
      ...detailAt(block, at === 0 ? aX : bX, top, room),
      room:
        at === 0
          ? [[x0, low], [listX - apart_mm, top - name_mm]]
          : [[listX + width_mm + apart_mm, low], [x1, top - name_mm]],
    })), // prettier-ignore
    list,
    listAt: [listX, top - pad_mm],
    lines: [lineAt(listX - apart_mm), lineAt(listX + width_mm + apart_mm)],
  }
}

/** The list below the two details, in columns over the width of the sheet. */
const below = ([a, b]: readonly CutBlock[], low: number, listOf: ListOf): Put | undefined => {
  if (!a || !b) return undefined
  const [[x0], [x1, y1]] = a3.frame
  const half = (x1 - x0) / 2
  if (Math.max(a.size_mm[0], b.size_mm[0]) > half - pad_mm) return undefined
  const top = y1 - heading_mm
  const list = listOf({ width_mm: x1 - x0 - 2 * pad_mm, columns: 3 })
  const listTop = low + list.height_mm + 2 * pad_mm
  const room = top - listTop - name_mm - pad_mm
  if (Math.max(a.size_mm[1], b.size_mm[1]) > room) return undefined
  return {
    details: [a, b].map((block, at) => ({
      ...detailAt(block, x0 + at * half + Math.max(pad_mm, (half - block.size_mm[0]) / 2), top, room),
      room: [[x0 + at * half, listTop], [x0 + (at + 1) * half, top - name_mm]],
    })), // prettier-ignore
    list,
    listAt: [x0 + pad_mm, listTop - pad_mm],
    lines: [
      line('field', [x0, listTop], [x1, listTop]),
      line('field', [x0 + half, top], [x0 + half, listTop]),
    ],
  }
}

/** A detail hangs in the upper part of its room, below its name. Ours. */
const lift = 0.2

const detailAt = (block: CutBlock, x: number, top: number, room: number) => ({
  block,
  at: [x, top - name_mm - block.size_mm[1] - (room - block.size_mm[1]) * lift] as const,
  titleAt: [x, top - 5] as const,
})
