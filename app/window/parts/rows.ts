import {
  addedPartName,
  blockName,
  boardName,
  fieldsOf,
  jointOf,
  known,
  membersAt,
  openingOf,
  type Part,
  type Project,
  sealOf,
  wallOf,
  type ZonePlace,
} from '../../../core/detail'
import { type Plane, planes } from '../../../core/kinds'
import type { JointBand } from '../../../core/movement'
import type { Finding, Report, Verdict } from '../../../core/rules'
import { type AnySeal, kindOf } from '../../../core/seals'
import { inWords, writeBand, writeNumber } from '../../../core/units'
import { same } from '../../../core/words'
import { worst } from '../all-round/stretches'
import { say as words } from '../window-words'

/** A row of the parts list: the part with its number, the worst verdict about it, and whether a guess stands in it. */
export type PartRow = {
  readonly part: Part
  /** absent: the joint itself, a seal that is taken out, and what stands in no section */
  readonly number?: number
  readonly verdict: Verdict | undefined
  readonly isAssumed: boolean
  readonly plane: Plane | undefined
  /** kept, but not built in: what then fails is shown */
  readonly isOut: boolean
}

/** What the rows of a cut are made of. */
export type Listed = {
  readonly project: Project
  readonly place: ZonePlace
  readonly parts: readonly Part[]
  readonly band: JointBand
  readonly report: Report
}

/**
 * All parts of a cut, outside to inside, with the joint itself before its seals, and seals that are taken out where they
 * stood. Every verdict about the cut reaches a row: one of the zone the joint, one of a side or of the opening the frame.
 */
export const partRows = (listed: Listed): readonly PartRow[] => {
  const { project, place, parts, report } = listed
  const joint = jointOf(project, place.zone)
  const about = findingsByRow(report, place, joint.id, [...parts, ...sideParts(project, place)])
  const numbered = parts.map((part, at): PartRow => ({
    part,
    number: at + 1,
    verdict: worst(about.get(part.id) ?? []),
    isAssumed: isAssumed(project, part),
    plane: sealOf(project, part.id)?.seal.plane,
    isOut: false,
  }))
  const rows = [...numbered, ...sideParts(project, place).map(part => plainRow(project, part, about))]
  const first = rows.findIndex(it => it.plane !== undefined)
  const at = first < 0 ? rows.findIndex(it => it.part.kind === 'frame') : first
  const withOut = (joint.out ?? []).reduce(
    (so, seal) => so.toSpliced(placeOfOut(so, seal, at), 0, outRow(seal)),
    rows,
  )
  return withOut.toSpliced(at, 0, {
    part: {
      id: joint.id,
      kind: 'joint',
      name: words.joint,
      value: inWords(language => writeBand(listed.band.still_mm, 'one', language)),
    },
    verdict: worst(about.get(joint.id) ?? []),
    isAssumed: [joint.planned_mm, joint.tolerance_mm].some(it => it.basis === 'assumed'),
    plane: undefined,
    isOut: false,
  })
}

/** The board on the flank, blocks and members of the side that is cut: they have no number, but are chosen, typed and judged like any part. */
const sideParts = (project: Project, { opening: id, side }: ZonePlace): readonly Part[] => {
  const opening = openingOf(project, id)
  const at = (mm: number) => inWords(language => writeNumber(mm, language))
  const wall = wallOf(project, id)
  const { board } = wall.reveal
  return [
    ...(board && side !== 'sill'
      ? [
          {
            id: wall.id,
            kind: 'wall',
            name: boardName,
            value: at(board.thickness_mm.value),
            material: board.material,
          } as const,
        ]
      : []),
    ...opening.blocks
      .filter(it => it.side === side)
      .map((it): Part => ({
        id: it.id,
        kind: 'block',
        name: blockName[it.kind],
        value: at(it.at_mm.value),
      })),
    ...membersAt(opening, side).map((it): Part => ({
      id: it.id,
      kind: 'mullion',
      name: addedPartName[side === 'head' || side === 'sill' ? 'mullion' : 'transom'],
      value: at(it.at_mm.value),
    })),
  ].map(it => {
    const ownName = project.names?.[it.id]
    return ownName === undefined ? it : { ...it, ownName, name: same(ownName) }
  })
}

const plainRow = (project: Project, part: Part, about: ReadonlyMap<string, readonly Verdict[]>): PartRow => ({
  part,
  verdict: worst(about.get(part.id) ?? []),
  isAssumed: isAssumed(project, part),
  plane: undefined,
  isOut: false,
})

/** What is shown of a frame is its profile; that its movement is assumed shows in its fields. */
const isAssumed = (project: Project, part: Part): boolean =>
  part.kind !== 'frame' &&
  fieldsOf(project, part.id).some(
    field => known(project, { field: field.id, part: part.id })?.basis === 'assumed',
  )

const outRow = (seal: AnySeal): PartRow => {
  const kind = kindOf(seal)
  return {
    part: {
      id: seal.id,
      kind: 'seal',
      name: kind.name,
      value: kind.called(seal),
      ...(kind.shows === undefined ? {} : { material: kind.shows }),
    },
    verdict: undefined,
    isAssumed: false,
    plane: seal.plane,
    isOut: true,
  }
}

/** Before the first seal of a plane that lies further in; behind all seals where there is none. */
const placeOfOut = (rows: readonly PartRow[], seal: AnySeal, from: number): number => {
  const further = rows.findIndex(
    it => it.plane !== undefined && planes.indexOf(it.plane) < planes.indexOf(seal.plane),
  )
  if (further >= 0) return further
  const last = rows.findLastIndex(it => it.plane !== undefined)
  return last < 0 ? from : last + 1
}

/** The verdicts of a cut by the row that shows them. */
const findingsByRow = (
  report: Report,
  place: ZonePlace,
  joint: string,
  parts: readonly Part[],
): ReadonlyMap<string, readonly Verdict[]> => {
  const frame = parts.find(it => it.kind === 'frame')?.id ?? ''
  const rows = new Map<string, Verdict[]>()
  for (const it of report.findings) {
    if (!isAbout(it, place)) continue
    const row = rowOf(it, { joint, frame, parts })
    rows.set(row, [...(rows.get(row) ?? []), it.verdict])
  }
  return rows
}

/** Whether a finding is about the cut at a place: that zone, its whole side, or the whole opening. */
export const isAbout = ({ where }: Pick<Finding, 'where'>, { opening, side, zone }: ZonePlace): boolean =>
  where.opening === opening &&
  (where.side === undefined || where.side === side) &&
  (where.zone === undefined || where.zone === zone.id)

/** The row that a finding belongs to: its part, else the joint of its zone, else the frame. */
export const rowOf = (
  { where }: Pick<Finding, 'where'>,
  {
    joint,
    frame,
    parts,
  }: { readonly joint: string; readonly frame: string; readonly parts: readonly Part[] },
): string =>
  where.part !== undefined && parts.some(it => it.id === where.part)
    ? where.part
    : where.zone !== undefined
      ? joint
      : frame
