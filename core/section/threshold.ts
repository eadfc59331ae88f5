import { thresholdPieceId } from '../detail'
import { isCounterClockwise, type Line, type Outline, type Point, reversed } from '../geometry'
import { memberId } from './element'
import type { Layout } from './layout'
import { box, coat, ofMaterial, type PaintedPart, shifted } from './paint'
import type { ThresholdLayout } from './threshold-layout'

const screed = ofMaterial('screed')
const gravel = ofMaterial('gravel')
const soil = ofMaterial('soil')

/** The strip along the edge of a screed that keeps it free: common practice. */
const strip = { material: 'pe-foam', thickness_mm: 10 } as const

/** A channel of thin sheet, its grating of bars: ours. */
const channelOf = {
  material: 'stainless-steel',
  wall_mm: 2,
  bar_mm: 5,
  pitch_mm: 15,
  grating_mm: 20,
} as const

/**
 * The ground before and behind a threshold with what is laid on it, each outline over those before: surface outside on
 * its bed, floor inside on its slab. Walls, base and element are painted over it.
 */
export const groundParts = (at: Layout, it: ThresholdLayout): readonly PaintedPart[] => [
  ...surfaceParts(at, it),
  ...floorParts(at, it),
]

/** The surface outside and its bed, from where the section ends to the face of the frame; below the frame only ground. */
const surfaceParts = (at: Layout, it: ThresholdLayout): readonly PaintedPart[] => {
  const { part, levels, out_mm } = it
  const to = at.position_mm
  const top = surfaceLine(at, it)
  const paving_mm = part.paving.thickness_mm.value
  const layer = (name: 'ground' | 'surface', body: string, fill: PaintedPart['label']['fill'], outline: Outline) =>
    coat(thresholdPieceId(part.id, name), body, fill, 'sill', outline)
  // All share one upper line: a layer covers the upper part of what is below it.
  const down = (thickness_mm: number): Outline =>
    turned([...top, ...top.map(([x, y]): Point => [x - thickness_mm, y]).toReversed()])
  const under = Math.min(0, levels.surface_mm)
  return [
    layer('ground', 'soil', soil, turned([...top, [-at.reach_mm, to], [-at.reach_mm, out_mm]])),
    ...(at.depths.outer_mm > to
      ? [layer('ground', 'soil', soil, box(-at.reach_mm, to, under, at.depths.outer_mm))]
      : []),
    layer('surface', 'bed', gravel, down(paving_mm + part.bed_mm.value)),
    layer('surface', 'paving', ofMaterial(part.paving.material), down(paving_mm)),
  ]
} // prettier-ignore

/** The surface outside, from its far end to the door: level over a channel, with its fall beyond it. */
const surfaceLine = (at: Layout, { levels, fall, out_mm, channel }: ThresholdLayout): readonly Point[] => {
  const to = at.position_mm
  const knee = channel?.from_mm ?? to
  const far: Point = [levels.surface_mm - fall * (knee - out_mm), out_mm]
  return [far, ...(knee < to ? [[levels.surface_mm, knee] as const] : []), [levels.surface_mm, to]]
}

const turned = (outline: Outline): Outline => (isCounterClockwise(outline) ? outline : reversed(outline))

/** The floor inside, over what carries the door and behind it, with the strip that keeps its screed off the profile. */
const floorParts = (at: Layout, it: ThresholdLayout): readonly PaintedPart[] => {
  const { part, levels, in_mm } = it
  const back = at.position_mm + at.depth_mm
  const from = Math.min(at.depths.bearing_mm, back)
  const laid = (name: string, fill: PaintedPart['label']['fill'], outline: Outline) =>
    coat(thresholdPieceId(part.id, 'floor'), name, fill, 'floor', outline)
  const layer = (name: string, fill: PaintedPart['label']['fill'], low: number, high: number) =>
    laid(name, fill, box(low, from, high, in_mm))
  const finish = levels.floor_mm - part.finish.thickness_mm.value
  const screeded = finish - part.screed_mm.value
  const insulated = screeded - part.insulation.thickness_mm.value
  const slab = insulated - part.slab_mm.value
  const stripFrom = Math.max(0, screeded)
  return [
    coat(thresholdPieceId(part.id, 'ground'), 'soil', soil, 'floor', box(-at.reach_mm, from, slab, in_mm)),
    layer('slab', ofMaterial('reinforced-concrete'), slab, insulated),
    layer('insulation', ofMaterial(part.insulation.material), insulated, screeded),
    layer('screed', screed, screeded, finish),
    layer('finish', ofMaterial(part.finish.material), finish, levels.floor_mm),
    ...(levels.floor_mm > stripFrom
      ? [laid('strip', ofMaterial(strip.material), box(stripFrom, back, levels.floor_mm, back + strip.thickness_mm))]
      : []),
  ]
} // prettier-ignore

