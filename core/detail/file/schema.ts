import { z } from 'zod'
import { climateIds, humidityClasses, months, roomUses } from '../../air'
import { anchorBases, duties, frameMaterials, planes, revealForms, reversals, sides } from '../../kinds'
import type { Material } from '../../materials'
import { ownRow } from '../../practice'
import { type AnySeal, sealKinds } from '../../seals'
import { sourceIds, trusts } from '../../sources'
import { stated } from '../../units'
import { exposures } from '../asked'
import { couplings } from '../box'
import { fixingKinds } from '../fixing'
import { issueStates } from '../issue'
import type { Project } from '../model'
import { mostListed } from '../opening-parts'
import type { Piece } from '../piece'
import { secondPlanes } from '../sill'
import { diagonals, heightPlaces, widthPlaces } from '../survey'
import { type Told, toldAmounts, toldWords } from '../told'

/** No file of ours holds longer names or more entries than these: ours, far above what is used. */
const longest = { id: 60, name: 200, note: 2000, entries: 5000, layers: 40, seals: 20, zones: 40 } as const

const id = z.string().min(1).max(longest.id)
const name = z.string().max(longest.name)
const finite = z.number().finite()
const length_mm = stated(finite.positive())

/** A shape with every key of a list, each of which may be left out. */
const optionals = <K extends string, S extends z.ZodType>(keys: readonly K[], of: S) =>
  // fromEntries widens its keys to string; they are those of the list.
  Object.fromEntries(keys.map(key => [key, of.exactOptional()])) as Record<K, z.ZodExactOptional<S>>

const material: z.ZodType<Material> = z.strictObject({
  id,
  name: z.strictObject({ en: name, de: name }),
  hatch: z.string().max(longest.id),
  lambda_W_mK: finite.positive(),
  mu: z.strictObject({ dry: finite.min(1), wet: finite.min(1) }).exactOptional(),
  base: z.enum(anchorBases).exactOptional(),
  firm: z.literal(true).exactOptional(),
  emissivity: finite.min(0).max(1),
  cite: z.strictObject({ source: z.enum(sourceIds), clause: name.exactOptional(), trust: z.enum(trusts) }),
})

const layer = z.strictObject({
  id,
  material: id,
  thickness_mm: length_mm,
  duties: z.array(z.enum(duties)).max(duties.length),
  edge: z.strictObject({ material: id, width_mm: length_mm }).exactOptional(),
  lambda_W_mK: stated(finite.positive()).exactOptional(),
  muDry: stated(finite.min(1)).exactOptional(),
  muWet: stated(finite.min(1)).exactOptional(),
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
  steel_mm: stated(finite.min(0)).exactOptional(),
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
  out: z.array(seal).max(longest.seals).exactOptional(),
})

const zone = z.strictObject({ id, joint: id, to_mm: finite.positive() })
const zones = z.tuple([zone], zone)

const yesNo = stated(z.enum(['yes', 'no']))
const count = stated(z.int().min(0).max(200))

const gap = z.strictObject({ narrowest: stated(finite), widest: stated(finite) })

const survey = z.strictObject({
  widths_mm: z.strictObject(optionals(widthPlaces, length_mm)).exactOptional(),
  heights_mm: z.strictObject(optionals(heightPlaces, length_mm)).exactOptional(),
  diagonals_mm: z.strictObject(optionals(diagonals, length_mm)).exactOptional(),
  offsets: z
    .array(z.strictObject({ side: z.enum(sides), at_mm: finite, offset_mm: finite }))
    .max(longest.entries)
    .exactOptional(),
  joints_mm: z.strictObject(optionals(sides, gap)).exactOptional(),
  rebates_mm: z.strictObject(optionals(sides, gap)).exactOptional(),
})

const fixing = z.strictObject({
  id,
  kind: z.enum(fixingKinds),
  diameter_mm: length_mm,
  embedment_mm: length_mm,
  axis_mm: length_mm,
  corner_mm: stated(finite.min(0)).exactOptional(),
  counts: z.strictObject(optionals(sides, count)).exactOptional(),
  positions_mm: z.strictObject(optionals(sides, z.array(finite).max(longest.zones))).exactOptional(),
  drilling: stated(z.enum(['rotary', 'hammer'])).exactOptional(),
  core_mm: length_mm.exactOptional(),
  steel_N_mm2: stated(finite.positive()).exactOptional(),
  resistance_N: stated(finite.positive()).exactOptional(),
  plate_mm: length_mm.exactOptional(),
  lever_mm: length_mm.exactOptional(),
})

const block = z.strictObject({
  id,
  kind: z.enum(['support', 'distance']),
  side: z.enum(sides),
  at_mm: stated(finite.min(0)),
  length_mm,
  width_mm: length_mm.exactOptional(),
})

const sill = z.strictObject({
  id,
  material: id,
  thickness_mm: length_mm,
  slope_deg: stated(finite.min(-30).max(60)),
  overhang_mm: stated(finite.min(0)),
  upstand_mm: stated(finite.min(0)),
  endDam_mm: stated(finite.min(0)).exactOptional(),
  endGap_mm: stated(finite.min(0)).exactOptional(),
  length_mm: length_mm.exactOptional(),
  throat_mm: stated(finite.min(0)).exactOptional(),
  secondPlane: stated(z.enum(secondPlanes)).exactOptional(),
  board: z
    .strictObject({ material: id, thickness_mm: length_mm, overhang_mm: stated(finite.min(0)) })
    .exactOptional(),
})

const laid = z.strictObject({ material: id, thickness_mm: length_mm })

