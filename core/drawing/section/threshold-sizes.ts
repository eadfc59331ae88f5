import type { Section } from '../../section'
import type { Chain, Link } from '../sizes/chain'
import type { JointSize } from './listed-part'

/** Places nearer than this are one place. Ours. */
const same_mm = 0.5

/**
 * Chains up a threshold: the joint and its profile; the levels from the lowest to the top, which are the steps on both
 * sides; the upstand of the waterproofing over the surface outside, where it is not a link of that chain already.
 */
export const thresholdChains = (
  levels: NonNullable<Section['levels']>,
  joint_mm: number,
  size: JointSize | undefined,
): readonly Chain[] => {
  const { floor_mm, top_mm, surface_mm, edge_mm } = levels
  const joint: readonly Link[] =
    joint_mm > same_mm ? [{ to_mm: joint_mm, ...size }, { to_mm: top_mm }] : [{ to_mm: top_mm }]
  const places = [surface_mm, floor_mm, edge_mm, top_mm]
    .toSorted((a, b) => a - b)
    .filter((it, at, all) => at === 0 || it - (all[at - 1] ?? -Infinity) > same_mm)
  const [start, ...more] = places
  const steps: readonly Chain[] =
    start === undefined || more.length === 0
      ? []
      : [{ start_mm: start, links: more.map((to_mm): Link => ({ to_mm })) }]
  const isLink = more.some((to, at) => near(to, edge_mm) && near(places[at] ?? to, surface_mm))
  const isUp = edge_mm - surface_mm > same_mm
  return [
    { start_mm: 0, links: joint },
    ...steps,
    ...(isUp && !isLink ? [{ start_mm: surface_mm, links: [{ to_mm: edge_mm }] }] : []),
  ]
}

const near = (a: number, b: number): boolean => Math.abs(a - b) <= same_mm
