import type { Id } from '../../geometry'
import type { Language } from '../../words'
import { flatten } from '../flatten'
import type { Seen } from '../hatches/hatch'
import type { Drawing, Layer, Mark, Palette, View, ViewMark } from '../mark'
import { strokeOf } from '../style/pens'
import { symbolMarks } from '../symbols/all'
import { type Ink, type InkGroup, paintOrder } from './ink'
import { inkArea, type Laid } from './ink-area'
import { drawnOnce } from './drawn-once'
import { inkDimension } from './ink-dimension'
import { inkLeader } from './ink-leader'
import { inkPath } from './ink-path'

/** What decides how marks look: nothing else does. Hatches may be left out where they are not `seen`, in paper mm. */
export type Look = { readonly palette: Palette; readonly language: Language; readonly seen?: Seen }

/** All ink of a drawing, grouped by layer and part, in the order in which it is painted. */
export const inkOf = (drawing: Drawing): readonly InkGroup[] => inkOfMarks(drawing.marks, drawing)

/** All ink of some marks on paper, views among them. */
export const inkOfMarks = (marks: readonly Mark[], look: Look): readonly InkGroup[] =>
  grouped(
    marks.flatMap(mark =>
      mark.kind === 'view'
        ? flatten(mark).flatMap(it => inkMark(it, mark.scale, look))
        : inkMark(mark, 1, look),
    ),
  )

/** All ink of one view. */
export const inkOfView = (view: View, look: Look): readonly InkGroup[] => inkOfMarks([view], look)

type PartInk = Laid & { readonly part?: Id }

const inkMark = (mark: ViewMark, scale: number, look: Look): readonly PartInk[] => {
  const on = (inks: readonly Ink[]): readonly PartInk[] =>
    inks.map(ink => ({ layer: mark.layer, ink, ...(mark.part !== undefined && { part: mark.part }) }))
  switch (mark.kind) {
    case 'path':
      return on(inkPath(mark, scale, look.palette))
    case 'area':
      return inkArea(mark, scale, look).map(it => ({
        ...it,
        ...(mark.part !== undefined && { part: mark.part }),
      }))
    case 'text':
      return on([lettersOf(mark, scale, look.palette)])
    case 'dimension':
      return on(inkDimension(mark, scale, look.palette))
    case 'leader':
      return on(inkLeader(mark, scale, look.palette))
    case 'symbol':
      return symbolMarks(mark, look.language).flatMap(it => inkMark(it, 1, look))
    case 'picture':
      return on([{ kind: 'picture', at: mark.at, size: mark.size, jpeg: mark.jpeg, says: mark.says }])
  }
}

const lettersOf = (mark: Extract<ViewMark, { kind: 'text' }>, scale: number, palette: Palette): Ink => ({
  kind: 'letters',
  at: mark.at,
  words: mark.words,
  height_mm: mark.height_mm,
  turn_deg: mark.turn_deg,
  anchor: mark.anchor,
  bold: mark.bold === true,
  colour: strokeOf(mark.pen, scale, palette).colour,
  ...(mark.read && { read: mark.read }),
})

const grouped = (all: readonly PartInk[]): readonly InkGroup[] => {
  const byLayer = new Map<Layer, Map<Id, Ink[]>>()
  for (const { layer, part, ink } of all) {
    const parts = byLayer.get(layer) ?? new Map<Id, Ink[]>()
    byLayer.set(layer, parts)
    const inks = parts.get(part ?? noPart)
    if (inks) inks.push(ink)
    else parts.set(part ?? noPart, [ink])
  }
  return paintOrder.flatMap(layer => {
    const once = layer === 'sizes' ? drawnOnce() : (inks: readonly Ink[]) => inks
    return [...(byLayer.get(layer) ?? [])].map(([part, inks]) =>
      part === noPart ? { layer, inks: once(inks) } : { layer, part, inks: once(inks) },
    )
  })
}

const noPart = ''
