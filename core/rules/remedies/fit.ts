import type { Edit, Joint } from '../../detail'
import type { Id } from '../../geometry'
import { beadDepths_mm } from '../../movement'
import { lookUp, type Practice } from '../../practice'
import { type AnySeal, kindOf, rodSizes_mm, tapeRanges_mm } from '../../seals'
import {
  type Band,
  type Bounds,
  inWords,
  isInside,
  marginOf,
  specified,
  writeNumber,
  writeQuantity,
} from '../../units'
import { filled, isSome, type Some, type Words, words } from '../../words'
import { hasValue } from '../readings/seals'

/**
 * Values for the seals of a joint, as edits and in words ("bead 8 mm deep"), and whether all of them suit it.
 * The words wait until they are wanted: most fits are tried and thrown away.
 */
export type Fit = {
  readonly edits: readonly Edit[]
  readonly says: readonly (() => Words)[]
  readonly suits: boolean
}
export const nothing: Fit = { edits: [], says: [], suits: true }
export const both = (a: Fit, b: Fit): Fit => ({
  edits: [...a.edits, ...b.edits],
  says: [...a.says, ...b.says],
  suits: a.suits && b.suits,
})

/** Where a joint is while values are sought for it, over all zones that it is used in. */
export type Room = { readonly planned_mm: number; readonly still_mm: Band; readonly moving_mm: Band }

/** The best values of a seal for a joint: depth of a bead, its rod, the range of a tape. */
export const fitSeal = (seal: AnySeal, room: Room, practice: Practice): Fit =>
  [
    hasValue(seal, 'sealant.depth') ? fitDepth(seal, room, practice) : nothing,
    hasValue(seal, 'sealant.rod') ? fitRod(seal, room, practice) : nothing,
    hasValue(seal, 'tape.least') ? fitTape(seal, room) : nothing,
  ].reduce(both, nothing)

/** The best values for every seal of a joint. */
export const fitSeals = (joint: Joint, room: Room, practice: Practice): Fit =>
  joint.seals.map(seal => fitSeal(seal, room, practice)).reduce(both, nothing)

/** A bead half as deep as the joint is wide, or as near to that as both ends of the joint allow; whole or half millimetres. */
export const fitDepth = (seal: AnySeal, room: Room, practice: Practice): Fit => {
  const { min, max } = depthsIn(room.still_mm, practice)
  const wanted = Math.min(Math.max(room.planned_mm / 2, min), max)
  const suiting = [1, 0.5]
    .flatMap(step =>
      [Math.round(wanted / step), Math.ceil(min / step), Math.floor(max / step)].map(it => it * step),
    )
    .find(it => min <= it && it <= max)
  const depth_mm = suiting ?? Math.round(Math.max(wanted, min))
  return { ...states(seal, 'sealant.depth', depth_mm, beadDeep), suits: suiting !== undefined }
}

/** Depths that suit both ends of a joint under a practice; `min > max` where none does. */
export const depthsIn = (still_mm: Band, practice: Practice): Band =>
  beadDepths_mm(still_mm, width_mm => lookUp(practice, 'sealant-depth', { width_mm })?.then ?? {})

/** The stock rod whose oversize suits both ends of the joint, nearest to a quarter; else the one that comes nearest to it. */
export const fitRod = (seal: AnySeal, room: Room, practice: Practice): Fit => {
  const tiers = oversizes(room.still_mm.max, practice)
  for (const within of tiers) {
    const suit = rodSizes_mm.filter(it => isInside(oversize_pct(it, room.still_mm), within))
    if (isSome(suit)) {
      const best = nearestOf(suit, it => Math.abs(it - quarterWider * room.planned_mm))
      return states(seal, 'sealant.rod', best, rodThick)
    }
  }
  const loosest = tiers.at(-1) ?? { unit: 'pct' }
  const best = nearestOf(rodSizes_mm, it => -marginOf(oversize_pct(it, room.still_mm), loosest))
  return { ...states(seal, 'sealant.rod', best, rodThick), suits: false }
}

/** "About 25 % wider": common practice. */
const quarterWider = 1.25

const nearestOf = <T>([first, ...more]: Some<T>, off: (it: T) => number): T =>
  more.reduce((best, it) => (off(it) < off(best) ? it : best), first)

/** What the practice allows of a rod, the wanted bounds first. */
export const oversizes = (width_mm: number, practice: Practice): readonly Bounds[] => {
  const row = lookUp(practice, 'backing-oversize', { width_mm })
  return [row, row?.last].flatMap(tier => (tier ? [{ unit: 'pct', ...tier.then.share_pct } as const] : []))
}

/** Diameter of a rod as a share of the joint, at the widest and at the narrowest. */
export const oversize_pct = (rod_mm: number, still_mm: Band): Band => ({
  min: (100 * rod_mm) / still_mm.max,
  max: still_mm.min > 0 ? (100 * rod_mm) / still_mm.min : Infinity,
})

/** The first printed range that holds the moving joint, with the planned width in its lower half where there is one. */
export const fitTape = (seal: AnySeal, room: Room): Fit => {
  const suits = tapeRanges_mm.filter(it => isInside(room.moving_mm, { unit: 'mm', ...it }))
  const inLowerHalf = suits.find(it => room.planned_mm <= (it.min + it.max) / 2)
  const range = inLowerHalf ?? suits[0] ?? nearestRange(room)
  const edits = [
    ...states(seal, 'tape.least', range.min, tapeOf).edits,
    ...states(seal, 'tape.most', range.max, tapeOf).edits,
  ]
  const says = edits.length > 0 ? [() => filled(tapeOf, sizeOf(range))] : []
  return { edits, says, suits: suits.length > 0 }
}

const nearestRange = ({ moving_mm }: Room): Band =>
  isSome(tapeRanges_mm)
    ? nearestOf(tapeRanges_mm, it => -marginOf(moving_mm, { unit: 'mm', ...it }))
    : moving_mm

const sizeOf = (range: Band): Words =>
  inWords(language => `${writeNumber(range.min, language)}–${writeQuantity(range.max, 'mm', language)}`)

/** States a value of a seal as specified; nothing to do where it is so already. */
const states = (seal: AnySeal, field: string, value: number, says: Words): Fit => {
  const key = kindOf(seal).values.find(it => it.id === field)?.key ?? ''
  const now = seal[key]
  if (typeof now === 'object' && now.value === value) return nothing
  return { edits: [stateIt(field, seal.id, value)], says: [() => filled(says, lengthIn(value))], suits: true }
}

/** An edit that specifies a value. */
export const stateIt = (field: string, part: Id, value: number): Edit => ({
  kind: 'state',
  at: { field, part },
  to: specified(value),
})

/** A length in words, with as many decimals as it has. */
export const lengthIn = (value_mm: number): Words =>
  inWords(language => writeQuantity(value_mm, 'mm', language))

const beadDeep = words('bead {0} deep', 'Fugentiefe {0}')
const rodThick = words('rod Ø {0}', 'Schnur Ø {0}')
const tapeOf = words('tape {0}', 'Band {0}')
