import { type Words, words } from '../words'
import type { AddedPart } from './edit'
import type { Block } from './fixing'
import type { ThresholdPiece } from './threshold'

/** What is put into an opening, as people call it. */
export const addedPartName: Readonly<Record<AddedPart, Words>> = {
  fixing: words('Fixing', 'Befestigung'),
  block: words('Block', 'Klotz'),
  mullion: words('Mullion', 'Pfosten'),
  transom: words('Transom', 'Kämpfer'),
  sill: words('Outside sill', 'Fensterbank außen'),
  threshold: words('Threshold of a door', 'Schwelle einer Tür'),
  box: words('Shutter box', 'Rollladenkasten'),
}

/** The profile that one steps over, and what it stands on. */
export const profileName = words('Threshold profile', 'Schwellenprofil')
export const baseName = words('Base of the threshold', 'Sockel der Schwelle')

/** What lies round a threshold. */
export const thresholdPieceName: Readonly<Record<ThresholdPiece, Words>> = {
  sheet: words('Waterproofing, turned up', 'Abdichtung, hochgeführt'),
  floor: words('Floor inside', 'Fußboden innen'),
  surface: words('Surface outside', 'Belag außen'),
  channel: words('Drain channel with grating', 'Entwässerungsrinne mit Rost'),
  ground: words('Ground', 'Erdreich'),
}

/** A block by what it does. */
export const blockName: Readonly<Record<Block['kind'], Words>> = {
  support: words('Support block', 'Tragklotz'),
  distance: words('Distance block', 'Distanzklotz'),
}

/** The insulating board on the flank of a reveal. */
export const boardName = words('Board on the flank', 'Platte an der Leibung')
