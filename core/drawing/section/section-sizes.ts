import type { FieldAt } from '../../detail'
import type { Id, Region } from '../../geometry'
import type { Section } from '../../section'
import type { Chain, Link } from '../sizes/chain'
import type { Window } from './clip'
import type { ListedPart } from './listed-part'
import { extentOf } from './pieces'
import { thresholdChains } from './threshold-sizes'

/** What the model holds about the sizes of a section beyond its outlines. */
export type Sizes = {
  /** the joint as a range: `12 ±3` or `9…15` */
  readonly joint?: { readonly words: string; readonly field?: FieldAt }
  readonly cover?: FieldAt
  readonly position?: FieldAt
  readonly thickness?: (layer: Id) => FieldAt
}

/** Places nearer than this are one place. Ours. */
const same_mm = 0.5

/** Chains across the joint: joint, cover and what is left of the frame; then the whole face of the frame. */
export const chainsAcross = (
  section: Section,
  parts: ReadonlyMap<Id, ListedPart>,
  sizes: Sizes,
): readonly Chain[] => {
  const frame = extentOfFrame(section, parts)
  if (frame === undefined) return []
  const flank = frame.low[0]
  if (section.levels) return thresholdChains(section.levels, flank, sizes.joint)
  const ends = section.regions
    .filter(it => parts.get(it.part)?.role === 'layer' && it.fill.kind === 'material')
    .map(it => extentOf(it.outline))
    .filter(it => it.low[1] < frame.low[1])
    .map(it => it.high[0])
  const covering = ends.filter(it => flank + same_mm < it && it < frame.high[0] - same_mm)
  const link = (to_mm: number, more: Omit<Link, 'to_mm'> = {}): Link => ({ to_mm, ...more })
  // a box on the head stands between the joint and the frame
  const box = section.side === 'head' ? extentOfRole(section, parts, 'frame', frame.of) : undefined
  const met = box && box.low[0] < flank - same_mm ? [box.low[0], flank] : [flank]
  const joint: Link[] = met.flatMap((to_mm, i) =>
    to_mm > same_mm ? [link(to_mm, i === 0 ? sizes.joint : {})] : [],
  )
  const start_mm = Math.min(0, flank)
  const inner = unique(covering)
  const fine: Chain = {
    start_mm,
    links: [
      ...joint,
      ...inner.map((it, at) => link(it, at === 0 && sizes.cover ? { field: sizes.cover } : {})),
      link(frame.high[0]),
    ],
  }
  if (inner.length === 0) return [fine]
  return [fine, { start_mm: flank, links: [link(frame.high[0])] }]
}

/** Chains through the wall: its layers, the place of the frame in it, the whole. */
export const chainsThrough = (
  section: Section,
  window: Window,
  parts: ReadonlyMap<Id, ListedPart>,
  sizes: Sizes,
): readonly Chain[] => {
  const layers = layersAt(section.regions, window[0][0], parts)
  const [first, last] = [layers[0], layers[layers.length - 1]]
  if (first === undefined || last === undefined) return []
  const build: Chain = {
    start_mm: first.from,
    links: layers.map(it => ({ to_mm: it.to, ...(sizes.thickness && { field: sizes.thickness(it.part) }) })),
  }
  const frame = extentOfFrame(section, parts)
  const whole: Chain = { start_mm: first.from, links: [{ to_mm: last.to }] }
  const chains = layers.length > 1 ? [build, whole] : [whole]
  if (frame === undefined) return chains
  const places = unique([first.from, frame.low[1], frame.high[1], last.to])
  const position: Chain = {
    start_mm: places[0] ?? 0,
    links: places.slice(1).map(to_mm => ({
      to_mm,
      ...(sizes.position && to_mm === frame.low[1] && { field: sizes.position }),
    })),
  }
  return [...chains.slice(0, -1), position, whole]
}

const unique = (places: readonly number[]): number[] =>
  places
    .toSorted((a, b) => a - b)
    .filter((it, at, all) => at === 0 || it - (all[at - 1] ?? -Infinity) > same_mm)

/** The frame proper is the first part listed as a frame, by its own outline: sash, cores and beads follow it. */
export const extentOfFrame = (section: Section, parts: ReadonlyMap<Id, ListedPart>) => {
  const own = [...parts.values()].find(it => it.role === 'frame')?.of[0]
  const points = section.regions
    .filter(it => it.part === own && it.fill.kind === 'material')
    .flatMap(it => it.outline)
  return points.length === 0 ? undefined : { ...extentOf(points), of: own }
}

/** What lies furthest out of all that is listed in a role, but for one part of the section. */
export const extentOfRole = (
  section: Section,
  parts: ReadonlyMap<Id, ListedPart>,
  role: ListedPart['role'],
  but: Id | undefined,
) => {
  const points = section.regions
    .filter(it => it.part !== but && parts.get(it.part)?.role === role && it.fill.kind === 'material')
    .flatMap(it => it.outline)
  return points.length === 0 ? undefined : extentOf(points)
}

/** The layers that a line through the wall passes, outside to inside. */
const layersAt = (
  regions: readonly Region[],
  x: number,
  parts: ReadonlyMap<Id, ListedPart>,
): { readonly part: Id; readonly from: number; readonly to: number }[] => {
  const passed = regions.flatMap(region => {
    if (parts.get(region.part)?.role !== 'layer') return []
    const { low, high } = extentOf(region.outline)
    return low[0] < x && x < high[0] ? [{ part: region.part, ...spanAt(region, x) }] : []
  })
  return passed.filter(it => it.to > it.from).toSorted((a, b) => a.from - b.from)
}

const spanAt = (region: Region, x: number): { from: number; to: number } => {
  const crossings = region.outline.flatMap((from, at) => {
    const to = region.outline[(at + 1) % region.outline.length] ?? from
    if (from[0] < x === to[0] < x) return []
    return [from[1] + ((x - from[0]) / (to[0] - from[0])) * (to[1] - from[1])]
  })
  return { from: Math.min(...crossings), to: Math.max(...crossings) }
}
