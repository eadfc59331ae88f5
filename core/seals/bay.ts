import type { Fill, Id, Outline, Point, Region } from '../geometry'
import type { Bay } from './seal-kind'

/** Width of a bay as it is drawn, between the two faces. */
export const drawnWidth_mm = (bay: Bay): number => bay.frameFace[0][0] - bay.wallFace[0][0]

/** The rectangle of a bay between two depths, counter-clockwise. */
export const across = (bay: Bay, from_mm: number, to_mm: number): Outline => {
  const wall = bay.wallFace[0][0]
  const frame = bay.frameFace[0][0]
  return [
    [wall, from_mm],
    [frame, from_mm],
    [frame, to_mm],
    [wall, to_mm],
  ]
}

export const body = (part: Id, name: string, outline: Outline, fill: Fill): Region => ({
  id: `${part}.${name}`,
  part,
  outline,
  holes: [],
  fill,
})

export const ofMaterial = (material: Id): Fill => ({ kind: 'material', material })

/** Points of half an ellipse across the bay at a depth, from the frame to the wall, bulging by `rise_mm` (towards outside when negative). */
export const arched = (bay: Bay, at_mm: number, rise_mm: number, steps = 16): readonly Point[] => {
  const wall = bay.wallFace[0][0]
  const frame = bay.frameFace[0][0]
  const middle = (wall + frame) / 2
  const half = (frame - wall) / 2
  return Array.from({ length: steps + 1 }, (_, i): Point => {
    const angle = (Math.PI * i) / steps
    return [middle + half * Math.cos(angle), at_mm + rise_mm * Math.sin(angle)]
  })
}
