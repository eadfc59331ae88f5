import { profiles } from '../../core/detail'
import { type Fill, type Id, type Outline, overlay, type Point } from '../../core/geometry'
import type { Section } from '../../core/section'

type Label = { readonly part: Id; readonly fill: Fill }

const box = (x0: number, y0: number, x1: number, y1: number): Outline => [
  [x0, y0],
  [x1, y0],
  [x1, y1],
  [x0, y1],
]
const of = (part: Id, material: string): Label => ({ part, fill: { kind: 'material', material } })
const isPoint = (it: Point | undefined): it is Point => it !== undefined

/**
 * A jamb laid by hand: render 10, insulation 120 that covers the frame by 30, sand-lime masonry 175, plaster 15 on wall
 * and flank; a joint of 12 with tape, foam and an inner membrane; a frame screw.
 */
export const aSection = ({ profile = 'timber-78', joint_mm = 12, wool = 'mineral-wool' } = {}): Section => {
  const frame = profiles.find(it => it.id === profile)
  if (frame === undefined) throw new Error(`no profile ${profile}`)
  const [face, flank] = [130, joint_mm]
  const depth = frame.depth_mm
  const cover = flank + 30
  const painted: { outline: Outline; label: Label }[] = [
    { outline: box(-1000, 0, cover + 10, 10), label: of('p1', 'cement-render') },
    { outline: box(cover, 10, cover + 10, face), label: of('p1', 'cement-render') },
    { outline: box(-1000, 10, cover, face), label: of('p2', wool) },
    { outline: box(-1000, face, 0, face + 175), label: of('p3', 'calcium-silicate-1800') },
    { outline: box(-1000, face + 175, 0, face + 190), label: of('p4', 'gypsum-plaster') },
    { outline: box(0, face + depth, 15, face + 190), label: of('p4', 'gypsum-plaster') },
    ...frame.bodies.map(body => ({
      outline: body.outline.map(([u, v]): Point => [flank + u, face + v]),
      label: { part: `f1.${body.member}`, fill: body.fill },
    })),
    { outline: box(0, face, flank, face + 20), label: of('s1', 'impregnated-foam') },
    { outline: box(0, face + 20, flank, face + depth), label: of('s2', 'gun-foam') },
  ]
  const membrane: Point[] = [
    [flank, face + depth - 20],
    [flank, face + depth],
    [0, face + depth],
    [0, face + depth + 50],
  ]
  const laid = overlay(painted, [membrane], { part: 'air', fill: { kind: 'air', vented: 'closed' } })
  return {
    side: 'left',
    zone: 'z1',
    state: 'planned',
    regions: laid.tiles.map((tile, at) => ({
      id: `r${at}`,
      part: tile.label.part,
      outline: tile.outline,
      holes: tile.holes,
      fill: tile.label.fill,
    })),
    lines: laid.paths.map((path, at) => ({
      id: `n${at}`,
      part: 's3',
      path: path.filter(isPoint),
      thickness_mm: 0.6,
      lambda_W_mK: 0.22,
    })),
    faces: [],
    seen: [{ part: 'x1', outline: screw(flank, face + 40), hidden: true }],
  }
}

const screw = (flank: number, y: number): Outline => [
  [flank + 30, y - 3.75],
  [flank + 30, y + 3.75],
  [-58, y + 3.75],
  [-64, y],
  [-58, y - 3.75],
]
