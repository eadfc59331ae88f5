import {
  choiceOf,
  choicesOf,
  type FieldAt,
  fieldOf,
  fieldsOf,
  frameOf,
  layerOf,
  openingOf,
  type Project,
  site,
  type ZonePlace,
} from '../../../core/detail'
import type { Id } from '../../../core/geometry'
import type { Finding } from '../../../core/rules'
import type { Words } from '../../../core/words'
import type { Grip } from '../../editor'
import { say as words } from '../window-words'

/** Values that belong together, under one heading that can be folded away. The first group has none: it always stands open. */
export type FieldGroup = { readonly id: GroupId; readonly rows: readonly FieldRow[] }
export type FieldRow = { readonly kind: 'number' | 'choice'; readonly at: FieldAt }

/** The groups in the order in which they are used: what is decided here first, what the product says last. */
const groupIds = [
  'main',
  'sizes',
  'survey',
  'asked',
  'work',
  'element',
  'threshold',
  'frame',
  'declared',
  'duties',
  'reveal',
  'air',
  'more',
] as const
export type GroupId = (typeof groupIds)[number]

export const groupName: Readonly<Record<Exclude<GroupId, 'main'>, Words>> = {
  sizes: words.groupSizes,
  survey: words.groupSurvey,
  asked: words.groupAsked,
  work: words.groupWork,
  element: words.groupElement,
  threshold: words.groupThreshold,
  frame: words.groupFrame,
  declared: words.groupDeclared,
  duties: words.groupDuties,
  reveal: words.groupReveal,
  air: words.groupAir,
  more: words.groupMore,
}

/** What stands in the fields of a part: its groups, and whether the joint belongs with them. */
export type PartFields = {
  readonly groups: readonly FieldGroup[]
  readonly hasJoint: boolean
}

/** Joint width and tolerance are typed as one range, so they are no single fields. */
const ofJoint = ['joint.planned', 'joint.tolerance']

/** More than these stand under a heading of their own: what fits at the least height of the window. *Ours*. */
const mostMain = 7

/** The values of a part, its own and those of what it stands for: a frame stands for its opening, the joint for its zone. */
export const fieldsOfPart = (
  project: Project,
  place: ZonePlace,
  grips: readonly Grip[],
  part: Id,
): PartFields => {
  const [owner = part] = part.split('/')
  const opening = openingOf(project, place.opening)
  const isFrame = owner === frameOf(project, place.opening).id
  const isJoint = owner === place.zone.joint
  const threshold = place.side === 'sill' ? opening.threshold?.id : undefined
  const isThreshold = owner === threshold
  const wall = wallOfLayer(project, owner)
  const isSeal = project.joints[place.zone.joint]?.seals.some(it => it.id === owner) === true
  const owners = [
    owner,
    ...(isFrame ? [opening.id, site] : []),
    ...(isFrame && threshold !== undefined ? [threshold] : []),
    ...(isThreshold ? [opening.id] : []),
    ...(isFrame || isSeal ? [place.zone.joint] : []),
    ...(wall === undefined ? [] : [wall]),
  ]
  const numbers = [
    ...grips.filter(it => it.part === owner).map(it => it.at),
    ...owners.flatMap(one => fieldsOf(project, one).map(it => ({ field: it.id, part: one }))),
  ].filter(it => !ofJoint.includes(it.field) && (!isThreshold || isOfThreshold(it, owner)))
  const choices = owners
    .flatMap(one => choicesOf(project, one).map(it => ({ field: it.id, part: one })))
    .filter(it => !isThreshold || isOfThreshold(it, owner))
  const rows: readonly FieldRow[] = [
    ...numbers.map(at => ({ kind: 'number' as const, at })),
    ...choices.map(at => ({ kind: 'choice' as const, at })),
  ].filter((it, at, all) => at === all.findIndex(other => isSame(other.at, it.at)))
  const isLevel = (it: FieldRow): boolean => it.at.field.startsWith('opening.threshold-')
  const inOrder = isThreshold ? [...rows.filter(isLevel), ...rows.filter(it => !isLevel(it))] : rows
  return { groups: grouped(inOrder, { owner, isThreshold }), hasJoint: isFrame || isJoint || isSeal }
}

