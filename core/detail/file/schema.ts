import { z } from 'zod'
import { duties, frameMaterials, planes, revealForms, reversals } from '../../kinds'
import type { Material } from '../../materials'
import { ownRow } from '../../practice'
import { type AnySeal, sealKinds } from '../../seals'
import { sourceIds, trusts } from '../../sources'
import { stated } from '../../units'
import type { Project } from '../model'

/** No file of ours holds longer names or more entries than these: ours, far above what is used. */
const longest = { id: 60, name: 200, note: 2000, entries: 5000, layers: 40, seals: 20, zones: 40 } as const

const id = z.string().min(1).max(longest.id)
const name = z.string().max(longest.name)
const finite = z.number().finite()
const length_mm = stated(finite.positive())

const material: z.ZodType<Material> = z.strictObject({
  id,
  name: z.strictObject({ en: name, de: name }),
  hatch: z.string().max(longest.id),
  lambda_W_mK: finite.positive(),
  mu: z.strictObject({ dry: finite.min(1), wet: finite.min(1) }).exactOptional(),
  emissivity: finite.min(0).max(1),
  cite: z.strictObject({ source: z.enum(sourceIds), clause: name.exactOptional(), trust: z.enum(trusts) }),
})

const layer = z.strictObject({
  id,
  material: id,
  thickness_mm: length_mm,
  duties: z.array(z.enum(duties)).max(duties.length),
  edge: z.strictObject({ material: id, width_mm: length_mm }).exactOptional(),
})

const wall = z.strictObject({
  id,
  name,
  layers: z.tuple([layer], layer),
  reveal: z.strictObject({
    form: z.enum(revealForms),
    cover_mm: stated(finite.min(0)),
    lining_mm: stated(finite.min(0)),
    splay_deg: stated(finite.min(0).max(60)).exactOptional(),
    nibDepth_mm: length_mm.exactOptional(),
    nibLap_mm: length_mm.exactOptional(),
    board: z.strictObject({ material: id, thickness_mm: length_mm }).exactOptional(),
  }),
})

const frame = z.strictObject({
  id,
  name,
  profile: id,
  material: z.enum(frameMaterials),
  movement_mm_m: stated(finite.min(0)).exactOptional(),
})

/** A seal by its own kind's schema; of an unknown kind it is refused by name. */
const seal: z.ZodType<AnySeal> = z
  .looseObject({ kind: z.string(), id, plane: z.enum(planes) })
  .transform((raw, context): AnySeal => {
    const kind = sealKinds.find(it => it.kind === raw.kind)
    if (kind === undefined) {
      context.addIssue({ code: 'custom', path: ['kind'], message: raw.kind })
      return z.NEVER
    }
    const found = kind.schema.safeParse(raw)
    if (found.success) return found.data
    found.error.issues.forEach(it =>
      context.addIssue({ code: 'custom', path: [...it.path], message: it.message }),
    )
    return z.NEVER
  })

const joint = z.strictObject({
  id,
  name,
  planned_mm: length_mm,
  tolerance_mm: stated(finite.min(0)),
  reversal: stated(z.enum(reversals)).exactOptional(),
  seals: z.array(seal).max(longest.seals),
})

const zone = z.strictObject({ id, joint: id, to_mm: finite.positive() })
const zones = z.tuple([zone], zone)

const opening = z.strictObject({
  id,
  name,
  wall: id,
  frame: id,
  width_mm: length_mm,
  height_mm: length_mm,
  position_mm: stated(finite),
  fixing: z
    .strictObject({
      id,
      kind: z.literal('frame-screw'),
      diameter_mm: length_mm,
      embedment_mm: length_mm,
      axis_mm: length_mm,
    })
    .exactOptional(),
  sides: z.strictObject({ head: zones, left: zones, right: zones, sill: zones }),
})

/** The project as a file holds it. Keys are written in this order; anything else in a file is refused. */
export const projectSchema: z.ZodType<Project> = z.strictObject({
  format: z.strictObject({
    name: z.literal('jambwright'),
    version: z.int().min(1),
    readableFrom: z.int().min(1),
  }),
  title: z.strictObject({
    name,
    office: name,
    author: name,
    place: name,
    number: name,
    note: z.string().max(longest.note),
  }),
  practice: z.strictObject({ id, edition: name, own: z.array(ownRow).max(longest.layers) }),
  next: z.int().min(1),
  materials: z.record(id, material),
  walls: z.record(id, wall),
  frames: z.record(id, frame),
  joints: z.record(id, joint),
  openings: z.record(id, opening),
})
