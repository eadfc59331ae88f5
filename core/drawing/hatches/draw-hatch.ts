import type { Outline } from '../../geometry'
import type { Hatching } from '../mark'
import { hatchOf } from './all'
import { type Field, fieldOf } from './field'
import type { Hatch, HatchLines, Seen } from './hatch'
import { drawers } from './motifs/all'
import { drawFamily } from './motifs/families'
import type { Motif } from './motifs/motif'
import { solidBelow_mm } from '../style/spacing'
import { thicknessOf_mm } from './thickness'

/** What is drawn in an area: a fill over the whole of it or the tint below lines. */
export type Hatched = HatchLines & { readonly solid?: string }

/** Black for bodies that are too thin for any hatch. */
const thinFill = '#3A3A3A'

/** A third neighbour of one material has its hatch closer by this. Ours. */
const closerBy = 0.7

/**
 * The hatch of an area, clipped to it, in paper mm (the area's own axes times the scale). Pitches do not depend on the
 * scale. A body under 1 mm on paper is solid; one that is too thin for its hatch keeps the tint alone.
 * Where only some of it is `seen`, the rest may be missing.
 */
export const drawHatch = (
  area: { readonly outline: Outline; readonly holes: readonly Outline[] },
  hatching: Hatching,
  scale: number,
  seen?: Seen,
): Hatched => {
  const hatch = hatchOf(hatching.key)
  const out: HatchLines = { lines: [], rings: [], dots: [] }
  if (hatch.solid !== undefined) return { ...out, solid: hatch.solid }
  if (isBlank(hatch)) return out
  const density = densityOf(area, hatching, scale)
  if (density === 'solid') return { ...out, solid: thinFill }
  if (density === 'bare') return out
  drawLines(hatch, fieldOf(area, hatching, scale, seen), hatching.closer ? closerBy : 1, out)
  return out
}

/** How much of its hatch an area is thick enough for on paper: none but a solid fill, none but its tint, or all of it. */
export const densityOf = (
  area: { readonly outline: Outline; readonly holes: readonly Outline[] },
  hatching: Hatching,
  scale: number,
): 'solid' | 'bare' | 'hatched' => {
  if (hatching.always) return 'hatched'
  const thickness_mm = thicknessOf_mm(area) * scale
  if (thickness_mm < solidBelow_mm) return 'solid'
  return thickness_mm < hatchOf(hatching.key).least_mm ? 'bare' : 'hatched'
}

/** Whether an area is drawn as one solid fill at a scale: by its hatch, or because it is too thin for any. */
export const isSolid = (
  area: { readonly outline: Outline; readonly holes: readonly Outline[] },
  key: string,
  scale: number,
): boolean => {
  const hatch = hatchOf(key)
  return hatch.solid !== undefined || (!isBlank(hatch) && thicknessOf_mm(area) * scale < solidBelow_mm)
}

const isBlank = (hatch: Hatch): boolean => hatch.motif === undefined && (hatch.families ?? []).length === 0

const drawLines = (hatch: Hatch, field: Field, close: number, out: HatchLines): void => {
  for (const family of hatch.families ?? []) drawFamily(field, family, close, out)
  if (hatch.motif) drawMotif(field, hatch.motif, close, out)
}

const drawMotif = <K extends Motif['kind']>(
  field: Field,
  motif: Extract<Motif, { kind: K }>,
  close: number,
  out: HatchLines,
): void => {
  // The kind of the motif picks the drawer of that very kind; TypeScript cannot follow an index by a union.
  const draw = drawers[motif.kind as K] as (
    field: Field,
    motif: Extract<Motif, { kind: K }>,
    close: number,
    out: HatchLines,
  ) => void
  draw(field, motif, close, out)
}
