import { capitalShare, type Ink, type InkGroup } from '../../../core/drawing'
import type { Colours } from './colours'

/** A group of ink made ready to be painted again and again: its paths are built once, in paper millimetres. */
export type Painted = {
  readonly draw: (context: CanvasRenderingContext2D) => void
  /** what the pointer can take hold of; absent: nothing */
  readonly hit?: { readonly path: Path2D; readonly isLine: boolean }
}

/** Letters on the board. */
const family = 'PlexC, Plex, PlexGreek, "Roboto Condensed", sans-serif'

/** Builds the paths of a group in the colours of the theme. */
export const painted = (group: InkGroup, colours: Colours): Painted => {
  const draws = group.inks.map(ink => drawOf(ink, colours))
  const hit = group.part === undefined ? undefined : hitOf(group)
  return {
    draw: context => {
      for (const draw of draws) draw(context)
    },
    ...(hit && { hit }),
  }
}

type Draw = (context: CanvasRenderingContext2D) => void

const drawOf = (ink: Ink, colours: Colours): Draw => {
  switch (ink.kind) {
    case 'fill': {
      const path = loops(ink.loops)
      const colour = colours.fill(ink.as, ink.colour)
      return context => {
        context.fillStyle = colour
        context.fill(path, 'evenodd')
      }
    }
    case 'stroke':
    case 'rings': {
      const path = ink.kind === 'rings' ? circles(ink.circles) : polylines(ink.lines, ink.closed)
      const colour = colours.pen(ink.pen, ink.colour)
      const dash = [...ink.dash_mm]
      return context => {
        context.strokeStyle = colour
        context.lineWidth = ink.width_mm
        context.setLineDash(dash)
        context.lineJoin = ink.pen.startsWith('membrane') ? 'round' : 'miter'
        context.stroke(path)
      }
    }
    case 'discs': {
      const path = circles(ink.circles)
      const colour = ink.as === 'mark' ? colours.pen(ink.pen, ink.colour) : colours.fill(ink.as, ink.colour)
      return context => {
        context.fillStyle = colour
        context.fill(path)
      }
    }
    case 'letters':
      return context => {
        context.save()
        context.translate(ink.at[0], ink.at[1])
        context.rotate((ink.turn_deg * Math.PI) / 180)
        // Paper has y upwards; letters stand upright all the same.
        context.scale(1, -1)
        context.font = `${ink.bold ? 600 : 500} ${ink.height_mm / capitalShare}px ${family}`
        context.textAlign = ink.anchor === 'start' ? 'left' : ink.anchor === 'end' ? 'right' : 'center'
        context.fillStyle = colours.letters
        context.fillText(ink.words, 0, 0)
        context.restore()
      }
    case 'picture':
      return () => undefined
  }
}

const hitOf = ({ layer, inks }: InkGroup): Painted['hit'] => {
  const fills = inks.filter(it => it.kind === 'fill')
  if (fills.length > 0) return { path: loops(fills.flatMap(it => it.loops)), isLine: false }
  const lines = inks.filter(it => it.kind === 'stroke')
  return layer === 'sealing' || layer === 'seen'
    ? {
        path: polylines(
          lines.flatMap(it => it.lines),
          false,
        ),
        isLine: true,
      }
    : undefined
}

const loops = (of: readonly (readonly number[])[]): Path2D => polylines(of, true)

const polylines = (of: readonly (readonly number[])[], isClosed: boolean): Path2D => {
  const path = new Path2D()
  for (const flat of of) {
    for (let at = 0; at + 1 < flat.length; at += 2) {
      const x = flat[at] ?? 0
      const y = flat[at + 1] ?? 0
      if (at === 0) path.moveTo(x, y)
      else path.lineTo(x, y)
    }
    if (isClosed) path.closePath()
  }
  return path
}

const circles = (flat: readonly number[]): Path2D => {
  const path = new Path2D()
  for (let at = 0; at + 2 < flat.length; at += 3) {
    const x = flat[at] ?? 0
    const y = flat[at + 1] ?? 0
    const r = flat[at + 2] ?? 0
    path.moveTo(x + r, y)
    path.arc(x, y, r, 0, 2 * Math.PI)
  }
  return path
}
