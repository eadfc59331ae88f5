import { saturation_Pa } from '../../air'
import type { Air } from '../../detail'
import type { Path, Taken_m } from './path'

/** Air at both ends of a path. */
export type BothSides = { readonly inside: Air; readonly outside: Air }

/** A face between layers: how much air lies before it from outside, and its temperature, saturation and vapour pressure. */
export type FaceState = {
  readonly sd_m: number
  readonly temperature_C: number
  readonly saturation_Pa: number
  readonly vapour_Pa: number
}

/** Temperature, saturation and vapour pressure through layers, at rest and without any water: outer face first. */
export type Profile = {
  readonly u_W_m2K: number
  readonly faces: readonly FaceState[]
}

/** The profile through a path (EN ISO 13788): straight in each layer against its resistance to heat and to vapour. */
export const profileOf = (path: Path, taken_m: Taken_m, { inside, outside }: BothSides): Profile => {
  const u_W_m2K = transmittanceOf(path)
  const heat_W_m2 = u_W_m2K * (inside.temperature_C - outside.temperature_C)
  const sd_m = sums(taken_m)
  const whole_m = sd_m.at(-1) ?? 0
  const resistances = [path.outside_m2K_W, ...path.layers.map(it => it.resistance_m2K_W)]
  const before_m2K_W = sums(resistances).slice(1)
  return {
    u_W_m2K,
    faces: before_m2K_W.map((before, i): FaceState => {
      const temperature_C = outside.temperature_C + heat_W_m2 * before
      const at_m = sd_m[i] ?? 0
      const share = whole_m > 0 ? at_m / whole_m : i / Math.max(1, before_m2K_W.length - 1)
      return {
        sd_m: at_m,
        temperature_C,
        saturation_Pa: saturation_Pa(temperature_C),
        vapour_Pa: outside.vapour_Pa + share * (inside.vapour_Pa - outside.vapour_Pa),
      }
    }),
  }
}

/** U = 1 / (Rse + Σ R + Rsi). */
export const transmittanceOf = ({ layers, inside_m2K_W, outside_m2K_W }: Path): number =>
  1 / layers.reduce((sum, it) => sum + it.resistance_m2K_W, inside_m2K_W + outside_m2K_W)

/** Running sums, with the nothing before the first. */
const sums = (values: readonly number[]): readonly number[] =>
  values.reduce<readonly number[]>((all, it) => [...all, (all.at(-1) ?? 0) + it], [0])