/** A threshold brings of its opening what is told of its levels and its water. */
const isOfThreshold = ({ field, part }: FieldAt, threshold: Id): boolean =>
  part === threshold || field.startsWith('opening.threshold-')

/** The wall of a layer: its reveal is typed at any of its layers. */
const wallOfLayer = (project: Project, part: Id): Id | undefined => layerOf(project, part)?.wall.id

export const isSame = (a: FieldAt, b: FieldAt): boolean => a.field === b.field && a.part === b.part

/** The part whose fields they are; of a threshold its levels are what is decided first. */
type Owner = { readonly owner: Id; readonly isThreshold: boolean }

const grouped = (rows: readonly FieldRow[], of: Owner): readonly FieldGroup[] => {
  const groups = groupIds.map(id => ({ id, rows: rows.filter(it => groupOf(it.at, of) === id) }))
  const main = groups[0]?.rows ?? []
  return groups
    .map(it =>
      it.id === 'main'
        ? { ...it, rows: main.slice(0, mostMain) }
        : it.id === 'more'
          ? { ...it, rows: [...main.slice(mostMain), ...it.rows] }
          : it,
    )
    .filter(it => it.rows.length > 0)
}

/** What is seen of the work on site, and what the element and the structure round it are told to be. */
const ofWork =
  /^opening\.(corners|air-line|plaster-edge|inner-proof|foam-in-light|substrate|peel-test|compatible|flank-|tape-|work-|open-months|plumb|bow|frame-moisture|wall-moisture|membrane-lap)/
const ofElement =
  /^opening\.(lintel-sag|slot|free-|deflection|infill|rain-class|joint-sound|drains|laps|water|bead-covers)/

const groupOf = ({ field, part }: FieldAt, { owner, isThreshold }: Owner): GroupId => {
  if (field.startsWith('survey.')) return 'survey'
  if (/^opening\.(width|height)$/.test(field)) return 'sizes'
  if (/^opening\.(aside|raised)$/.test(field)) return 'more'
  if (field.endsWith('.stays')) return 'more'
  if (field === 'opening.position') return 'main'
  if (/^(site\.|opening\.(room|humidity|inside)-)/.test(field)) return 'air'
  if (field.startsWith('opening.threshold-')) return isThreshold ? 'main' : 'threshold'
  if (field.startsWith('threshold.') && part !== owner) return 'threshold'
  if (field.startsWith('opening.'))
    return ofWork.test(field) ? 'work' : ofElement.test(field) ? 'element' : 'asked'
  if (field.startsWith('frame.')) return 'frame'
  if (/^layer\.(lambda|mu)/.test(field)) return 'declared'
  if (field.startsWith('layer.duty')) return 'duties'
  if (/^(reveal|wall)\./.test(field)) return 'reveal'
  // The joint of a frame or of a seal comes along; its own words are not what is asked for first.
  return field.startsWith('joint.') && part !== owner ? 'more' : 'main'
}

/** Whether a value is one of the twelve months, which stand in a table. */
export const isOfMonth = ({ field }: FieldAt): boolean => /^site\.(temperature|humidity)-/.test(field)

/** The rows of a group by use: first what a finding waits for, then what is stated, then what may be. */
export const byUse = (
  project: Project,
  rows: readonly FieldRow[],
  missing: readonly FieldAt[],
): readonly FieldRow[] => {
  const rank = (it: FieldRow): number =>
    missing.some(one => isSame(one, it.at)) ? 0 : isStated(project, it) ? 1 : 2
  return rows.toSorted((a, b) => rank(a) - rank(b))
}

/** Whether somebody has stated the value. */
export const isStated = (project: Project, { kind, at }: FieldRow): boolean =>
  (kind === 'number' ? fieldOf(at.field) : choiceOf(at.field))?.read(project, at.part) !== undefined

/** The values of a part that findings ask for and nobody has stated: their groups stand open. */
export const missingOf = (findings: readonly Finding[]): readonly FieldAt[] =>
  findings.flatMap(it => (it.verdict === 'unknown' ? it.missing : []))

/** Whether a value may be left out: then an empty line takes the statement back. */
export const canBeEmpty = (project: Project, at: FieldAt): boolean => {
  const field = fieldOf(at.field)
  if (field === undefined || field.read(project, at.part) === undefined) return false
  return field.read(field.write(project, at.part, undefined), at.part) === undefined
}
