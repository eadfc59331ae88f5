import type { HeatQuestion, HeatPicture } from '../../../core/drawing'
import type { Problem } from '../../../core/units'
import type { Language } from '../../../core/words'
import type { PackedInk } from './packed-ink'

type Point = readonly [number, number]
type Box = readonly [Point, Point]
type Place = { readonly at: Point; readonly size: Point }

/** How a field is to be drawn: on the board at its scale, and the pictures beside it in the strip. Paper mm. */
export type HeatLook = {
  readonly view: {
    readonly window: Box
    readonly scale: number
    readonly turn_deg: 0 | 90 | 180 | 270
    readonly mirrored: boolean
    readonly at: Point
  }
  readonly seen: Box
  readonly language: Language
  /** whether dew point and mould limit are drawn */
  readonly named: boolean
  readonly strip: { readonly scale: Place; readonly profile: Place }
}

/** A question to the worker. Its number tells a fresh answer from one that was overtaken. */
export type HeatAsked = {
  readonly number: number
  readonly question: HeatQuestion
  readonly look: HeatLook
}

/** What the panels read of an answer: all of the picture but its mesh. */
export type HeatFacts = Omit<HeatPicture, 'solution' | 'profile'>

/** The worker's answer. Our own fault is told apart from what is wrong with the section. */
export type HeatTold =
  | {
      readonly number: number
      readonly kind: 'picture'
      readonly how: 'new' | 'followed' | 'remeshed'
      readonly look: HeatLook
      readonly facts: HeatFacts
      readonly bands: PackedInk
      readonly lines: PackedInk
      readonly scale: PackedInk
      readonly profile: PackedInk
      /** time that it took, ms */
      readonly spent_ms: number
    }
  | { readonly number: number; readonly kind: 'problems'; readonly problems: readonly Problem[] }
  | { readonly number: number; readonly kind: 'fault'; readonly report: string }
