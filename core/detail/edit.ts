import type { z } from 'zod'
import type { Id } from '../geometry'
import type { Plane, Side } from '../kinds'
import type { LimitKey, OwnRow } from '../practice'
import type { Result, Stated } from '../units'
import type { FieldAt } from './field'
import type { FixingKind } from './fixing'
import type { IssueState, Revision } from './issue'
import type { Project } from './model'
import type { PhotoTold } from './photo'
import type { Piece } from './piece'

/** A text of the title block. */
export const titleTexts = ['name', 'office', 'author', 'place', 'number', 'note', 'approver'] as const
export type TitleText = (typeof titleTexts)[number]

/** What can be put into an opening as a fresh part. */
export const addedParts = ['fixing', 'block', 'mullion', 'transom', 'sill', 'threshold', 'box'] as const
export type AddedPart = (typeof addedParts)[number]

/** Every change of a project, as data. A plain value goes through `state`; the others change structure. */
export interface Edits {
  /** states a value or a word, or takes the statement back */
  state: { readonly at: FieldAt; readonly to: Stated<number> | Stated<string> | undefined }
  /** makes an assumed value a specified one */
  confirm: { readonly at: FieldAt }
  /** puts a new seal of a kind into a plane of a joint */
  fill: { readonly joint: Id; readonly plane: Plane; readonly seal: string }
  /** puts a seal in the place of another, in the same plane */
  replace: { readonly part: Id; readonly seal: string }
  /** lets two seals of a joint change planes, each with its values */
  exchange: { readonly part: Id; readonly with: Id }
  /** takes a seal out, to see what then fails: it is kept with all its values */
  'take-out': { readonly part: Id }
  /** puts a seal back that was taken out */
  'put-back': { readonly part: Id }
  /** calls a part by a name of its own, or again by what it is */
  rename: { readonly part: Id; readonly to: string }
  /** puts a piece that was copied here or elsewhere where it belongs at a zone: a layer before another, or at the inside */
  paste: { readonly piece: Piece; readonly into: Id; readonly before?: Id }
  /** puts the same layer, fixing or opening beside one */
  duplicate: { readonly part: Id }
  /** inserts a layer into a wall: before a layer, or at the inside */
  insert: { readonly into: Id; readonly before?: Id; readonly material: Id; readonly thickness_mm: number }
  /**
   * puts a fresh part into an opening: a block on a side, a mullion or a transom where it is said, else in the middle; a
   * fixing of a kind
   */
  add: {
    readonly into: Id
    readonly part: AddedPart
    readonly side?: Side
    readonly at_mm?: number
    readonly fixing?: FixingKind
  }
  /** states the axes of the fixings of a side, or goes back to their count */
  'place-fixings': { readonly fixing: Id; readonly side: Side; readonly positions_mm?: readonly number[] }
  /** counts the fixings of a side so that no two stand further apart */
  'space-fixings': { readonly fixing: Id; readonly side: Side; readonly spacing_mm: number }
  /** pins a photo to an opening, a JPEG in base64 */
  'pin-photo': { readonly opening: Id; readonly jpeg: string } & PhotoTold
  /** says anew what a pinned photo shows, where and when it was taken */
  'tell-photo': { readonly photo: Id } & PhotoTold
  /** takes out a layer, a seal, a part of an opening, or an opening beside others */
  remove: { readonly part: Id }
  /** moves a layer before another of the same wall, or to the inside */
  move: { readonly part: Id; readonly before?: Id }
  /** splits a zone in two along its side; both keep the joint until another is chosen */
  'split-zone': { readonly zone: Id; readonly at_mm: number }
  /** makes one zone of two neighbours, with the joint of the first */
  'join-zones': { readonly zone: Id }
  /** gives a zone another joint type, or a copy of its own that may be changed alone */
  'choose-joint': { readonly zone: Id; readonly joint: Id | 'copy' }
  /** states a measured offset of a flank, or takes it back */
  'measure-offset': {
    readonly opening: Id
    readonly side: Side
    readonly at_mm: number
    readonly offset_mm?: number
  }
  /** writes a text of the title block; an approver may be taken back */
  entitle: { readonly text: TitleText; readonly to: string }
  /** puts the sheets to a state; with a revision, that line is added to the table and, where issued, keeps the digest */
  issue: { readonly status: IssueState; readonly revision?: Omit<Revision, 'digest'> }
  /** states a limit of one's own, with its source or reason, before those of the practice */
  'own-limit': { readonly row: OwnRow }
  /** takes the limit of one's own for a case back */
  'drop-limit': { readonly limit: LimitKey; readonly when: Readonly<Record<string, unknown>> }
  'choose-practice': { readonly practice: string }
  'choose-profile': { readonly frame: Id; readonly profile: string }
  'choose-wall': { readonly opening: Id; readonly wall: Id }
}
export type EditOf<K extends keyof Edits> = { readonly kind: K } & Edits[K]
export type Edit = { [K in keyof Edits]: EditOf<K> }[keyof Edits]

/** One kind of edit, in one file: how it looks in data, and what it makes of a project. */
export type EditKind<K extends keyof Edits> = {
  readonly kind: K
  readonly schema: z.ZodType<EditOf<K>>
  readonly apply: (project: Project, edit: EditOf<K>) => Result<Project>
}

/** The list of all kinds: a kind without its file does not compile. */
export type EditKinds = { readonly [K in keyof Edits]: EditKind<K> }
