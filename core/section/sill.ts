import type { Sill } from '../detail'
import { isCounterClockwise, type Line, type Outline, type Point, reversed } from '../geometry'
import type { Layout } from './layout'
import { box, coat, layerFill, ofMaterial, type PaintedPart } from './paint'

/** How far above the foot of the frame the sheet meets it, and how long its drip edge is: ours. */
const seat_mm = 5
const drip_mm = 25

/** What a bed is made of where no insulation reaches up to it, and what lies below an inside board. */
const bedMaterial = 'screed'
const underBoard = 'xps'

/** The foot of an opening: outside sill on its bed, the drained plane below it, the board inside. */
export const sillParts = (
  at: Layout,
): { readonly parts: readonly PaintedPart[]; readonly lines: readonly Line[] } => {
  const { sill } = at
  if (at.side !== 'sill' || sill === undefined) return { parts: [], lines: [] }
  const sheet = sheetOf(at, sill)
  return {
    parts: [
      ...bedParts(at, sill, sheet),
      coat(sill.id, 'sheet', ofMaterial(sill.material), 'sill', sheet.outline),
      ...boardParts(at, sill),
    ],
    lines: drainedPlane(at, sill, sheet),
  }
}

/** The sheet, and where its underside lies at a depth. */
type Sheet = {
  readonly outline: Outline
  readonly under: (y_mm: number) => number
  readonly edge_mm: number
  readonly top_mm: number
}

const sheetOf = (at: Layout, sill: Sill): Sheet => {
  const face = at.position_mm
  const edge = at.depths.outer_mm - sill.overhang_mm.value
  const foot = at.width_mm + seat_mm
  const fall = Math.tan((Math.PI / 180) * sill.slope_deg.value)
  const under = (y_mm: number): number => foot - fall * (face - y_mm)
  const t = sill.thickness_mm.value
  const top = foot + Math.max(t, sill.upstand_mm.value)
  const outline: Outline = [
    [foot, face],
    [top, face],
    [top, face - t],
    [foot + t, face - t],
    [under(edge) + t, edge],
    [under(edge) - drip_mm, edge],
    [under(edge) - drip_mm, edge + t],
    [under(edge + t), edge + t],
  ]
  return {
    outline: isCounterClockwise(outline) ? outline : reversed(outline),
    under,
    edge_mm: edge,
    top_mm: top,
  }
}

/** From the top of the wall up to the sheet: the layers before the bearing layer go on, else a bed of mortar. */
const bedParts = (at: Layout, sill: Sill, sheet: Sheet): readonly PaintedPart[] => {
  const { before, skin } = at.depths
  const bodies = before.filter(it => it !== skin)
  const inner = bodies.at(-1)
  const upTo = (from: number, to: number): Outline => {
    // They reach into the sheet that is laid over them: two edges along one slope would part by a step of the grid.
    const top = (y_mm: number) => Math.max(0, sheet.under(y_mm) + sill.thickness_mm.value / 2)
    const outline: Outline = [[0, from], [top(from), from], [top(to), to], [0, to]] // prettier-ignore
    return isCounterClockwise(outline) ? outline : reversed(outline)
  }
  const layers = before.map(({ layer, from_mm, to_mm }) => {
    const to = layer === inner?.layer ? at.position_mm : Math.min(to_mm, at.position_mm)
    return to > from_mm ? [coat(layer.id, 'body', layerFill(layer.material), 'wall', upTo(from_mm, to))] : []
  })
  const from = skin?.to_mm ?? at.depths.outer_mm
  const bed =
    inner === undefined && at.position_mm > from
      ? [coat(sill.id, 'bed', ofMaterial(bedMaterial), 'sill', upTo(from, at.position_mm))]
      : []
  return [...layers.flat(), ...bed]
}

/** The board inside, its top a little above the foot of the frame, on insulation. */
const boardParts = (at: Layout, sill: Sill): readonly PaintedPart[] => {
  const { board } = sill
  const from = at.position_mm + at.depth_mm
  const to = at.depths.inner_mm
  if (board === undefined || from >= to) return []
  const thickness_mm = board.thickness_mm.value
  const top = Math.max(thickness_mm, at.width_mm + at.profile.innerFace_mm)
  const bottom = top - thickness_mm
  const bed =
    bottom > 0 ? [coat(sill.id, 'bed', ofMaterial(underBoard), 'sill', box(0, from, bottom, to))] : []
  return [
    ...bed,
    coat(
      sill.id,
      'board',
      ofMaterial(board.material),
      'sill',
      box(bottom, from, top, to + board.overhang_mm.value),
    ),
  ]
}

/** The drained plane runs below the sheet and turns up behind it. */
const drainedPlane = (at: Layout, sill: Sill, sheet: Sheet): readonly Line[] => {
  if (sill.secondPlane === undefined || sill.secondPlane.value === 'none') return []
  const face = at.position_mm
  const outer = at.depths.outer_mm
  const path: readonly Point[] = [[sheet.top_mm, face], [sheet.under(face), face], [sheet.under(outer), outer]] // prettier-ignore
  const thickness_mm = 1
  return [{ id: `${sill.id}.plane`, part: sill.id, path, thickness_mm, lambda_W_mK: 0.25, sd_m: drainedSd }]
}

/** A sheet below a sill: bitumen, EPDM or coated steel, tight in any case. Own convention. */
const drainedSd = { winter: { min: 5, max: 1500 }, summer: { min: 5, max: 1500 } }
