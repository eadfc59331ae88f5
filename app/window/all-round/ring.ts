import type { Plane, Side } from '../../../core/kinds'

/** A point of the picture in its own units: 1 is a pixel at 16 px text. */
export type At = readonly [x: number, y: number]

/** The sizes of the ring: the picture, the lanes of the planes, and the room for the names round it. */
export type RingSizes = {
  readonly width: number
  readonly height: number
  readonly lane: number
  readonly gap: number
  readonly side: number
  readonly top: number
  readonly bottom: number
}

/** The ring at a width of the column. */
export const ringSizes = (width: number): RingSizes => {
  const isWide = width > 270
  return {
    width,
    height: Math.round(width * (isWide ? 0.98 : 0.92)),
    lane: isWide ? 14 : 11,
    gap: isWide ? 5 : 4,
    side: 35,
    top: 28,
    bottom: 30,
  }
}

/** Outer edges of the outer lane: left, top, right, bottom. */
export type Box = { readonly x0: number; readonly y0: number; readonly x1: number; readonly y1: number }
export const outerBox = (of: RingSizes): Box => ({
  x0: of.side,
  y0: of.top,
  x1: of.width - of.side,
  y1: of.height - of.bottom,
})

const laneOf: Readonly<Record<Plane, number>> = { outer: 0, middle: 1, inner: 2 }

/** How far a lane lies inside the outer edge. */
export const laneAt = (of: RingSizes, plane: Plane): number => laneOf[plane] * (of.lane + of.gap)

/** What the three lanes and their gaps take from the edge. */
export const lanesTogether = (of: RingSizes): number => 3 * of.lane + 2 * of.gap

/** The field of one stretch, mitred at its corners. */
export const laneField = (of: RingSizes, plane: Plane, side: Side): readonly At[] => {
  const box = inset(outerBox(of), laneAt(of, plane))
  const w = of.lane
  const { x0, y0, x1, y1 } = box
  switch (side) {
    case 'head':
      return [[x0, y0], [x1, y0], [x1 - w, y0 + w], [x0 + w, y0 + w]] // prettier-ignore
    case 'right':
      return [[x1, y0], [x1, y1], [x1 - w, y1 - w], [x1 - w, y0 + w]] // prettier-ignore
    case 'sill':
      return [[x1, y1], [x0, y1], [x0 + w, y1 - w], [x1 - w, y1 - w]] // prettier-ignore
    case 'left':
      return [[x0, y1], [x0, y0], [x0 + w, y0 + w], [x0 + w, y1 - w]] // prettier-ignore
  }
}

/** The middle line of one stretch, from corner to corner. */
export const laneLine = (of: RingSizes, plane: Plane, side: Side): readonly [At, At] => {
  const { x0, y0, x1, y1 } = inset(outerBox(of), laneAt(of, plane) + of.lane / 2)
  switch (side) {
    case 'head':
      return [[x0, y0], [x1, y0]] // prettier-ignore
    case 'right':
      return [[x1, y0], [x1, y1]] // prettier-ignore
    case 'sill':
      return [[x1, y1], [x0, y1]] // prettier-ignore
    case 'left':
      return [[x0, y1], [x0, y0]] // prettier-ignore
  }
}

/** Places along a line every so often, starting a little inside. */
export const along = (
  [[ax, ay], [bx, by]]: readonly [At, At],
  first: number,
  every: number,
): readonly At[] => {
  const length = Math.hypot(bx - ax, by - ay)
  const count = Math.max(0, Math.floor((length - first - 2) / every) + 1)
  return Array.from({ length: count }, (_, i): At => {
    const t = (first + i * every) / length
    return [ax + (bx - ax) * t, ay + (by - ay) * t]
  })
}

/** The direction away from the opening at a side. */
export const outward: Readonly<Record<Side, At>> = {
  head: [0, -1],
  right: [1, 0],
  sill: [0, 1],
  left: [-1, 0],
}

/** A corner of a lane's middle line. */
export const cornerAt = (of: RingSizes, plane: Plane, [across, upright]: readonly [Side, Side]): At => {
  const { x0, y0, x1, y1 } = inset(outerBox(of), laneAt(of, plane) + of.lane / 2)
  return [upright === 'left' ? x0 : x1, across === 'head' ? y0 : y1]
}

/** A pin stands so far inside the light, clear of the dot of the cut. */
const pin_px = 20

/** Where the pin of a photo stands: inside a side at a share of it from its left or lower end, or in the middle of the light. */
export const pinPlace = ({ x0, y0, x1, y1 }: Box, side: Side | undefined, share: number): At => {
  const along = Math.max(0, Math.min(1, share))
  const x = x0 + pin_px + (x1 - x0 - 2 * pin_px) * along
  const y = y1 - pin_px - (y1 - y0 - 2 * pin_px) * along
  switch (side) {
    case 'head':
      return [x, y0 + pin_px]
    case 'sill':
      return [x, y1 - pin_px]
    case 'left':
      return [x0 + pin_px, y]
    case 'right':
      return [x1 - pin_px, y]
    case undefined:
      return [(x0 + x1) / 2, (y0 + y1) / 2]
  }
}

