import type { Id } from '../geometry'
import { assumed, type Stated } from '../units'
import { words } from '../words'
import type { Told } from './told'

/** A layer that is laid flat: of what, how thick. */
export type Laid = { readonly material: Id; readonly thickness_mm: Stated<number> }

/**
 * What closes an opening at its foot where one walks through: a flat profile on its base, the floor inside, the surface
 * outside on the ground. Levels, fall and drain are told of the opening, where rules read them.
 */
export type Threshold = {
  readonly id: Id
  /** of the profile */
  readonly material: Id
  /** of the profile, from its underside over the joint to its top */
  readonly height_mm: Stated<number>
  /** what the profile stands on, below the joint and as deep as the frame */
  readonly base: Laid
  /** the floor inside, from its top: finish, screed, insulation, slab */
  readonly finish: Laid
  readonly screed_mm: Stated<number>
  readonly insulation: Laid
  readonly slab_mm: Stated<number>
  /** the surface outside, on a bed of gravel on the ground */
  readonly paving: Laid
  readonly bed_mm: Stated<number>
  /** how much the surface falls, whichever way it does */
  readonly fall_pct: Stated<number>
  /** the drain channel, drawn where one is told */
  readonly channelWidth_mm: Stated<number>
  readonly channelDepth_mm: Stated<number>
}

/** Why an opening cannot have both. */
export const footTaken = words(
  'an opening has a sill or a threshold at its foot, not both: take the other out first',
  'eine Öffnung hat unten eine Fensterbank oder eine Schwelle, nicht beides: das andere zuerst entfernen',
)

/** Levels over the finished floor inside, which is zero. */
export type ThresholdLevels = {
  readonly top_mm: Stated<number>
  readonly outside_mm: Stated<number>
  /** upper edge of the waterproofing; it lies at the top of the threshold unless somebody says where */
  readonly edge_mm: Stated<number>
}

/** Where nobody has told a level: a low threshold over a level surface. Ours, and shown as assumed. */
const usual = { top_mm: 20, outside_mm: 0 } as const

/** The levels that a threshold is drawn at. What nobody has told is assumed. */
export const thresholdLevels = (told: Told | undefined): ThresholdLevels => {
  const top_mm = told?.threshold_mm ?? assumed(usual.top_mm)
  return {
    top_mm,
    outside_mm: told?.outside_mm ?? assumed(usual.outside_mm),
    edge_mm: told?.edge_mm ?? assumed(top_mm.value),
  }
}

/** What of a threshold can be shown apart in a section and has a number of its own. */
export const thresholdPieces = ['floor', 'surface', 'channel', 'sheet', 'ground'] as const
export type ThresholdPiece = (typeof thresholdPieces)[number]

/** The part that a piece of a threshold is. */
export const thresholdPieceId = (threshold: Id, piece: ThresholdPiece): Id => `${threshold}/${piece}`

/** Whether a drain channel lies before the door. */
export const hasChannel = (told: Told | undefined): boolean =>
  told?.thresholdDrain !== undefined && told.thresholdDrain.value !== 'none'
