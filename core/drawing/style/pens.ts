import type { Palette, Pen } from '../mark'

/** How a pen draws: width and dashes on paper, colour. */
export type Stroke = {
  readonly width_mm: number
  /** on, off, on, off …; empty is a full line */
  readonly dash_mm: readonly number[]
  readonly colour: string
}

/** Colours of lines and words. Ours; words have at least 8.6 : 1 on the darkest tint, hatch lines 5.2 : 1. */
export const paper = '#FFFFFF'
export const black = '#000000'
export const lettersColour = '#111111'
const outlineColour = '#111111'
const hatchColour = '#3A3A3A'
const quietColour = '#444444'

/**
 * Widths by use and scale. The ladder by the root of two and the groups 0.5 and 0.35 are those of ISO 128 (reported);
 * the choice is ours: hatches stay at 0.18 so that a cut outline is at least 2.8 times as strong. A light line parts solid
 * neighbours; at small scales it is finer, or thin bodies would be gone.
 */
const widths_mm: Readonly<Record<Pen, readonly [at1: number, at2: number, at5: number, at10: number]>> = {
  cut: [0.7, 0.5, 0.5, 0.5],
  'cut-small': [0.5, 0.35, 0.35, 0.25],
  light: [0.35, 0.35, 0.25, 0.18],
  seen: [0.25, 0.25, 0.25, 0.18],
  hidden: [0.25, 0.25, 0.25, 0.18],
  axis: [0.25, 0.25, 0.25, 0.18],
  break: [0.25, 0.25, 0.25, 0.18],
  hatch: [0.18, 0.18, 0.18, 0.18],
  size: [0.25, 0.25, 0.25, 0.25],
  stroke: [0.35, 0.35, 0.35, 0.35],
  leader: [0.25, 0.25, 0.25, 0.25],
  'membrane-inner': [1, 0.7, 0.7, 0.5],
  'membrane-outer': [1, 0.7, 0.7, 0.5],
  'membrane-water': [1, 1, 1, 0.7],
  sheet: [0.7, 0.7, 0.7, 0.7],
  block: [0.5, 0.5, 0.5, 0.5],
  field: [0.25, 0.25, 0.25, 0.25],
  text: [0.25, 0.25, 0.25, 0.25],
  faint: [0.18, 0.18, 0.18, 0.18],
  isotherm: [0.18, 0.18, 0.18, 0.18],
  'isotherm-strong': [0.35, 0.35, 0.35, 0.35],
  'isotherm-named': [0.7, 0.7, 0.5, 0.5],
  curve: [0.5, 0.5, 0.5, 0.5],
}

const colours: Readonly<Record<Pen, string>> = {
  cut: outlineColour,
  'cut-small': outlineColour,
  light: paper,
  seen: outlineColour,
  hidden: outlineColour,
  axis: outlineColour,
  break: outlineColour,
  hatch: hatchColour,
  size: outlineColour,
  stroke: outlineColour,
  leader: outlineColour,
  'membrane-inner': '#6A2C91',
  'membrane-outer': '#006D77',
  'membrane-water': '#1F4E9E',
  sheet: outlineColour,
  block: outlineColour,
  field: outlineColour,
  text: lettersColour,
  faint: quietColour,
  isotherm: lettersColour,
  'isotherm-strong': lettersColour,
  'isotherm-named': lettersColour,
  curve: '#1B50A6',
}

/** Dashes in line widths, from memory of ISO 128-2: dashed 12–3, chain 24–3–0.5–3. */
const dashes: { readonly [P in Pen]?: readonly number[] } = {
  hidden: [12, 3],
  axis: [24, 3, 0.5, 3],
}

/** Dashes in mm, fixed on paper, so that membranes and named isotherms read alike at every scale. Ours. */
const fixedDashes_mm: { readonly [P in Pen]?: readonly number[] } = {
  'membrane-outer': [4, 1.2],
  'membrane-water': [7, 1, 1, 1],
  'isotherm-named': [6, 1.5],
}

/** No gap of a dashed line is smaller (ours): smaller ones close up in print. */
const leastGap_mm = 0.7

/** What a pen draws at a scale (paper mm per model mm). A sheet's own lines are drawn at scale 1. */
export const strokeOf = (pen: Pen, scale: number, palette: Palette): Stroke => {
  const width_mm = widths_mm[pen][columnOf(scale)]
  const inWidths = dashes[pen] ?? []
  const gap_mm = (inWidths[1] ?? 0) * width_mm
  const stretch = gap_mm === 0 ? 1 : Math.max(1, leastGap_mm / gap_mm)
  return {
    width_mm,
    dash_mm: fixedDashes_mm[pen] ?? inWidths.map(it => it * width_mm * stretch),
    colour: palette === 'black' && pen !== 'light' ? black : colours[pen],
  }
}

/** Between two standard scales the nearer one decides, by their geometric mean. */
const columnOf = (scale: number): 0 | 1 | 2 | 3 =>
  scale > Math.sqrt(0.5) ? 0 : scale > Math.sqrt(0.1) ? 1 : scale > Math.sqrt(0.02) ? 2 : 3
