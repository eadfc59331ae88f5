import { z } from 'zod'
import { planes } from '../kinds'
import { sourceIds, trusts } from '../sources'
import type { LimitKey, LimitShapes, OwnRow } from './limit'

const number = z.number().finite()
const least = z.strictObject({ least_mm: number })
const accepted = z.strictObject({ accepted: z.array(z.string().max(60)).max(20) })
const bounded = z.strictObject({ least: number.exactOptional(), most: number.exactOptional() })

/** What each limit gives, as a file states it. A limit without its schema does not compile. */
const thens: { readonly [K in LimitKey]: z.ZodType<LimitShapes[K]['then']> } = {
  'planes-filled': z.strictObject({ planes: z.array(z.enum(planes)), isProven: z.boolean().exactOptional() }),
  'foam-as-air-seal': z.enum(['accepted', 'not-accepted']),
  'vapour-order': z.strictObject({ least: number }),
  'sealant-depth': z.strictObject({
    share: number.exactOptional(),
    within_mm: number.exactOptional(),
    mostShare: number.exactOptional(),
    least_mm: number.exactOptional(),
    most_mm: number.exactOptional(),
  }),
  'backing-oversize': z.strictObject({ share_pct: z.strictObject({ min: number, max: number }) }),
  'bonded-faces': z.strictObject({ faces: number }),
  'least-joint': z.strictObject({ least_mm: number }),
  'perimeter-gap': z.strictObject({ least_mm: number, most_mm: number }),
  'joint-for-movement': z.strictObject({ basis: z.enum(['total', 'plus-minus', 'share-of-smallest']) }),
  'tape-range': z.literal('inside'),
  'joint-there': least,
  'seal-placed': z.literal('all'),
  'membrane-on-frame': least,
  'membrane-on-wall': least,
  'membrane-slack': least,
  'membrane-on-reveal': bounded,
  'tape-class': z.strictObject({ classes: z.array(z.string().max(60)).max(20) }),
  'tape-lower-half': z.strictObject({ share: number }),
  'tape-flanks': z.literal('firm'),
  'fixing-corner': z.strictObject({
    from: z.enum(['inner-corner', 'outer-corner']),
    least_mm: number,
    most_mm: number,
  }),
  'fixing-spacing': z.strictObject({ most_mm: number.positive(), least: number }),
  'fixing-at-member': z.strictObject({
    from: z.enum(['edge', 'axis']),
    least_mm: number,
    most_mm: number.exactOptional(),
  }),
  embedment: least,
  'edge-distance': least,
  'screw-in-timber': z.strictObject({ diameters: number, least_mm: number }),
  'steel-core': least,
  drilling: z.strictObject({ allowed: z.array(z.enum(['rotary', 'hammer'])) }),
  'support-blocks': z.strictObject({ corner_mm: number }),
  'distance-blocks': z.strictObject({ corner_mm: number, isOptional: z.boolean() }),
  guarding: z.strictObject({ sill_mm: number }),
  burglary: z.strictObject({ spacing_mm: number, corner_mm: number, embedment_mm: number }),
  'frame-forward': z.literal('brackets'),
  cover: least,
  'visible-face': least,
  'frame-position': z.strictObject({ least: number.exactOptional(), most: number }),
  'sill-fall': z.strictObject({ least_deg: number }),
  'sill-overhang': least,
  'sill-throat': least,
  'sill-end-dam': least,
  'sill-upstand': least,
  'sill-end-gap': z.strictObject({ least_mm: number, movement_mm_m: number }),
  'sill-length': z.strictObject({ most_mm: number }),
  'planes-meet': accepted,
  'air-line': accepted,
  'plaster-edge': accepted,
  'sealant-class': accepted,
  'work-dry': accepted,
  substrate: accepted,
  compatible: accepted,
  'flank-face': accepted,
  'tape-corners': accepted,
  'peel-test': accepted,
  'sheet-duty': accepted,
  'fixing-metal': accepted,
  'drain-slots': accepted,
  'rain-laps': accepted,
  'threshold-fall': accepted,
  'work-order': accepted,
  screening: accepted,
  ventilation: accepted,
  'guard-infill': accepted,
  'work-temperature': bounded,
  'element-length': bounded,
  'fillet-leg': bounded,
  'flank-angle': bounded,
  'tape-overlength': bounded,
  'membrane-lap': bounded,
  'frame-true': bounded,
  'stop-bead-length': bounded,
  'open-weather': bounded,
  'surveyed-joint': bounded,
  'timber-moisture': bounded,
  'guard-height': bounded,
  'threshold-upstand': bounded,
  'threshold-step': bounded,
  'joint-sound': z.literal('asked'),
  'tape-level': z.literal('drained-or-tight'),
  'box-sealed': z.literal('sealed'),
  'rain-class': z.literal('asked'),
  'fire-joint': z.literal('proof'),
  'head-joint': z.literal('takes-sag'),
  'bracket-slot': z.literal('takes-sag'),
  'checked-rebate': z.strictObject({ behind_mm: number }),
  'opening-size': z.strictObject({ within_mm: number }),
  'fixing-load': z.strictObject({ wind: number, guard: number, isInFull: z.boolean() }),
  'fixing-bending': z.strictObject({ restraint: number.exactOptional(), most_mm: number.exactOptional() }),
  'block-pressure': z.strictObject({ most_N_mm2: number }),
  'free-span': z.strictObject({ part: number.positive() }),
  'second-plane': z.literal('asked'),
  'surface-criterion': z.strictObject({
    fRsi: number.min(0).max(1).exactOptional(),
    humidity_pct: number.min(1).max(100).exactOptional(),
  }),
  condensate: z.strictObject({ most_kg_m2: number.min(0), dries: z.enum(['yes', 'no']) }),
}

const cite = z.strictObject({
  source: z.enum(sourceIds),
  clause: z.string().max(500).exactOptional(),
  trust: z.enum(trusts),
})
const ifBroken = z.enum(['not-met', 'advice', 'refer'])
const condition = z.union([
  z.strictObject({ above: number.exactOptional(), upTo: number.exactOptional() }),
  z.array(z.string().max(60)).max(20),
])

const ofLimit = <K extends LimitKey>(limit: K) => {
  const tier = { then: thens[limit], cite, ifBroken }
  return z.strictObject({
    limit: z.literal(limit),
    row: z.strictObject({
      when: z.record(z.string(), condition),
      ...tier,
      last: z.strictObject(tier).exactOptional(),
    }),
    note: z.string().max(500),
  })
}

/** Every limit that exists. The keys of the table are the limits; `Object.keys` forgets it. */
export const limitKeys = Object.keys(thens) as LimitKey[]

/** The schema of a row that an office states, with its note. */
export const ownRow: z.ZodType<OwnRow> = z.unknown().transform((raw, context): OwnRow => {
  const named = z.looseObject({ limit: z.enum(limitKeys) }).safeParse(raw)
  const found = named.success ? ofLimit(named.data.limit).safeParse(raw) : named
  // A row that its limit's schema has accepted is a row of that limit.
  if (found.success) return found.data as OwnRow
  found.error.issues.forEach(issue =>
    context.issues.push({ ...issue, input: raw, code: 'custom', message: issue.message }),
  )
  return z.NEVER
})
