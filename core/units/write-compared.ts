import type { Language } from '../words'
import { type Band, type Bounds, isInside, marginOf } from './band'
import type { Unit } from './unit'
import { mostDecimals, writeBand, writeBounds, writeQuantity } from './write'

/** What was found, what is asked for, and how far they are apart, each ready to be read. */
export type WrittenComparison = {
  readonly actual: string
  readonly required: string
  /** absent where nothing is asked for */
  readonly margin?: string
}

/**
 * An amount held against its bounds. All three are rounded alike, as coarsely as is usual for the unit, and finer
 * where the rounded numbers would tell another story: a limit that is met never looks broken, nor the other way round.
 */
export const writeCompared = (actual: Band, required: Bounds, language: Language): WrittenComparison => {
  const decimals = decimalsThatTell(actual, required)
  const margin = marginOf(actual, required)
  const written = {
    actual: writeBand(actual, required.unit, language, decimals),
    required: writeBounds(required, language, decimals),
  }
  return margin === Infinity
    ? written
    : {
        ...written,
        margin: writeQuantity(shownMargin(margin, actual, required), required.unit, language, decimals),
      }
}

/** Decimals that a value of the unit is usually written with: our own choice, after what is measured and stated. */
export const usualDecimals: Readonly<Record<Unit, number>> = {
  mm: 1,
  m: 2,
  deg: 1,
  pct: 0,
  C: 1,
  K: 1,
  Pa: 0,
  N: 0,
  N_m: 0,
  N_mm2: 2,
  Nm: 2,
  cm4: 1,
  dB: 0,
  kg: 0,
  one: 2,
  W_mK: 3,
  mm_m: 2,
  W_m2K: 2,
  m2K_W: 2,
  W_m: 3,
  kg_m2: 3,
}

/** The fewest decimals with which the comparison, read off the written numbers, comes out as it is. */
export const decimalsThatTell = (actual: Band, required: Bounds): number => {
  const usual = usualDecimals[required.unit]
  const ends = [actual.min, actual.max, required.min, required.max].filter(it => it !== undefined)
  for (let decimals = fewestFor(ends, usual); decimals < mostDecimals; decimals++)
    if (tellsTrue(actual, required, decimals)) return decimals
  return mostDecimals
}

/** A zero at the end that all numbers share is left out: `10–15 mm`, not `10.0–15.0 mm`. */
const fewestFor = (values: readonly number[], usual: number): number => {
  let decimals = usual
  while (0 < decimals && values.every(it => rounded(it, decimals) === rounded(it, decimals - 1))) decimals--
  return decimals
}

const tellsTrue = (actual: Band, required: Bounds, decimals: number): boolean => {
  const shown = {
    actual: { min: rounded(actual.min, decimals), max: rounded(actual.max, decimals) },
    required: {
      unit: required.unit,
      ...(required.min === undefined ? {} : { min: rounded(required.min, decimals) }),
      ...(required.max === undefined ? {} : { max: rounded(required.max, decimals) }),
    },
  }
  const isMet = isInside(actual, required)
  const marginShown = rounded(marginOf(actual, required), decimals)
  return isInside(shown.actual, shown.required) === isMet && (isMet || marginShown < 0)
}

/** Within the tolerance of equal lengths a met limit has a margin of nothing, not of minus nothing. */
const shownMargin = (margin: number, actual: Band, required: Bounds): number =>
  isInside(actual, required) ? Math.max(0, margin) : margin

const rounded = (value: number, decimals: number): number =>
  Number.isFinite(value) ? Number(value.toFixed(decimals)) : value
