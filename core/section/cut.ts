import type { Project, ZonePlace } from '../detail'
import { type Id, type Line, overlay, type Region, type Tile } from '../geometry'
import { boxParts } from './box'
import { elementParts, memberId } from './element'
import { facesOf } from './faces'
import { fixingMaterial, fixingPieces } from './fixing'
import { jointParts } from './joint'
import { type Layout, layoutOf } from './layout'
import { coat, type Coat, ofMaterial, type PaintedPart } from './paint'
import type { JointState, Section, Seen } from './section'
import { sillParts } from './sill'
import { groundParts, leafParts, thresholdParts, wallBelow, waterproofing } from './threshold'
import { wallParts } from './wall'

/** A joint is drawn no narrower than this, so that its seals keep an order: ours. */
const narrowest_mm = 0.5

/** Where a cut is made: at which width of the joint, and between the fixings of its side or through them. */
export type CutAt = {
  readonly state: JointState
  readonly width_mm: number
  readonly through?: 'fixing'
}

/**
 * Cuts one zone of an opening at a width of its joint. Whatever the model's fields allow can be cut.
 * A joint that is narrower than half a millimetre is drawn at half a millimetre; that it is too narrow is a finding.
 */
export const cutSection = (project: Project, place: ZonePlace, at: CutAt): Section => {
  const layout = layoutOf(project, place, Math.max(narrowest_mm, at.width_mm))
  const { parts, lines } = paintedParts(layout, at.through)
  const whole = overlay(parts, lines.map(it => it.path), gap(layout)) // prettier-ignore
  return {
    side: place.side,
    zone: place.zone.id,
    state: at.state,
    regions: named(whole.tiles),
    lines: lines.map((line, i): Line => ({ ...line, path: whole.paths[i] ?? line.path })),
    faces: facesOf(whole.edges, whole.tiles, {
      depths: layout.depths,
      onGround: layout.threshold !== undefined,
    }),
    seen: at.through === 'fixing' ? [] : seenIn(layout),
    ...(layout.threshold && { levels: layout.threshold.levels }),
  }
}

/** Screws, lugs and brackets: they stand apart from each other, so a cut passes between them and shows them behind. */
const seenIn = (layout: Layout): readonly Seen[] =>
  layout.fixings.flatMap(fixing =>
    fixingPieces(layout, fixing).map((it): Seen => ({
      part: fixing.id,
      outline: it.outline,
      hidden: true,
      ...(it.name === 'screw' && fixing.kind !== 'frame-plug' && { threaded: true as const }),
      material: fixingMaterial,
    })),
  )

/** The fixings of a side where a cut passes through them. */
const fixingParts = (layout: Layout): readonly PaintedPart[] =>
  layout.fixings.flatMap(fixing =>
    fixingPieces(layout, fixing).map(it =>
      coat(fixing.id, it.name, ofMaterial(fixingMaterial), 'frame', it.outline),
    ),
  )

/** Everything that a cut is painted with, in order: wall, element, what lies in the joint, fixings that it passes through; at a threshold the ground first. */
export const paintedParts = (
  layout: Layout,
  through?: CutAt['through'],
): { readonly parts: readonly PaintedPart[]; readonly lines: readonly Line[] } => {
  const joint = jointParts(layout)
  const foot = sillParts(layout)
  const { threshold } = layout
  return {
    parts: grownTogether([
      ...(threshold
        ? [...groundParts(layout, threshold), ...wallBelow(layout, threshold, wallParts(layout))]
        : [...wallParts(layout), ...foot.parts, ...boxParts(layout)]),
      ...(threshold ? thresholdParts(layout, threshold) : []),
      ...(threshold ? leafParts(layout, threshold) : elementParts(layout)),
      ...joint.parts,
      ...(through === 'fixing' ? fixingParts(layout) : []),
    ]),
    lines: [...joint.lines, ...foot.lines, ...(threshold ? [waterproofing(layout, threshold)] : [])],
  }
}

/** Outlines of one part and one filling grow together where they meet: they carry the very same label. */
const grownTogether = (parts: readonly PaintedPart[]): readonly PaintedPart[] => {
  const labels = new Map<string, Coat>()
  return parts.map(({ outline, label }) => {
    const { part, name, fill, of } = label
    const key = [part, name, of, fill.kind === 'air' ? fill.vented : fill.material].join(' ')
    const first = labels.get(key) ?? label
    labels.set(key, first)
    return { outline, label: first }
  })
}

/** Air that is enclosed and belongs to nothing else is a gap of the element. */
const gap = (at: Layout): Coat => ({
  part: memberId(at.frame, 'gasket'),
  name: 'gap',
  fill: { kind: 'air', vented: 'closed' },
  of: 'frame',
})

type LaidTile = Tile<Coat>

/**
 * Regions named after what owns them, so that the same body has the same name in every cut of its zone: part, outline
 * and filling. Where several bodies have all three in common they are counted from outside to inside, then across:
 * moving the frame or the joint moves them together and leaves that order as it is.
 */
const named = (tiles: readonly LaidTile[]): readonly Region[] => {
  const alike = new Map<string, LaidTile[]>()
  for (const tile of tiles) {
    const name = nameOf(tile.label)
    alike.set(name, [...(alike.get(name) ?? []), tile])
  }
  const ids = new Map<LaidTile, Id>()
  alike.forEach((group, name) =>
    group
      .toSorted((a, b) => outermost(a) - outermost(b) || leftmost(a) - leftmost(b))
      .forEach((tile, i) => ids.set(tile, i === 0 ? name : `${name}.${i + 1}`)),
  )
  return tiles.map(tile => ({
    id: ids.get(tile) ?? nameOf(tile.label),
    part: tile.label.part,
    outline: tile.outline,
    holes: tile.holes,
    fill: tile.label.fill,
  }))
}

const nameOf = ({ part, name, fill }: Coat): Id =>
  `${name.startsWith(`${part}.`) ? name : `${part}.${name}`}.${fill.kind === 'air' ? fill.vented : fill.material}`

const outermost = (tile: LaidTile): number => Math.min(...tile.outline.map(([, y]) => y))
const leftmost = (tile: LaidTile): number => Math.min(...tile.outline.map(([x]) => x))
