import type { Id, Outline, Region } from '../geometry'
import type { Plane } from '../kinds'
import { body, ofMaterial, turned } from './bay'
import type { Bay } from './seal-kind'

/** The soft tape of a stop bead, as it is stuck to the frame: 3 mm, ours; the plastic profile behind it takes the rest. */
const tape_mm = 3

/**
 * A stop bead in the strip between a finish and the frame: a soft tape on the frame, the profile that the finish ends at.
 * It stands before the joint, so the strip alone says where it lies, whatever takes up the depth of the joint behind it.
 */
export const layStopBead = (it: { readonly id: Id; readonly plane: Plane }, bay: Bay): readonly Region[] => {
  const outer = it.plane === 'outer'
  const { stop } = outer ? bay.ends.outer : bay.ends.inner
  if (stop === undefined) return []
  const ys = stop.map(([, y]) => y)
  const [frame_mm, away] = outer ? [Math.max(...ys), -1] : [Math.min(...ys), 1]
  const reach_mm = Math.max(...ys) - Math.min(...ys)
  const at = (share_mm: number): number => frame_mm + away * Math.min(share_mm, reach_mm)
  const xs = stop.map(([x]) => x)
  const strip = (from: number, to: number): Outline => turned([
    [Math.min(...xs), from],
    [Math.max(...xs), from],
    [Math.max(...xs), to],
    [Math.min(...xs), to],
  ]) // prettier-ignore
  const tape = body(it.id, 'tape', strip(at(0), at(tape_mm)), ofMaterial('pe-foam'))
  if (reach_mm <= tape_mm) return [tape]
  return [tape, body(it.id, 'profile', strip(at(tape_mm), at(reach_mm)), ofMaterial('pvc-u'))]
}
