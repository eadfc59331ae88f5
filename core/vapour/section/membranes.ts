import type { Line } from '../../geometry'
import { kindOf } from '../../seals'
import type { Band } from '../../units'
import type { VapourView } from './vapour-view'

/** From this conductivity on a line is metal (ours), and as tight as metal foil, m (DIN 4108-3, published). */
const metal_W_mK = 5
const foil_m = 1500

/** What a membrane resists in winter: declared, metal, nothing where it closes no plane, or not known. */
export const membraneResistance = (
  line: Line,
  { seals }: Pick<VapourView, 'seals'>,
): Band | 'unknown' | undefined => {
  if (line.sd_m) return line.sd_m.winter
  if (line.lambda_W_mK >= metal_W_mK) return { min: foil_m, max: foil_m }
  const seal = seals.find(it => it.id === line.part)
  const isUnknown =
    seal &&
    kindOf(seal)
      .serves(seal)
      .some(plane => kindOf(seal).sd_m(seal, plane) === undefined)
  return isUnknown ? 'unknown' : undefined
}

/** Where a line crosses a straight path, in depth; one that runs along it does not cross. */
export const crossings_mm = ({ path }: Line, at_mm: number): readonly number[] =>
  path.flatMap((to, i) => {
    const from = path[i - 1]
    if (!from || from[0] <= at_mm === to[0] <= at_mm) return []
    return [from[1] + ((at_mm - from[0]) / (to[0] - from[0])) * (to[1] - from[1])]
  })
