import { type Words, words } from '../words'
import type { AddedPart } from './edit'
import type { Block } from './fixing'

/** What is put into an opening, as people call it. */
export const addedPartName: Readonly<Record<AddedPart, Words>> = {
  fixing: words('Fixing', 'Befestigung'),
  block: words('Block', 'Klotz'),
  mullion: words('Mullion', 'Pfosten'),
  transom: words('Transom', 'Kämpfer'),
  sill: words('Outside sill', 'Fensterbank außen'),
  box: words('Shutter box', 'Rollladenkasten'),
}

/** A block by what it does. */
export const blockName: Readonly<Record<Block['kind'], Words>> = {
  support: words('Support block', 'Tragklotz'),
  distance: words('Distance block', 'Distanzklotz'),
}

/** The insulating board on the flank of a reveal. */
export const boardName = words('Board on the flank', 'Platte an der Leibung')
