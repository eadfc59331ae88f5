import type { ClimateId, HumidityClass, Month, RoomUse } from '../air'
import type { Id } from '../geometry'
import type { Duty, FrameMaterial, RevealForm, Reversal, Side } from '../kinds'
import type { OwnRow } from '../practice'
import type { AnySeal } from '../seals'
import type { Stated } from '../units'
import type { Asked } from './asked'
import type { Box } from './box'
import type { Block, Fixing, Mullion } from './fixing'
import type { IssueState, Revision } from './issue'
import type { PinnedPhoto } from './photo'
import type { Sill } from './sill'
import type { Survey } from './survey'
import type { Threshold } from './threshold'
import type { Told } from './told'
import type { Some } from '../words'
import type { Material } from '../materials'

/** A layer of a wall, with its duties. Layers are listed from outside to inside. */
export type Layer = {
  readonly id: Id
  readonly material: Id
  readonly thickness_mm: Stated<number>
  readonly duties: readonly Duty[]
  /** what closes the layer along the opening: a stud, a cavity closer */
  readonly edge?: { readonly material: Id; readonly width_mm: Stated<number> }
  /** what is declared of this very product; absent: what the library says of the material */
  readonly lambda_W_mK?: Stated<number>
  readonly muDry?: Stated<number>
  readonly muWet?: Stated<number>
}

/** How a wall receives a frame. Rebates and splay belong to the bearing layer. */
export type Reveal = {
  readonly form: RevealForm
  /** how far insulation (or what stands before the frame) covers the frame, in the plane of the wall; a rebate derives it */
  readonly cover_mm: Stated<number>
  /** thickness of the inside finish on the flank of the reveal */
  readonly lining_mm: Stated<number>
  /** how much the flank behind the frame turns away from the opening */
  readonly splay_deg?: Stated<number>
  /** the nib of a rebate: its thickness in the depth of the wall, and how far it stands out from the flank */
  readonly nibDepth_mm?: Stated<number>
  readonly nibLap_mm?: Stated<number>
  /** an insulating board on the flank behind the frame, under the finish */
  readonly board?: { readonly material: Id; readonly thickness_mm: Stated<number> }
}

/** A wall and how it receives a frame: the reveal belongs to the wall. */
export type Wall = {
  readonly id: Id
  readonly name: string
  readonly layers: Some<Layer>
  readonly reveal: Reveal
}

/** A frame type: which profile, of what, moving how. */
export type Frame = {
  readonly id: Id
  readonly name: string
  /** outlines of frame, sash and glazing: an entry of the profiles that the program knows */
  readonly profile: string
  readonly material: FrameMaterial
  /** change of length in one direction from the installed length; absent: the trade value of the material */
  readonly movement_mm_m?: Stated<number>
  /** thickness of the steel core that a screw meets; absent: that of the profile, where it has one */
  readonly steel_mm?: Stated<number>
}

/** A type of joint, shared by any number of openings: how wide it is meant to be, and its seals from outside to inside. */
export type Joint = {
  readonly id: Id
  readonly name: string
  readonly planned_mm: Stated<number>
  /** how far the built width may be off the planned one, each way */
  readonly tolerance_mm: Stated<number>
  /** why it is accepted tighter outside than inside, where somebody stands for it */
  readonly reversal?: Stated<Reversal>
  readonly seals: readonly AnySeal[]
  /** seals that are taken out to see what then fails: kept with all their values until they are put back */
  readonly out?: readonly AnySeal[]
}

/** A stretch of one side of an opening with its own joint. */
export type Zone = { readonly id: Id; readonly joint: Id; readonly to_mm: number }

/** The air of the room behind an opening. Absent: what the use of the room gives. */
export type Room = {
  readonly use?: Stated<RoomUse>
  readonly humidityClass?: Stated<HumidityClass>
  readonly inside_C?: Stated<number>
  readonly inside_pct?: Stated<number>
}

/** The climate of the place. Absent: that of the standard, and a year for trying. */
export type Site = {
  readonly climate?: Stated<ClimateId>
  readonly outside_C?: Stated<number>
  readonly outside_pct?: Stated<number>
  readonly ground_C?: Stated<number>
  /** monthly means */
  readonly year?: {
    readonly outside_C?: Readonly<Partial<Record<Month, Stated<number>>>>
    readonly outside_pct?: Readonly<Partial<Record<Month, Stated<number>>>>
  }
}

/** One opening: a wall and a frame put together, with a joint along each side. */
export type Opening = {
  readonly id: Id
  readonly name: string
  readonly wall: Id
  readonly frame: Id
  readonly width_mm: Stated<number>
  readonly height_mm: Stated<number>
  /** from the outer face of the bearing layer to the outer face of the frame, inward positive */
  readonly position_mm: Stated<number>
  /** how far the frame stands off the middle of its opening: to the right, and upwards */
  readonly aside_mm?: Stated<number>
  readonly raised_mm?: Stated<number>
  readonly survey?: Survey
  readonly mullions: readonly Mullion[]
  /** members across, from the lower end of the frame: they divide the jambs as mullions divide head and sill */
  readonly transoms?: readonly Mullion[]
  readonly fixings: readonly Fixing[]
  readonly blocks: readonly Block[]
  readonly sill?: Sill
  /** in the place of a sill where one walks through */
  readonly threshold?: Threshold
  /** a box on top of the frame: the joint of the head is then between box and lintel */
  readonly box?: Box
  readonly asked?: Asked
  readonly told?: Told
  readonly room?: Room
  /** parts that are there already and must stay */
  readonly stays: readonly Id[]
  readonly photos?: readonly PinnedPhoto[]
  readonly sides: Readonly<Record<Side, Some<Zone>>>
}

/** What identifies the file's format. */
export type FormatTag = {
  readonly name: 'jambwright'
  readonly version: number
  readonly readableFrom: number
}

/** The whole design: flat tables joined by id. Planned, surveyed and as built are never one value overwritten. */
export type Project = {
  readonly format: FormatTag
  readonly title: {
    readonly name: string
    readonly office: string
    readonly author: string
    readonly place: string
    readonly number: string
    readonly note: string
    readonly approver?: string
    /** absent: a draft */
    readonly status?: IssueState
    /** oldest first */
    readonly revisions?: readonly Revision[]
  }
  readonly practice: { readonly id: string; readonly edition: string; readonly own: readonly OwnRow[] }
  /** absent: no climate is stated */
  readonly site?: Site
  /** the number that the next part gets */
  readonly next: number
  /** what somebody calls a part here, by its id; absent: what it is */
  readonly names?: Readonly<Record<Id, string>>
  readonly materials: Readonly<Record<Id, Material>>
  readonly walls: Readonly<Record<Id, Wall>>
  readonly frames: Readonly<Record<Id, Frame>>
  readonly joints: Readonly<Record<Id, Joint>>
  readonly openings: Readonly<Record<Id, Opening>>
  /** photos by their digest, as base64 of a JPEG: one that is pinned twice is kept once */
  readonly photos?: Readonly<Record<string, string>>
}
