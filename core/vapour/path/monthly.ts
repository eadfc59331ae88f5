import type { Month } from '../../air'
import type { MonthAir } from '../../detail'
import { seconds } from '../diffusion'
import type { Path, Taken_m } from './path'
import { profileOf } from './profile'
import { gathering_kg_m2s, type Obstacle, tautPressures_Pa } from './taut'

/** A month: what gathered or dried at each wet face, and what lies there at its end. */
export type MonthRow = {
  readonly month: Month
  readonly outside_C: number
  readonly outside_Pa: number
  readonly inside_Pa: number
  readonly gathered_kg_m2: readonly number[]
  readonly lies_kg_m2: readonly number[]
}

/** Where water lies: between which layers of the path, or inside one of them. */
export type WetFace = { readonly after: number; readonly inside: boolean; readonly sd_m: number }

/** A year of water along a path. */
export type Balance = {
  readonly faces: readonly WetFace[]
  /** from the first month in which water gathers; empty where none ever does */
  readonly rows: readonly MonthRow[]
  /** most water that lies in the path at the end of a month */
  readonly peak_kg_m2: number
  /** what the year does not dry */
  readonly left_kg_m2: number
}

/**
 * The monthly method of EN ISO 13788 (published formulas; rounds from memory): layers of more than 0.25 m²K/W are cut,
 * steady state each month, water where the pressure would pass saturation, drying from saturation as long as it lies
 * there; a month in which a face dries is cut at that moment. It starts with the first month with water after one without.
 */
export const monthlyBalance = (path: Path, taken_m: Taken_m, year: readonly MonthAir[]): Balance => {
  const cut = cutLayers(path, taken_m)
  const months = year.map(air => ({ air, faces: profileOf(cut.path, cut.taken_m, air).faces }))
  const gathers = months.map(it => gathered(it.faces, it.air, []).some(rate => rate > leastRate_kg_m2s))
  const start = gathers.findIndex((it, i) => it && !gathers.at(i - 1))
  const first = start < 0 && gathers.includes(true) ? coldest(year) : start
  if (first < 0) return { faces: [], rows: [], peak_kg_m2: 0, left_kg_m2: 0 }
  const lies = cut.owners.map(() => 0)
  const all = months.map((_, i) => {
    const { air, faces } = months[(first + i) % months.length] ?? { air: undefined, faces: [] }
    if (!air) throw new Error('a month of the year is missing')
    const before = [...lies]
    passMonth(lies, faces, air)
    return { air, gathered: lies.map((it, f) => it - (before[f] ?? 0)), lies: [...lies] }
  })
  const wet = lies
    .map((_, f) => f)
    .filter(f => all.some(it => (it.lies[f] ?? 0) > 0 || (it.gathered[f] ?? 0) > 0))
  const at = (values: readonly number[]) => wet.map(f => values[f] ?? 0)
  const total = (values: readonly number[]) => values.reduce((sum, it) => sum + it, 0)
  return {
    faces: wet.map(f => cut.owners[f] ?? { after: 0, inside: false, sd_m: 0 }),
    rows: all.map(({ air, gathered, lies }) => ({
      month: air.month,
      outside_C: air.outside.temperature_C,
      outside_Pa: air.outside.vapour_Pa,
      inside_Pa: air.inside.vapour_Pa,
      gathered_kg_m2: at(gathered),
      lies_kg_m2: at(lies),
    })),
    peak_kg_m2: Math.max(0, ...all.map(it => total(it.lies))),
    left_kg_m2: total(all.at(-1)?.lies ?? []),
  }
}

/** Layers that insulate more than this are cut into equal parts that do not, m²K/W (EN ISO 13788, from memory). */
const mostPart_m2K_W = 0.25

/** Less than a milligram a year is rounding. Ours. */
const leastRate_kg_m2s = 1e-6 / seconds(365)

type Cut = { readonly path: Path; readonly taken_m: Taken_m; readonly owners: readonly WetFace[] }

/** The path with its insulating layers cut; each face with the layer of the whole path that it ends or lies in. */
const cutLayers = (path: Path, taken_m: Taken_m): Cut => {
  const parts = path.layers.flatMap((layer, i) => {
    const count = Math.max(1, Math.ceil(layer.resistance_m2K_W / mostPart_m2K_W - 1e-9))
    return Array.from({ length: count }, (_, part) => ({ layer, count, after: i + 1, inside: part < count - 1, sd_m: (taken_m[i] ?? 0) / count })) // prettier-ignore
  })
  let sum = 0
  return {
    path: {
      ...path,
      layers: parts.map(({ layer, count }) => ({
        ...layer,
        thickness_mm: layer.thickness_mm / count,
        resistance_m2K_W: layer.resistance_m2K_W / count,
      })),
    },
    taken_m: parts.map(it => it.sd_m),
    owners: [
      { after: 0, inside: false, sd_m: 0 },
      ...parts.map(({ after, inside, sd_m }) => ({ after, inside, sd_m: (sum += sd_m) })),
    ],
  }
}

const gathered = (faces: readonly Obstacle[], air: MonthAir, lies: readonly number[]): readonly number[] => {
  const ends = { outside_Pa: air.outside.vapour_Pa, inside_Pa: air.inside.vapour_Pa }
  return gathering_kg_m2s(
    faces,
    tautPressures_Pa(faces, ends, face => (lies[face] ?? 0) > 0),
  )
}

/** Lets a month pass over what lies at the faces: until a face has dried, then on from there. */
const passMonth = (scratch: number[], faces: readonly Obstacle[], air: MonthAir): void => {
  let left = seconds(air.days)
  for (let turn = 0; left > 0 && turn <= faces.length; turn++) {
    const rates = gathered(faces, air, scratch)
    const dries = rates.map((rate, f) =>
      rate < 0 && (scratch[f] ?? 0) > 0 ? (scratch[f] ?? 0) / -rate : Infinity,
    )
    const step = Math.min(left, ...dries)
    rates.forEach((rate, f) => {
      const lies = (scratch[f] ?? 0) + rate * step
      scratch[f] = dries[f] === step ? 0 : Math.max(0, lies)
    })
    left -= step
  }
}

const coldest = (year: readonly MonthAir[]): number =>
  year.reduce(
    (least, it, i) => (it.outside.temperature_C < (year[least]?.outside.temperature_C ?? 0) ? i : least),
    0,
  )
