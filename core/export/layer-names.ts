import type { Layer } from '../drawing'
import { words, type Words } from '../words'

/** What a reader of a file calls the layers of a drawing. */
export const layerNames: Readonly<Record<Layer, Words>> = {
  fabric: words('fabric, cut', 'Bauwerk, geschnitten'),
  parts: words('parts, cut', 'Bauteile, geschnitten'),
  sealing: words('sealing', 'Abdichtung'),
  hatch: words('hatches', 'Schraffuren'),
  tint: words('tints', 'Flächen'),
  seen: words('behind the section', 'hinter dem Schnitt'),
  sizes: words('dimensions', 'Maße'),
  numbers: words('part numbers', 'Positionsnummern'),
  words: words('words', 'Text'),
  heat: words('temperature field', 'Temperaturfeld'),
  isotherms: words('isotherms', 'Isothermen'),
  sheet: words('sheet', 'Blatt'),
}
