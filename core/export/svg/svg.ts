import { type Drawing, type InkGroup, inkOf, type Layer } from '../../drawing'
import { words } from '../../words'
import type { Format } from '../format'
import { layerNames } from '../layer-names'
import { utf8 } from '../utf-8'
import { base64 } from './base64'
import { escaped } from './escape'
import { mm } from './numbers'
import { writeInk } from './write-ink'

/**
 * Scalable vector graphics: one unit is one millimetre, a group a layer, a group a part in it. Hatches are clipped
 * lines and words stay words; no pattern, clip path, style sheet or marker, because many readers drop those. One style
 * says that words are not kerned, since no attribute can; letters stand where they are measured, not on whole pixels.
 */
export const svg: Format = {
  id: 'svg',
  name: words('SVG', 'SVG'),
  extension: 'svg',
  fonts: [],
  holds: 'one sheet',
  write: ({ drawings: [drawing], model }) => Promise.resolve(utf8(svgOf(drawing, model))),
}

/** Words are as wide as the sheet measures them. */
const unkerned = ' style="font-kerning:none;font-variant-ligatures:none"'

/**
 * The drawing as SVG text, and with it the project's file if it is given; the same drawing gives the same text. A page that
 * allows no styles but its own asks for it `bare`, and says itself that words are not kerned.
 */
export const svgOf = (drawing: Drawing, model?: string, dress: 'whole' | 'bare' = 'whole'): string => {
  const [width, height] = drawing.size_mm
  const groups = inkOf(drawing)
  const layers = [...new Set(groups.map(it => it.layer))]
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" xmlns:inkscape="http://www.inkscape.org/namespaces/inkscape" ` +
      `width="${mm(width)}mm" height="${mm(height)}mm" viewBox="0 0 ${mm(width)} ${mm(height)}" role="img" ` +
      `aria-labelledby="title says" xml:lang="${drawing.language}" lang="${drawing.language}" text-rendering="geometricPrecision"${dress === 'bare' ? '' : unkerned}>`,
    `<title id="title">${escaped(drawing.title)}</title>`,
    `<desc id="says">${escaped(drawing.says)}</desc>`,
    ...(model === undefined ? [] : [`<metadata id="model">${base64(utf8(model))}</metadata>`]),
    `<rect width="${mm(width)}" height="${mm(height)}" fill="#FFFFFF"/>`,
    ...layers.map(layer =>
      layerOf(
        layer,
        groups.filter(it => it.layer === layer),
        drawing,
      ),
    ),
    '</svg>',
    '',
  ].join('\n')
}

const layerOf = (layer: Layer, groups: readonly InkGroup[], drawing: Drawing): string => {
  const name = escaped(layerNames[layer][drawing.language])
  return [
    `<g id="layer-${layer}" inkscape:groupmode="layer" inkscape:label="${name}">`,
    `<title>${name}</title>`,
    ...groups.map(it => partOf(it, drawing)),
    '</g>',
  ].join('\n')
}

const partOf = (group: InkGroup, drawing: Drawing): string => {
  const inks = group.inks.map(it => writeInk(it, drawing.size_mm[1])).filter(it => it !== '')
  if (group.part === undefined) return inks.join('\n')
  const material = drawing.materials.get(group.part)
  const of = material === undefined ? '' : ` data-material="${escaped(material)}"`
  return [`<g data-part="${escaped(group.part)}"${of}>`, ...inks, '</g>'].join('\n')
}
