import type { Id } from '../../geometry'
import type { Section } from '../../section'
import { hatchOf } from '../hatches/all'
import { isSolid } from '../hatches/draw-hatch'
import { thicknessOf_mm } from '../hatches/thickness'
import type { Layer, ViewMark } from '../mark'
import { solidBelow_mm } from '../style/spacing'
import { clipLine, clipOutline, type Window } from './clip'
import { layerOfRole, type ListedPart } from './listed-part'
import { edgesOf, hatchingsOf, type LightEdges, lightEdges, type Piece, piecesOf } from './pieces'

/** Bodies below this on paper take the lighter outline, so that their hatch or tint still shows. Ours. */
const lightBelow_mm = 3

/** What is cut: an area with tint and hatch for each region, light lines between solid ones, the outline round each piece. */
export const cutBodies = (
  section: Section,
  of: {
    readonly window: Window
    readonly scale: number
    readonly parts: ReadonlyMap<Id, ListedPart>
    readonly hatchOf: (material: Id) => string
  },
): readonly ViewMark[] => {
  const pieces = piecesOf(section, of.hatchOf)
  const hatchings = hatchingsOf(pieces)
  const areas = pieces.flatMap(piece =>
    piece.regions.flatMap((region): ViewMark[] => {
      const outline = clipOutline(region.outline, of.window)
      const hatch = hatchings.get(piece)
      if (outline.length < 3 || hatch === undefined) return []
      const holes = region.holes.map(it => clipOutline(it, of.window)).filter(it => it.length > 2)
      const layer = layerOf(of.parts.get(piece.part))
      return [
        { kind: 'area', layer, part: piece.part, outline, holes, hatch, tint: hatchOf(piece.hatch).tint },
      ]
    }),
  )
  const light = lightEdges(pieces, (region, piece) => isSolid(region, piece.hatch, of.scale))
  return [
    ...areas,
    // over the fills and under the outlines
    ...light.lines.flatMap(line =>
      clipLine(line, of.window).map((points): ViewMark => ({
        kind: 'path',
        layer: 'hatch',
        pen: 'light',
        points,
        closed: false,
      })),
    ),
    ...pieces.flatMap(piece => outlineOf(piece, of.parts.get(piece.part), { ...of, light })),
  ]
}

const layerOf = (part: ListedPart | undefined): Layer => (part ? layerOfRole[part.role] : 'parts')

const outlineOf = (
  piece: Piece,
  part: ListedPart | undefined,
  { window, scale, light }: { readonly window: Window; readonly scale: number; readonly light: LightEdges },
): readonly ViewMark[] => {
  // what is cut into slivers is as thick as its thickest part
  const thickness_mm = Math.max(...piece.regions.map(thicknessOf_mm)) * scale
  if (thickness_mm < solidBelow_mm) return []
  const heavy = (part?.role === 'layer' || part?.role === 'frame') && thickness_mm >= lightBelow_mm
  return edgesOf(piece, light).flatMap(line =>
    clipLine(line, window).map((points): ViewMark => {
      const closed = points.length === line.length && points[0] === points[points.length - 1]
      return {
        kind: 'path',
        layer: layerOf(part),
        part: piece.part,
        pen: heavy ? 'cut' : 'cut-small',
        points: closed ? points.slice(0, -1) : points,
        closed,
      }
    }),
  )
}
