import {
  type Fill,
  type Id,
  isCounterClockwise,
  type Outline,
  type Point,
  type Region,
  reversed,
} from '../geometry'
import type { Band } from '../units'
import type { Bay, End } from './seal-kind'

/** Width of a bay as it is drawn, between the two faces. */
export const drawnWidth_mm = (bay: Bay): number => bay.frameFace[0][0] - bay.wallFace[0][0]

/** Nothing known of what lies beyond a joint. */
const bare: End = { lead: [], flank: [], face: [], free_mm: 0 }

/** A joint as a plain slot, where only its width and its depth count. */
export const plainBay = (width_mm: Band, depth_mm: number): Bay => {
  const drawn_mm = (width_mm.min + width_mm.max) / 2
  return {
    width_mm,
    from_mm: 0,
    to_mm: depth_mm,
    wallFace: [[0, 0], [0, depth_mm]],
    frameFace: [[drawn_mm, 0], [drawn_mm, depth_mm]],
    ends: { outer: bare, inner: bare },
  } // prettier-ignore
}

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

/** A body that fills the bay from one depth to another; none where there is no room for it. */
export const layer = (
  part: Id,
  name: string,
  bay: Bay,
  [from_mm, to_mm]: readonly [number, number],
  fill: Fill,
): readonly Region[] => (from_mm < to_mm ? [body(part, name, across(bay, from_mm, to_mm), fill)] : [])

export const ofMaterial = (material: Id): Fill => ({ kind: 'material', material })

/** An outline that runs counter-clockwise, whichever way it was listed. */
export const turned = (outline: Outline): Outline =>
  isCounterClockwise(outline) ? outline : reversed(outline)

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
