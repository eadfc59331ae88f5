import { type Project, sideNameAt, zoneOf } from '../../../core/detail'
import type { Finding } from '../../../core/rules'
import { filled, same, type Words } from '../../../core/words'
import { type PartRow, rowOf } from '../parts/rows'
import type { Desk } from '../state/desk'
import { say as words } from '../window-words'

/** Goes to where a finding is: its cut is looked at, and what it is about is selected, so that it stands out everywhere. */
export const showWhere = ({ board, readings }: Pick<Desk, 'board' | 'readings'>, it: Finding): void => {
  const { side, zone } = it.where
  if (
    side !== undefined &&
    (side !== readings.place.side || (zone !== undefined && zone !== readings.place.zone.id))
  )
    board.act({ kind: 'look', view: { side, ...(zone === undefined ? {} : { zone }) } })
  const parts = readings.rows.map(row => row.part)
  const frame = parts.find(part => part.kind === 'frame')?.id ?? ''
  board.act({ kind: 'select', parts: [rowOf(it, { joint: readings.place.zone.joint, frame, parts })] })
}

/** Where a finding is, in words: side, zone where there are several, part. */
export const writeWhere = (project: Project, rows: readonly PartRow[], { where }: Finding): Words => {
  const zones = where.side === undefined ? [] : (project.openings[where.opening]?.sides[where.side] ?? [])
  const zone = where.zone === undefined ? undefined : zoneOf(project, where.zone)
  const at = zone ? zones.findIndex(it => it.id === zone.zone.id) : -1
  const part = rows.find(row => row.part.id === where.part)?.part
  const pieces: readonly Words[] = [
    where.side === undefined ? words.wholeOpening : sideNameAt(project, where.opening, where.side),
    ...(zones.length > 1 && at >= 0
      ? [
          filled(
            words.zone,
            `${at + 1}`,
            `${Math.round(zones[at - 1]?.to_mm ?? 0)}`,
            `${Math.round(zones[at]?.to_mm ?? 0)}`,
          ),
        ]
      : []),
    ...(part ? [part.kind === 'seal' ? part.value : part.name] : []),
  ]
  return pieces.reduce((so, it) => filled(same('{0}, {1}'), so, it))
}
