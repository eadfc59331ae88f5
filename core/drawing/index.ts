export { flatten } from './flatten'
export { hatches, hatchOf } from './hatches/all'
export { drawHatch } from './hatches/draw-hatch'
export type { Family, Hatch, HatchLines } from './hatches/hatch'
export { paintOrder } from './ink/ink'
export type { FillUse, Flat, Ink, InkGroup, Letters } from './ink/ink'
export { inkOf, inkOfMarks, inkOfView } from './ink/ink-drawing'
export type { Look } from './ink/ink-drawing'
export { layers, pens } from './mark'
export type { Drawing, Hatching, Layer, Mark, Palette, Pen, View, ViewMark, Writers } from './mark'
export { placeView, sizeOnPaper_mm } from './place-view'
export type { Placement } from './place-view'
export { strokeOf } from './style/pens'
export type { Stroke } from './style/pens'
export { statusColours, statuses } from './style/verdicts'
export type { Status } from './style/verdicts'
export { symbols } from './symbols/all'
export {
  capitalShare,
  family,
  fontSize_mm,
  heights,
  linePitch,
  linesOf,
  textWidth_mm,
} from './text/lettering'
export { printable } from './text/printable'
export type { Column, Layout, Slots } from './labels/lay-out'
export { follow, layOut } from './labels/lay-out'
export { drawSection } from './section/draw-section'
export type { DrawnSection, SectionLook } from './section/draw-section'
export type { Window } from './section/clip'
export type { ListedPart } from './section/listed-part'
export type { Sizes } from './section/section-sizes'
export { listedParts, partNumbers } from './section/listed-parts'
export { bandWords, standInWindow, standOf, usualWindow, zoneLook } from './section/zone-view'
export { detailSheet, sheetScales } from './sheet/detail-sheet'
export type { SheetOptions } from './sheet/detail-sheet'
export { titleFields } from './sheet/title-block'
export type { TitleField } from './sheet/title-block'
export { chainValues_mm } from './sizes/chain-values'
export { placeWords } from './sizes/place-words'
export type { Span, Stand } from './sizes/place-words'
