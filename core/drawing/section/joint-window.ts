import type { Id, Outline, Point } from '../../geometry'
import type { Section } from '../../section'
import type { Chain } from '../sizes/chain'
import { clipLine, clipOutline, type Window } from './clip'
import type { ListedPart } from './listed-part'
import { extentOf } from './pieces'
import { extentOfFrame, extentOfRole, type Sizes } from './section-sizes'

/** The joint of a section, as far as it is filled or could be: from the reveal to what stands in the opening. Model mm. */
export type JointBox = { readonly low: Point; readonly high: Point }

type Parts = ReadonlyMap<Id, ListedPart>

/** Where the joint of a section lies; nothing where a section shows no frame. */
export const jointBox = (section: Section, parts: Parts): JointBox | undefined => {
  const stands = metFirst(section, parts)
  if (stands === undefined || stands.low[0] <= 0) return undefined
  const depths = [stands, ...sealsIn(section, parts, stands.low[0])].flatMap(it => [it.low[1], it.high[1]])
  return { low: [0, Math.min(...depths)], high: [stands.low[0], Math.max(...depths)] }
}

/** What stands at the joint: the frame, or the box on its head. */
const metFirst = (section: Section, parts: Parts): JointBox | undefined => {
  const frame = extentOfFrame(section, parts)
  const box = section.side === 'head' ? extentOfRole(section, parts, 'frame', frame?.of) : undefined
  return frame && box && box.low[0] < frame.low[0] - same_mm ? box : frame
}

/** The bodies of seals that lie between reveal and flank, or in good part so. */
const sealsIn = (section: Section, parts: Parts, flank: number): readonly JointBox[] =>
  section.regions
    .filter(it => parts.get(it.part)?.role === 'seal' && it.fill.kind === 'material')
    .map(it => extentOf(it.outline))
    .filter(({ low, high }) => Math.min(high[0], flank) - Math.max(low[0], 0) > (high[0] - low[0]) / 2)

/** How much is shown round a joint, in mm of the model: of the wall, of the frame, and beyond both its ends. */
export type Round = { readonly wall_mm: number; readonly frame_mm: number; readonly ends_mm: number }

/**
 * The window onto a joint with what is round it, within what a section has. What would show as a sliver along its edge, less
 * than so much of the model, is left out.
 */
export const jointWindow = (section: Section, joint: JointBox, round: Round, sliver_mm: number): Window => {
  const places = section.regions.flatMap(it => it.outline)
  const all = extentOf(places)
  const lowAt = (axis: 0 | 1, off: number): number => {
    const edge = Math.max(all.low[axis], joint.low[axis] - off)
    return Math.max(edge, ...places.map(it => it[axis]).filter(it => it < Math.min(edge + sliver_mm, joint.low[axis]))) // prettier-ignore
  }
  const highAt = (axis: 0 | 1, off: number): number => {
    const edge = Math.min(all.high[axis], joint.high[axis] + off)
    return Math.min(edge, ...places.map(it => it[axis]).filter(it => it > Math.max(edge - sliver_mm, joint.high[axis]))) // prettier-ignore
  }
  return [
    [lowAt(0, round.wall_mm), lowAt(1, round.ends_mm)],
    [highAt(0, round.frame_mm), highAt(1, round.ends_mm)],
  ]
}

/** The chains of a joint: its width across; and through it where each seal begins and ends, from end to end. */
export const jointChains = (
  section: Section,
  { low, high }: JointBox,
  { parts, sizes, window }: { readonly parts: Parts; readonly sizes: Sizes; readonly window: Window },
): { readonly across: Chain; readonly through: Chain } => {
  const ends = [
    low[1],
    high[1],
    ...sealsIn(section, parts, high[0]).flatMap(it => [it.low[1], it.high[1]]),
  ].filter(it => window[0][1] <= it && it <= window[1][1])
  const places = ends
    .toSorted((a, b) => a - b)
    .filter((it, at, all) => at === 0 || it - (all[at - 1] ?? -Infinity) > same_mm)
  const [start_mm = low[1], ...links] = places
  return {
    across: { start_mm: low[0], links: [{ to_mm: high[0], ...sizes.joint }] },
    through: { start_mm, links: links.map(to_mm => ({ to_mm })) },
  }
}

/** Places nearer than this are one place. Ours. */
const same_mm = 0.5

/**
 * What is numbered at a joint: its seals, and the layers and the frame that it lies between. Sash, glass and what lies
 * inside a frame have their numbers in the whole section.
 */
export const partsAtJoint = (parts: readonly ListedPart[]): readonly ListedPart[] => {
  const frame = parts.find(it => it.role === 'frame')
  return parts.filter(it => it.role === 'seal' || it.role === 'layer' || it === frame)
}

/** What would be narrower on paper is an edge, and no part that could be pointed at. Ours. */
const least_mm = 0.6

/** Those of some parts that a window shows at a scale, more than an edge of them. */
export const shownAt = (
  parts: readonly ListedPart[],
  section: Section,
  { window, scale }: { readonly window: Window; readonly scale: number },
): readonly ListedPart[] =>
  parts.filter(part => {
    const isOwn = (of: { readonly part: Id }) => part.of.includes(of.part)
    const isShown = (outline: Outline) => narrowness(clipOutline(outline, window)) * scale >= least_mm
    return (
      section.regions.some(it => isOwn(it) && isShown(it.outline)) ||
      section.lines.some(it => isOwn(it) && clipLine(it.path, window).length > 0) ||
      section.seen.some(it => isOwn(it) && isShown(it.outline))
    )
  })

/** The shorter side of the box round some points; negative where there are none. */
const narrowness = (points: readonly Point[]): number => {
  const { low, high } = extentOf(points)
  return Math.min(high[0] - low[0], high[1] - low[1])
}
