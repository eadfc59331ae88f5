import type { Point } from '../../geometry'
import { drawHatch } from '../hatches/draw-hatch'
import type { Seen } from '../hatches/hatch'
import type { Layer, Palette, ViewMark } from '../mark'
import { black, paper, strokeOf } from '../style/pens'
import type { Flat, Ink } from './ink'

/** Ink and the layer it goes to. */
export type Laid = { readonly layer: Layer; readonly ink: Ink }

/**
 * An area's tint below its hatch. The black set has no tints and no bands of a field; what is solid stays so. What has
 * no hatch and the colour of the paper hides what lies below.
 */
export const inkArea = (
  mark: Extract<ViewMark, { kind: 'area' }>,
  scale: number,
  { palette, seen }: { readonly palette: Palette; readonly seen?: Seen },
): readonly Laid[] => {
  const loops = [mark.outline, ...mark.holes].map(flatOf)
  if (mark.hatch === undefined) {
    if (mark.tint === undefined || (mark.layer === 'heat' && palette === 'black')) return []
    if (mark.layer === 'heat')
      return [{ layer: mark.layer, ink: { kind: 'fill', as: 'heat', colour: mark.tint, loops } }]
    if (mark.tint === paper)
      return [{ layer: mark.layer, ink: { kind: 'fill', as: 'clear', colour: paper, loops } }]
    const colour = palette === 'black' ? blackOrPaper(mark.tint) : mark.tint
    return [{ layer: mark.layer, ink: { kind: 'fill', as: 'mark', colour, loops } }]
  }
  const { lines, rings, dots, solid } = drawHatch(mark, mark.hatch, 1, seen)
  const laid: Laid[] = []
  const tint = fillOf({ solid, tint: mark.tint }, palette)
  if (tint !== undefined)
    laid.push({ layer: 'tint', ink: { kind: 'fill', as: solid ? 'solid' : 'tint', colour: tint, loops } })
  const pen = { pen: 'hatch' as const, ...strokeOf('hatch', scale, palette) }
  if (lines.length > 0) laid.push({ layer: 'hatch', ink: { kind: 'stroke', ...pen, lines, closed: false } })
  if (rings.length > 0) laid.push({ layer: 'hatch', ink: { kind: 'rings', ...pen, circles: rings } })
  if (dots.length > 0)
    laid.push({
      layer: 'hatch',
      ink: { kind: 'discs', as: 'mark', pen: 'hatch', colour: pen.colour, circles: dots },
    })
  return laid
}

/** What an area is filled with below its hatch: the black set has no tints, and what is solid is black like its lines. */
export const fillOf = (
  { solid, tint }: { readonly solid: string | undefined; readonly tint: string | undefined },
  palette: Palette,
): string | undefined => {
  if (palette === 'colour') return solid ?? tint
  return solid === undefined ? undefined : black
}

/** Points as flat coordinates. */
export const flatOf = (points: readonly Point[]): Flat => {
  const flat: number[] = []
  for (const [x, y] of points) flat.push(x, y)
  return flat
}

const blackOrPaper = (colour: string): string =>
  parseInt(colour.slice(1, 3), 16) * 3 +
    parseInt(colour.slice(3, 5), 16) * 6 +
    parseInt(colour.slice(5, 7), 16) >
  1275
    ? paper
    : black
