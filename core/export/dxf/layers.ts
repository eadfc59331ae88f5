import { type Layer, paintOrder, type Pen, strokeOf } from '../../drawing'
import { colourIndex, trueColour } from './colour-index'
import type { Draft, LayerRow, Own } from './draft'
import type { Handle, Tags } from './tags'

/** A layer of the file for an entity, and what the entity must say itself because the layer stands for another scale. */
export type On = { readonly layer: string; readonly rank: number; readonly own: Own }

/** Later in the order of painting is higher. */
export const rankOf = (layer: Layer): number => paintOrder.indexOf(layer)

/** The layer of what is drawn with a pen. The first scale that uses it decides its weight; others say their own. */
export const penLayer = (draft: Draft, layer: Layer, pen: Pen, scale: number): On => {
  const { width_mm, dash_mm, colour } = strokeOf(pen, draft.enlarged ?? scale, draft.look.palette)
  const run_mm = dash_mm.reduce((sum, it) => sum + it, 0)
  const name = nameOf(layer, pen)
  const weight = weightOf(width_mm)
  const row = rowOf(draft, name, () => ({
    colour,
    weight,
    linetype: linetypeOf(draft, pen, dash_mm),
    run_mm,
    plots: true,
    isOff: false,
  }))
  return {
    layer: name,
    rank: rankOf(layer),
    own: {
      ...(row.weight !== weight && { weight }),
      ...(row.run_mm !== run_mm && row.run_mm > 0 && { linetypeScale: run_mm / row.run_mm }),
    },
  }
}

/** Layers of the file that no pen of the drawing stands for. */
const special = {
  regions: { name: 'JW-REGIONS', plots: false, isOff: true },
  viewports: { name: 'JW-VIEWPORTS', plots: false, isOff: false },
} as const

/** Outlines of all cut regions, for measuring: not shown and not plotted, as the visible outlines are beside them. */
export const regionLayer = (draft: Draft): On => ({
  ...specialLayer(draft, 'regions'),
  rank: rankOf('fabric'),
})

export const viewportLayer = (draft: Draft): On => ({ ...specialLayer(draft, 'viewports'), rank: -1 })

/** A viewport whose outlines cover what is filled and hatched on the paper under them. */
export const outlinesOver = (draft: Draft): On => ({ ...viewportLayer(draft), rank: rankOf('fabric') })

/** The layers that such a viewport does not show: all but those of cut outlines. */
export const allButOutlines = (draft: Draft): readonly Handle[] =>
  [...draft.layers.values()].filter(it => !/-CUT(-SMALL)?$/.test(it.name)).map(it => it.handle)

const specialLayer = (draft: Draft, which: keyof typeof special): Pick<On, 'layer' | 'own'> => {
  const { name, plots, isOff } = special[which]
  rowOf(draft, name, () => ({
    colour: '#ADADAD',
    weight: 13,
    linetype: 'Continuous',
    run_mm: 0,
    plots,
    isOff,
  }))
  return { layer: name, own: {} }
}

/** The layer of fills: tints of parts together, so that they can be switched off; others by what they belong to. */
export const fillLayer = (draft: Draft, layer: Layer): On => {
  const name = nameOf(layer, 'fill')
  rowOf(draft, name, () => ({
    colour: '#ADADAD',
    weight: 13,
    linetype: 'Continuous',
    run_mm: 0,
    plots: true,
    isOff: false,
  }))
  return { layer: name, rank: rankOf(layer), own: {} }
}

/** The colour of an entity that has one of its own; the older version knows the palette alone. */
export const ownColour = (draft: Draft, colour: string): Tags => [
  [62, colourIndex(colour)],
  ...(draft.version === 'AC1021' ? ([[420, trueColour(colour)]] as const) : []),
]

const nameOf = (layer: Layer, use: string): string =>
  (use === layer || ((layer === 'tint' || layer === 'heat') && use === 'fill')
    ? `JW-${layer}`
    : use.startsWith('isotherm')
      ? `JW-${use}`
      : layer === 'sizes' && use === 'size'
        ? 'JW-sizes'
        : `JW-${layer}-${use}`
  ).toUpperCase()

const rowOf = (draft: Draft, name: string, fresh: () => Omit<LayerRow, 'name' | 'handle'>): LayerRow => {
  const found = draft.layers.get(name)
  if (found) return found
  const row: LayerRow = { name, ...fresh(), handle: draft.handle() }
  draft.layers.set(name, row)
  return row
}

const linetypeOf = (draft: Draft, pen: Pen, dash_mm: readonly number[]): string => {
  if (dash_mm.length === 0) return 'Continuous'
  const name = `JW-${pen}`.toUpperCase()
  if (!draft.linetypes.has(name))
    draft.linetypes.set(name, { name, dashes_mm: dash_mm.map((it, at) => (at % 2 === 0 ? it : -it)) })
  return name
}

/** The line weights that the format knows, in hundredths of a millimetre. */
const weights = [
  5, 9, 13, 15, 18, 20, 25, 30, 35, 40, 50, 53, 60, 70, 80, 90, 100, 106, 120, 140, 158, 200, 211,
] as const

/** The line weight next to a width. */
export const weightOf = (width_mm: number): number =>
  weights.reduce<number>(
    (best, it) => (Math.abs(it - width_mm * 100) < Math.abs(best - width_mm * 100) ? it : best),
    25,
  )
