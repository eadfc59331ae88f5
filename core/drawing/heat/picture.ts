import type { LowestSurface, Purpose, SectionHeat, Solution, SurfaceStretch } from '../../heat'
import type { Conditions } from '../../detail'
import type { Words } from '../../words'
import type { HeatScale } from './scale'

/** A line of its own beside the whole degrees: the dew point, the limit of a humidity at the surface. */
export type NamedLevel = { readonly level_C: number; readonly name: Words }

/** The coldest place of a surface: how sure its temperature is belongs to it, where that is known. */
export type Coldest = LowestSurface & { readonly uncertainty_K?: number }

/** A solved section, ready to be drawn: its field, its scale, its named lines, its coldest place, its inner surface. */
export type HeatPicture = {
  readonly solution: Solution
  readonly scale: HeatScale
  readonly named: readonly NamedLevel[]
  readonly purpose: Purpose
  readonly air: Conditions
  readonly heat: SectionHeat
  readonly profile: readonly SurfaceStretch[]
  readonly coldest?: Coldest
}