/** Two pins stand so far apart; beside so many in one place the next is set inwards, and further ones lie on the last. */
const pinApart_px = 18
const mostBeside = 3

/** A place for a pin that leaves those before it to be seen: as it is, or further into the light. */
export const clearOf = (taken: readonly At[], [x, y]: At, side: Side | undefined): At => {
  const [dx, dy] = side ? outward[side] : [-1, 0]
  const places = Array.from({ length: mostBeside + 1 }, (_, step): At => [
    x - dx * step * pinApart_px,
    y - dy * step * pinApart_px,
  ])
  const isFree = (at: At) => taken.every(it => Math.hypot(it[0] - at[0], it[1] - at[1]) >= pinApart_px - 0.5)
  return places.find(isFree) ?? places[mostBeside] ?? [x, y]
}

/** A wider strip would cover the names. */
const widest_px = 11

/** How wide a joint is shown: exaggerated 1.25 px per mm over 8 mm, never thinner than a line. */
export const wedge = (mm: number): number => Math.min(widest_px, Math.max(1.5, (mm - 8) * 1.25))

export const inset = ({ x0, y0, x1, y1 }: Box, by: number): Box => ({
  x0: x0 + by,
  y0: y0 + by,
  x1: x1 - by,
  y1: y1 - by,
})

/** Points as an SVG list. */
export const list = (points: readonly At[]): string =>
  points.map(([x, y]) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ')

/** Where the name of a side stands, and how its words run. */
export const tagPlace = (of: RingSizes, side: Side): string => {
  const { x0, y0, x1, y1 } = outerBox(of)
  switch (side) {
    case 'head':
      return `translate(${of.width / 2} ${y0 - 13})`
    case 'sill':
      return `translate(${of.width / 2} ${y1 + 22})`
    case 'left':
      return `translate(${x0 - 15} ${(y0 + y1) / 2}) rotate(-90)`
    case 'right':
      return `translate(${x1 + 18} ${(y0 + y1) / 2}) rotate(90)`
  }
}

/** The thick line along the side that is cut. */
export const bracketPath = (of: RingSizes, side: Side): string => {
  const { x0, y0, x1, y1 } = outerBox(of)
  switch (side) {
    case 'head':
      return `M${x0 - 1} ${y0 - 9}H${x1 + 1}`
    case 'sill':
      return `M${x0 - 1} ${y1 + 9}H${x1 + 1}`
    case 'left':
      return `M${x0 - 11.5} ${y0 - 1}V${y1 + 1}`
    case 'right':
      return `M${x1 + 11.5} ${y0 - 1}V${y1 + 1}`
  }
}

/** The line of the cut across the lanes of a side, and the dot at its end in the light. */
export const cutLine = (of: RingSizes, side: Side): { readonly path: string; readonly dot: At } => {
  const { x0, y0, x1, y1 } = outerBox(of)
  const light = inset(outerBox(of), lanesTogether(of))
  const [cx, cy] = [(x0 + x1) / 2, (y0 + y1) / 2]
  switch (side) {
    case 'head':
      return { path: `M${cx} ${y0 - 9}V${light.y0 + 6}`, dot: [cx, light.y0 + 6] }
    case 'sill':
      return { path: `M${cx} ${y1 + 9}V${light.y1 - 6}`, dot: [cx, light.y1 - 6] }
    case 'left':
      return { path: `M${x0 - 11.5} ${cy}H${light.x0 + 6}`, dot: [light.x0 + 6, cy] }
    case 'right':
      return { path: `M${x1 + 11.5} ${cy}H${light.x1 - 6}`, dot: [light.x1 - 6, cy] }
  }
}

/** The joint along a side, drawn outside the ring; of a zone only its share of the side, from the left or lower end. */
export const jointStrip = (
  of: RingSizes,
  side: Side,
  mm: number,
  [from, to]: readonly [number, number] = [0, 1],
): readonly At[] => {
  const { x0, y0, x1, y1 } = outerBox(of)
  const [near, far] = [1.5, 1.5 + wedge(mm)]
  const [xa, xb] = [x0 + (x1 - x0) * from, x0 + (x1 - x0) * to]
  const [ya, yb] = [y1 + (y0 - y1) * from, y1 + (y0 - y1) * to]
  switch (side) {
    case 'head':
      return [[xa, y0 - near], [xb, y0 - near], [xb, y0 - far], [xa, y0 - far]] // prettier-ignore
    case 'sill':
      return [[xa, y1 + near], [xb, y1 + near], [xb, y1 + far], [xa, y1 + far]] // prettier-ignore
    case 'left':
      return [[x0 - near, yb], [x0 - near, ya], [x0 - far, ya], [x0 - far, yb]] // prettier-ignore
    case 'right':
      return [[x1 + near, yb], [x1 + near, ya], [x1 + far, ya], [x1 + far, yb]] // prettier-ignore
  }
}
