import type { Id, Point } from '../../geometry'
import type { Section } from '../../section'
import type { Language } from '../../words'
import type { Column, Slots } from '../labels/columns'
import type { Layout } from '../labels/lay-out'
import type { Box, SizeLine } from '../labels/scene'
import { slopeAgainst } from '../labels/slope'
import type { View, ViewMark } from '../mark'
import { placeView, sizeOnPaper_mm } from '../place-view'
import { fieldMarks } from '../heat/field-marks'
import type { HeatPicture } from '../heat/picture'
import { drawChains } from '../sizes/chain'
import type { LengthUnit } from '../sizes/lengths'
import { heights, textWidth_mm } from '../text/lettering'
import { cutBodies } from './bodies'
import { breakLines } from './break-lines'
import { extentOf } from './pieces'
import type { Window } from './clip'
import { seenParts } from './lines'
import type { ListedPart } from './listed-part'
import { hatchAngles_deg } from './hatch-angles'
import { membraneLines } from './membranes'
import { drawNumbers } from './numbers'
import { chainsAcross, chainsThrough, type Sizes } from './section-sizes'

/** How a section is drawn. */
export type SectionLook = {
  readonly parts: readonly ListedPart[]
  readonly hatchOf: (material: Id) => string
  readonly sizes: Sizes
  readonly window: Window
  readonly scale: number
  readonly language: Language
  /** what lengths are written in; absent: millimetres */
  readonly unit?: LengthUnit
  readonly at: View['at']
  readonly turn_deg: View['turn_deg']
  readonly mirrored: boolean
  readonly show: { readonly sizes: boolean; readonly numbers: boolean }
  /** where numbers may stand, in paper mm of the sheet; absent: at the right of the window */
  readonly columns?: readonly Column[]
  /** where ground and floor are pointed at; absent: anywhere in the window */
  readonly near?: Window
  /** the slots of the layout before, while something moves */
  readonly kept?: Slots
  /** its temperature field, in the place of tints and hatches */
  readonly heat?: HeatPicture
}

/** A drawn section, and the layout of its numbers: keep its slots while something moves. */
export type DrawnSection = { readonly view: View; readonly layout: Layout }

/** Draws a section as a view: cut bodies with tint and hatch, membranes, what lies behind, break lines, sizes, numbers. */
export const drawSection = (section: Section, look: SectionLook): DrawnSection => {
  const { window, scale } = look
  const parts: ReadonlyMap<Id, ListedPart> = new Map(
    look.parts.flatMap(it => it.of.map(of => [of, it] as const)),
  )
  const open = opened(window, section)
  const bodies = cutBodies(section, { window: open, scale, parts, hatchOf: look.hatchOf })
  const field = look.heat ? fieldMarks(look.heat, look) : undefined
  const sizes = look.show.sizes ? sizesOf(section, look, parts) : []
  const drawn: readonly ViewMark[] = [
    ...(field
      ? [
          ...field.bands,
          ...bodies.filter(it => it.kind !== 'area' && !(it.kind === 'path' && it.pen === 'light')),
        ]
      : bodies),
    ...membraneLines(section, open, parts, scale),
    ...seenParts(section, open, scale),
    ...breakLines(section.regions, window, scale),
    ...(field?.lines ?? []),
    ...sizes,
  ]
  const { marks, layout } = look.show.numbers ? numberSection(section, look, sizes) : noNumbers
  const { at, turn_deg, mirrored } = look
  return {
    view: {
      kind: 'view',
      layer: 'fabric',
      window,
      at,
      scale,
      turn_deg,
      mirrored,
      marks: [...drawn, ...marks],
    },
    layout,
  }
}

/** Numbers of a section, and their layout. They are marks of the view: wherever it is put, they go with it. */
export type Numbered = { readonly marks: readonly ViewMark[]; readonly layout: Layout }

const noNumbers: Numbered = { marks: [], layout: { leaders: new Map(), slots: [], conflicts: 0, struck: 0 } }