/**
 * The wall below a threshold: a thin skin ends in the ground and turns over what lies before the frame, layers behind
 * the bearing one stand on the floor where that lies lower.
 */
export const wallBelow = (
  at: Layout,
  it: ThresholdLayout,
  wall: readonly PaintedPart[],
): readonly PaintedPart[] => {
  const { skin, behind, outer_mm } = at.depths
  const { surface_mm, floor_mm } = it.levels
  const isBehind = (part: string): boolean => behind.some(one => one.layer.id === part)
  return wall.flatMap((one): readonly PaintedPart[] => {
    if (one.label.part === skin?.layer.id) {
      if (surface_mm >= 0) return []
      const low = Math.max(-at.reach_mm, surface_mm - intoGround_mm)
      const cap = box(0, outer_mm, skin.to_mm - skin.from_mm, at.position_mm)
      return [
        { label: one.label, outline: box(low, skin.from_mm, 0, skin.to_mm) },
        ...(at.position_mm > outer_mm ? [{ label: one.label, outline: cap }] : []),
      ]
    }
    if (!isBehind(one.label.part)) return [one]
    const outline = one.outline.map(([x, y]): Point => [Math.max(x, Math.min(0, floor_mm)), y])
    return floor_mm < 0 ? [{ label: one.label, outline }] : []
  })
}

/** How far a render reaches into the ground: ours. */
const intoGround_mm = 100

/** What the profile stands on, the profile, and the channel before it. */
export const thresholdParts = (at: Layout, it: ThresholdLayout): readonly PaintedPart[] => {
  const { part, levels } = it
  const [from, to] = [at.position_mm, at.position_mm + at.depth_mm]
  return [
    coat(part.id, 'base', ofMaterial(part.base.material), 'sill', box(-part.base.thickness_mm.value, from, 0, to)),
    ...channelParts(it),
    coat(at.frame, 'threshold', ofMaterial(part.material), 'frame', box(at.width_mm, from, levels.top_mm, to)),
  ]
} // prettier-ignore

/** A trough of sheet that is open to outside between the bars of its grating. */
const channelParts = ({ part, levels, channel }: ThresholdLayout): readonly PaintedPart[] => {
  if (channel === undefined) return []
  const { wall_mm, bar_mm, pitch_mm } = channelOf
  const { surface_mm: top } = levels
  const bottom = top - part.channelDepth_mm.value
  const sheet = ofMaterial(channelOf.material)
  const [from, to] = [channel.from_mm + wall_mm, channel.to_mm - wall_mm]
  const id = thresholdPieceId(part.id, 'channel')
  const grating = Math.min(channelOf.grating_mm, part.channelDepth_mm.value / 3)
  const count = Math.floor((to - from - pitch_mm) / pitch_mm)
  const first = from + (to - from - (count - 1) * pitch_mm - bar_mm) / 2
  const bars = Array.from({ length: count }, (_, i) => first + i * pitch_mm)
  return [
    coat(id, 'trough', sheet, 'sill', box(bottom, channel.from_mm, top, channel.to_mm)),
    coat(id, 'water', { kind: 'air', vented: 'open' }, 'sill', box(bottom + wall_mm, from, top, to)),
    ...bars.map(y => coat(id, 'trough', sheet, 'sill', box(top - grating, y, top, y + bar_mm))),
  ]
}

/** A leaf seals by two strips of this width on the profile: ours. */
const seal_mm = 8

/**
 * The leaf over a threshold: sash and glazing let down until they stand over the profile, the foot of the sash made
 * level, and the strips that it seals by. Of the frame nothing is left but the profile.
 */
