import { type Plane, planes, type Side } from '../../../core/kinds'
import { outward } from './ring'

/** Where a keyboard stands in the ring. */
export type Standing = { readonly side: Side; readonly plane: Plane }

const round: readonly Side[] = ['head', 'right', 'sill', 'left']
const turns: Readonly<Record<string, 1 | -1>> = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }

/** Where an arrow leads: across a side from plane to plane, along it round the opening. Nothing for other keys, or at an end. */
export const walk = (key: string, { side, plane }: Standing): Standing | undefined => {
  const turn = turns[key]
  if (turn === undefined) return undefined
  const isLevel = side === 'head' || side === 'sill'
  if (isLevel ? /Up|Down/.test(key) : /Left|Right/.test(key)) {
    const [ux, uy] = outward[side]
    const next = planes[planes.indexOf(plane) + (turn * (ux + uy) > 0 ? 1 : -1)]
    return next && { side, plane: next }
  }
  const way = side === 'sill' || side === 'left' ? -turn : turn
  const next = round[(round.indexOf(side) + way + round.length) % round.length]
  return next && { side: next, plane }
}
