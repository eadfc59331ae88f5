import { type Words, words } from '../words'

/** What a fixing is set into, by what it holds: the classes that tables of embedment and edge distance know. */
export const anchorBases = [
  'concrete', 'solid-brick', 'sand-lime', 'perforated-brick', 'aerated-concrete', 'lightweight-block', 'timber',
] as const // prettier-ignore
export type AnchorBase = (typeof anchorBases)[number]
export const anchorBaseName: Readonly<Record<AnchorBase, Words>> = {
  concrete: words('concrete', 'Beton'),
  'solid-brick': words('solid brick', 'Vollziegel'),
  'sand-lime': words('solid sand-lime brick', 'Kalksandvollstein'),
  'perforated-brick': words('perforated brick', 'Hochlochziegel'),
  'aerated-concrete': words('aerated concrete', 'Porenbeton'),
  'lightweight-block': words('lightweight concrete block', 'Leichtbetonstein'),
  timber: words('timber', 'Holz'),
}

/** Hollow, aerated and lightweight units hold little: a figure that is reached in them still has to be proven. */
export const isWeakBase = (base: AnchorBase): boolean =>
  base === 'perforated-brick' || base === 'aerated-concrete' || base === 'lightweight-block'

/** Masonry is built of units whose strength somebody has to state; concrete and timber are ordered by their class. */
export const isMasonry = (base: AnchorBase): boolean => base !== 'concrete' && base !== 'timber'