export const leafParts = (at: Layout, it: ThresholdLayout): readonly PaintedPart[] => {
  const { bodies } = at.profile
  const sash = bodies.filter(one => one.member === 'sash')
  const by: Point = [it.levels.top_mm + it.play_mm - it.leafLow_mm, at.position_mm]
  const kept = bodies.filter(
    one =>
      one.member === 'sash' || one.member === 'glazing' || one.member === 'bead' || isWithin(one.outline, sash.map(of => of.outline)),
  )
  const vs = sash.flatMap(one => one.outline.map(([, v]) => v))
  const [from, to] = [Math.min(...vs), Math.max(...vs)]
  const foot = coat(
    memberId(at.frame, 'sash'), 'body', ofMaterial(footOf(sash.map(one => one.fill))), 'frame',
    shifted(box(it.leafLow_mm, from, footTop_mm(sash.map(one => one.outline)), to), by),
  )
  const seal = (v: number) =>
    coat(memberId(at.frame, 'gasket'), 'body', ofMaterial('epdm'), 'frame',
      box(it.levels.top_mm, at.position_mm + v, it.levels.top_mm + it.play_mm, at.position_mm + v + seal_mm))
  const inner = Math.min(to, at.depth_mm) - 2 * seal_mm
  return [
    foot,
    ...kept.map(one => coat(memberId(at.frame, one.member), 'body', one.fill, one.of, shifted(one.outline, by))),
    seal(from + seal_mm),
    ...(inner > from + 3 * seal_mm ? [seal(inner)] : []),
  ]
} // prettier-ignore

/** A level foot is solid: of timber or plastic as the sash, of reinforced plastic where that is metal. Ours. */
const footOf = (fills: readonly PaintedPart['label']['fill'][]): string =>
  fills
    .flatMap(it => (it.kind === 'material' ? [it.material] : []))
    .find(it => it !== 'aluminium' && it !== 'steel') ?? 'polyamide-glass-25'

/** The highest place of the lower edge of a sash. */
const footTop_mm = (sash: readonly Outline[]): number => {
  const vs = [...new Set(sash.flatMap(it => it.map(([, v]) => v)))].toSorted((a, b) => a - b)
  return Math.max(
    ...vs.slice(1).map((v, i) => {
      const low = lowestBetween(sash, vs[i] ?? v, v)
      return Number.isFinite(low) ? low : -Infinity
    }),
  )
}

/** Whether a body lies above the lower edge of the sash: what lies below it goes with the frame. */
const isWithin = (outline: Outline, sash: readonly Outline[]): boolean => {
  const us = outline.map(([u]) => u)
  const vs = outline.map(([, v]) => v)
  return Math.min(...us) >= lowestBetween(sash, Math.min(...vs), Math.max(...vs))
}

/** The lowest place of some outlines between two depths, by their corners and edges; nothing there is infinitely high. */
const lowestBetween = (outlines: readonly Outline[], from: number, to: number): number =>
  Math.min(
    ...outlines.flatMap(outline =>
      outline.flatMap(([u, v], i) => {
        const [u1, v1] = outline[(i + 1) % outline.length] ?? [u, v]
        return Math.min(v, v1) < to && Math.max(v, v1) > from ? [Math.min(u, u1)] : []
      }),
    ),
  )

/** How far the waterproofing laps down the wall: ours. */
const lap_mm = 300

/** The waterproofing: up the wall, under or before the joint to the face of the frame, and turned up there to its edge. */
export const waterproofing = (at: Layout, { part, levels }: ThresholdLayout): Line => {
  const from = at.position_mm
  const under = from < 0 ? -part.base.thickness_mm.value : 0
  const path: readonly Point[] = [
    [-Math.max(lap_mm, part.base.thickness_mm.value + lap_mm / 2), 0],
    [under, 0],
    [under, from],
    [levels.edge_mm, from],
  ]
  const id = thresholdPieceId(part.id, 'sheet')
  return {
    id: `${id}.plane`,
    part: id,
    path: path.filter(([x, y], i) => i === 0 || x !== path[i - 1]?.[0] || y !== path[i - 1]?.[1]),
    thickness_mm: 4,
    lambda_W_mK: 0.23,
    sd_m: sheetSd,
  }
}

/** A sheet of bitumen or plastic, tight in any case. Own convention. */
const sheetSd = { winter: { min: 50, max: 1500 }, summer: { min: 50, max: 1500 } }
