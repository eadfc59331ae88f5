import type { FieldAt } from '../../detail'
import type { Id } from '../../geometry'
import type { Words } from '../../words'
import type { Layer, Pen } from '../mark'

/**
 * A part as the sheet names it: one entry of the parts list, numbered from outside to inside in the order of the model.
 * `of` are the parts of the section that it covers: a glazing unit is one entry, whatever it is made of.
 */
export type ListedPart = {
  readonly id: Id
  readonly number: string
  readonly of: readonly Id[]
  readonly name: Words
  readonly note: Words
  /** an assumed value stands in the note: it is underlined with dashes wherever it appears */
  readonly assumed: boolean
  readonly role: 'layer' | 'frame' | 'glazing' | 'seal' | 'fixing' | 'ground'
  /** what its number points at where it has bodies of other materials too: the sheet of a sill, not the board behind it */
  readonly pointedIn?: Id
  /** for what is drawn as one line: which of the membranes it is */
  readonly line?: Extract<Pen, 'membrane-inner' | 'membrane-outer' | 'membrane-water'>
}

/** The layer that a role is drawn on. */
export const layerOfRole: Readonly<Record<ListedPart['role'], Layer>> = {
  layer: 'fabric',
  frame: 'parts',
  glazing: 'parts',
  seal: 'sealing',
  fixing: 'seen',
  ground: 'fabric',
}

/** A size of the joint as a range, and the field that it states. */
export type JointSize = { readonly words: string; readonly field?: FieldAt }
