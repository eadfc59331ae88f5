import type { Fill, Id, Outline, Point } from '../geometry'
import type { Face } from './section'

/** What a painted outline becomes: a region of a part, with its filling, and whose surface its outer edges are. */
export type Coat = { readonly part: Id; readonly name: string; readonly fill: Fill; readonly of: Face['of'] }

/** An outline to be laid over those before it. */
export type PaintedPart = { readonly outline: Outline; readonly label: Coat }

export const coat = (part: Id, name: string, fill: Fill, of: Face['of'], outline: Outline): PaintedPart => ({
  outline,
  label: { part, name, fill, of },
})

/** A rectangle between two depths and two places across, counter-clockwise. */
export const box = (x0: number, y0: number, x1: number, y1: number): Outline => [
  [x0, y0],
  [x1, y0],
  [x1, y1],
  [x0, y1],
]

/** How deep the soft strip between a finish and the frame is: a stop bead of 6 mm, common practice. */
export const bead_mm = 6

/** What the soft strip of a stop bead is made of. */
export const stripMaterial = 'pe-foam'

/** A layer of air is no material: still, or in exchange with the outside. */
export const layerFill = (material: Id): Fill => {
  if (material === 'air-still') return { kind: 'air', vented: 'closed' }
  if (material === 'air-ventilated') return { kind: 'air', vented: 'open' }
  return ofMaterial(material)
}

export const ofMaterial = (material: Id): Fill => ({ kind: 'material', material })

export const shifted = (outline: Outline, [dx, dy]: Point): Outline =>
  outline.map(([x, y]): Point => [x + dx, y + dy])