/** Lays out numbers of a section, clear of the words of its sizes: those of its parts, or of what is told apart in it. */
export const numberSection = (
  section: Section,
  look: Omit<SectionLook, 'show'>,
  sizes: readonly ViewMark[],
  numbered: readonly ListedPart[] = look.parts,
): Numbered =>
  drawNumbers(section, numbered, {
    drawn: look.parts,
    hatchOf: look.hatchOf,
    window: look.window,
    placement: placeView(look),
    scale: look.scale,
    columns: look.columns ?? [columnBeside(look)],
    words: wordBoxes(sizes, look),
    lines: sizeLines(sizes, look),
    slope_deg: slopeAgainst(hatchAngles_deg(section, look)),
    ...(look.near && { near: look.near }),
    ...(look.kept && { kept: look.kept }),
  })

/** A window that shows a face of the section shows its outline too: on that side it opens by a hair. */
const opened = ([low, high]: Window, section: Section): Window => {
  const all = extentOf(section.regions.flatMap(it => it.outline))
  return [
    [
      low[0] <= all.low[0] + hair_mm ? low[0] - 1 : low[0],
      low[1] <= all.low[1] + hair_mm ? low[1] - 1 : low[1],
    ],
    [
      high[0] >= all.high[0] - hair_mm ? high[0] + 1 : high[0],
      high[1] >= all.high[1] - hair_mm ? high[1] + 1 : high[1],
    ],
  ]
}

/** Two sides nearer than this are one. Ours. */
const hair_mm = 0.01

/** The boxes of the words of sizes on paper, with what a leader keeps off them. */
const wordBoxes = (sizes: readonly ViewMark[], look: Omit<SectionLook, 'show'>): readonly Box[] => {
  const { toPaper } = placeView(look)
  return sizes.flatMap((mark): readonly Box[] => {
    if (mark.kind !== 'dimension') return []
    const [a, b, [x, y]] = [toPaper(mark.from), toPaper(mark.to), toPaper(mark.text)]
    const half = textWidth_mm(mark.words, heights.size_mm) / 2 + offWords_mm
    const [low, high] = [-offWords_mm, heights.size_mm + offWords_mm]
    return Math.abs(a[1] - b[1]) < Math.abs(a[0] - b[0])
      ? [[[x - half, y + low], [x + half, y + high]]] // prettier-ignore
      : [[[x - high, y - half], [x - low, y + half]]] // prettier-ignore
  })
}

const offWords_mm = 0.8

/** The lines of sizes on paper: those that carry words, and those that lead to them; what two sizes share is there once. */
const sizeLines = (sizes: readonly ViewMark[], look: Omit<SectionLook, 'show'>): readonly SizeLine[] => {
  const { toPaper } = placeView(look)
  const lines = sizes.flatMap((mark): readonly SizeLine[] => {
    if (mark.kind !== 'dimension') return []
    const [a, b, line] = [toPaper(mark.from), toPaper(mark.to), toPaper(mark.line)]
    const isLevel = Math.abs(a[1] - b[1]) < Math.abs(a[0] - b[0])
    const footOf = ([x, y]: Point): Point => (isLevel ? [x, line[1]] : [line[0], y])
    return [
      { from: footOf(a), to: footOf(b), carries: true },
      { from: a, to: footOf(a), carries: false },
      { from: b, to: footOf(b), carries: false },
    ]
  })
  return [...new Map(lines.map(it => [JSON.stringify([it.from, it.to]), it])).values()]
}

/** Chains of sizes of a section, as they stand on paper. */
export const sizesOf = (
  section: Section,
  look: Omit<SectionLook, 'show'>,
  parts: ReadonlyMap<Id, ListedPart>,
): readonly ViewMark[] => {
  const on = {
    placement: placeView(look),
    scale: look.scale,
    language: look.language,
    unit: look.unit ?? 'mm',
  }
  const [low] = look.window
  return [
    ...drawChains(chainsAcross(section, parts, look.sizes), { axis: 0, edge_mm: low[1], outwards: -1 }, on),
    ...drawChains(
      chainsThrough(section, look.window, parts, look.sizes),
      { axis: 1, edge_mm: low[0], outwards: -1 },
      on,
    ),
  ]
}

/** A column at the right of the window, as high as it. Numbers without words need less room. Ours. */
const columnBeside = (look: Omit<SectionLook, 'show'>): Column => {
  const [width, height] = sizeOnPaper_mm(look)
  const off_mm = 12
  return {
    side: 'right',
    x: look.at[0] + width + off_mm,
    low: look.at[1],
    high: look.at[1] + height,
    pitch_mm: 6.5,
  }
}
