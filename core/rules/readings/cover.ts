import { profileOf, wallDepths } from '../../detail'
import type { Band } from '../../units'
import { words } from '../../words'
import type { Place } from '../place'
import { placed, type Reading } from '../reading'
import { isFirm } from '../../materials'
import { materialAtFlank } from './wall'

/** What stands before the frame: insulation, a closer of a cavity, the nib of a rebate, or only a finish. */
export type CoverBy = 'insulation' | 'closer' | 'rebate' | 'finish'

/** How much of the face of the frame is covered, at the widest and at the narrowest still joint, and how much is left. */
export type Cover = {
  readonly by: CoverBy
  readonly face_mm: number
  /** stated cover, or the lap of the nib */
  readonly laps_mm: number
  readonly cover_mm: Band
  readonly visible_mm: Band
}

/** Cover of the frame: stated for insulation; in a rebate the lap less the joint, so that it changes with the joint. */
export const cover: Reading<Cover> = placed({
  id: 'reveal.cover',
  name: words('Cover of the frame', 'Überdeckung des Rahmens'),
  compute: at => {
    const by = coverBy(at)
    const face_mm = profileOf(at.frame).face_mm
    const { cover_mm: stated, nibLap_mm: lap } = at.wall.reveal
    if (by === 'rebate' && !lap) return undefined
    const laps_mm = by === 'rebate' && lap ? lap.value : stated.value
    const { min, max } = at.band.still_mm
    const cover_mm =
      by === 'rebate' ? { min: laps_mm - max, max: laps_mm - min } : { min: laps_mm, max: laps_mm }
    const visible_mm = { min: face_mm - cover_mm.max, max: face_mm - cover_mm.min }
    return { by, face_mm, laps_mm, cover_mm, visible_mm }
  },
  beneath: ({ wall: { id, reveal } }) => [
    reveal.form === 'inner-rebate'
      ? { field: 'reveal.nib-lap', part: id, stated: reveal.nibLap_mm }
      : { field: 'reveal.cover', part: id, stated: reveal.cover_mm },
  ],
})

/** What covers the frame at a place. */
export const coverBy = (at: Place): CoverBy => {
  const { wall } = at
  if (wall.reveal.form === 'inner-rebate') return 'rebate'
  const { before, bearing, behind } = wallDepths(wall)
  // an edge of insulation closes a cavity; a firm one is a stud or an installation frame
  const isCloser = [...before, ...behind].some(
    it => it !== bearing && it.layer.edge !== undefined && !isFirm(materialAtFlank(at, it.layer)),
  )
  if (isCloser) return 'closer'
  return before.some(it => it.layer.duties.includes('insulating')) ? 'insulation' : 'finish'
}