const threshold = z.strictObject({
  id,
  material: id,
  height_mm: length_mm,
  base: laid,
  finish: laid,
  screed_mm: length_mm,
  insulation: laid,
  slab_mm: length_mm,
  paving: laid,
  bed_mm: length_mm,
  fall_pct: stated(finite.min(0).max(20)),
  channelWidth_mm: length_mm,
  channelDepth_mm: length_mm,
})

const box = z.strictObject({
  id,
  height_mm: length_mm,
  depth_mm: length_mm,
  forward_mm: stated(finite.min(0)),
  material: id,
  shell_mm: length_mm,
  lining: z.strictObject({ material: id, thickness_mm: length_mm }).exactOptional(),
  coupling: stated(z.enum(couplings)).exactOptional(),
  ends: yesNo.exactOptional(),
  passage: yesNo.exactOptional(),
})

const asked = z.strictObject({
  exposure: stated(z.enum(exposures)).exactOptional(),
  guarding: yesNo.exactOptional(),
  guardProof: yesNo.exactOptional(),
  burglary: yesNo.exactOptional(),
  mass_kg: stated(finite.positive()).exactOptional(),
  sillHeight_mm: stated(finite).exactOptional(),
  fall_mm: stated(finite.min(0)).exactOptional(),
  baseKnown: yesNo.exactOptional(),
})

const percent = stated(finite.min(1).max(100))
const celsius = stated(finite.min(-60).max(60))

const room = z.strictObject({
  use: stated(z.enum(roomUses)).exactOptional(),
  humidityClass: stated(z.enum(humidityClasses)).exactOptional(),
  inside_C: celsius.exactOptional(),
  inside_pct: percent.exactOptional(),
})

const site = z.strictObject({
  climate: stated(z.enum(climateIds)).exactOptional(),
  outside_C: celsius.exactOptional(),
  outside_pct: percent.exactOptional(),
  ground_C: celsius.exactOptional(),
  year: z
    .strictObject({
      outside_C: z.strictObject(optionals(months, celsius)).exactOptional(),
      outside_pct: z.strictObject(optionals(months, percent)).exactOptional(),
    })
    .exactOptional(),
})

/** A digest as this program writes it. */
const digest = z.string().regex(/^sha256:[0-9a-f]{64}$/)

const pinned = z.strictObject({
  id,
  photo: digest,
  side: z.enum(sides).exactOptional(),
  at_mm: finite.min(0).exactOptional(),
  date: z.iso.date().exactOptional(),
  note: z.string().max(longest.note),
})

/** What is told of an opening: each amount and each word of its own list, all of which may be left out. */
const told = z.strictObject(
  Object.fromEntries([
    ...toldAmounts.map(it => [it.key, stated(finite).exactOptional()] as const),
    ...toldWords.map(
      it => [it.key, stated(z.enum(it.choices.map(one => one.value))).exactOptional()] as const,
    ),
  ]),
  // Made of the lists that the type is made of: fromEntries forgets the keys.
) as unknown as z.ZodType<Told>

const member = z.strictObject({ id, at_mm: length_mm, face_mm: length_mm })

const opening = z.strictObject({
  id,
  name,
  wall: id,
  frame: id,
  width_mm: length_mm,
  height_mm: length_mm,
  position_mm: stated(finite),
  aside_mm: stated(finite).exactOptional(),
  raised_mm: stated(finite).exactOptional(),
  survey: survey.exactOptional(),
  mullions: z.array(member).max(mostListed.mullions),
  transoms: z.array(member).max(mostListed.transoms).exactOptional(),
  fixings: z.array(fixing).max(mostListed.fixings),
  blocks: z.array(block).max(mostListed.blocks),
  sill: sill.exactOptional(),
  threshold: threshold.exactOptional(),
  box: box.exactOptional(),
  asked: asked.exactOptional(),
  told: told.exactOptional(),
  room: room.exactOptional(),
  stays: z.array(id).max(longest.entries),
  photos: z.array(pinned).max(mostListed.photos).exactOptional(),
  sides: z.strictObject({ head: zones, left: zones, right: zones, sill: zones }),
})

const revision = z.strictObject({
  index: z.string().min(1).max(longest.id),
  date: z.iso.date(),
  note: name,
  digest: z.string().max(longest.name).exactOptional(),
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
    approver: name.exactOptional(),
    status: z.enum(issueStates).exactOptional(),
    revisions: z.array(revision).max(longest.entries).exactOptional(),
  }),
  practice: z.strictObject({ id, edition: name, own: z.array(ownRow).max(longest.layers) }),
  site: site.exactOptional(),
  next: z.int().min(1),
  names: z.record(id, name).exactOptional(),
  materials: z.record(id, material),
  walls: z.record(id, wall),
  frames: z.record(id, frame),
  joints: z.record(id, joint),
  openings: z.record(id, opening),
  photos: z.record(digest, z.string()).exactOptional(),
})

const materials = z.record(id, material)

/** A piece of a project, as a clipboard holds it. */
export const pieceSchema: z.ZodType<Piece> = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('layer'), layer, materials }),
  z.strictObject({ kind: z.literal('seal'), seal }),
  z.strictObject({ kind: z.literal('joint'), joint }),
  z.strictObject({ kind: z.literal('fixing'), fixing }),
  z.strictObject({ kind: z.literal('sill'), sill }),
  z.strictObject({ kind: z.literal('threshold'), threshold, materials }),
  z.strictObject({ kind: z.literal('frame'), frame }),
  z.strictObject({ kind: z.literal('wall'), wall, materials }),
])
