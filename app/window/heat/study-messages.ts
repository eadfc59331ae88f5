import type { Project, ZonePlace } from '../../../core/detail'
import type { Outline } from '../../../core/geometry'
import type { Psi, SectionHeat } from '../../../core/heat'
import type { Sureness, Table } from '../../../core/study'
import type { Remedy, Report } from '../../../core/rules'
import type { Problem } from '../../../core/units'
import type { Along } from '../../../core/vapour'
import type { Language } from '../../../core/words'
import type { HeatFacts, HeatLook } from './messages'
import type { PackedInk } from './packed-ink'

type Asked<K extends string> = { readonly number: number; readonly kind: K; readonly project: Project }

/** What takes longer than a frame and is asked once nothing moves any more. */
export type StudyAsked =
  | Asked<'report'>
  | (Asked<'cures'> & { /** which finding */ readonly key: string })
  | (Asked<'settle'> & { readonly place: ZonePlace })
  | (Asked<'compare'> & {
      readonly place: ZonePlace
      readonly language: Language
      /** size of a picture on paper, mm */
      readonly size: readonly [number, number]
    })

/** How sure the coldest place is, what moves it, the linear heat loss with its terms, and vapour in tables. */
export type Settled = {
  readonly sureness: Sureness
  readonly psi?: Psi
  readonly coupling_W_mK?: number
  /** from each side, W/m */
  readonly flow_W_m: SectionHeat['flow_W_m']
  readonly vapour: readonly Table[]
  readonly along?: Along
  /** outlines of where water gathers in winter, in model mm; absent where that is not known */
  readonly wetZone?: readonly Outline[]
  /** what keeps vapour from being balanced */
  readonly vapourProblems: readonly Problem[]
}

/** One place of the frame beside others, drawn at the same scale. */
export type Compared = {
  readonly position_mm: number
  readonly isPresent: boolean
  readonly view: HeatLook['view']
  readonly facts: HeatFacts
  readonly bands: PackedInk
  readonly outlines: PackedInk
  readonly lines: PackedInk
}

export type StudyTold =
  | { readonly number: number; readonly kind: 'report'; readonly heat: Report }
  | {
      readonly number: number
      readonly kind: 'cures'
      readonly key: string
      readonly remedies: readonly Remedy[]
    }
  | { readonly number: number; readonly kind: 'settled'; readonly it: Settled }
  | {
      readonly number: number
      readonly kind: 'compared'
      readonly places: readonly Compared[]
      readonly table: Table
    }
  | { readonly number: number; readonly kind: 'problems'; readonly problems: readonly Problem[] }
  | { readonly number: number; readonly kind: 'fault'; readonly report: string }
