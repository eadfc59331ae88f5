import { z } from 'zod'
import { areaOf, directionOf, type Outline, type Point, startOf } from '../geometry'
import { planes } from '../kinds'
import { assumed, type Stated, stated } from '../units'
import { filled, words } from '../words'
import { body, ofMaterial, turned } from './bay'
import { bondBreaker, breakerTape, sealantMu } from './bead'
import { sealKind } from './kind'
import { rangeOf, steady } from './resistance'
import type { Bay, SealValue } from './seal-kind'

const legFrame: SealValue = {
  id: 'fillet.leg-frame',
  key: 'legFrame_mm',
  name: words('Leg on the frame', 'Schenkel am Rahmen'),
  unit: 'mm',
  bounds: { unit: 'mm', min: 2, max: 40 },
  because: words('from the corner along the face of the frame', 'von der Ecke entlang der Rahmenfläche'),
}
const legWall: SealValue = {
  ...legFrame,
  id: 'fillet.leg-wall',
  key: 'legWall_mm',
  name: words('Leg on the reveal', 'Schenkel an der Leibung'),
  because: words('from the corner along the reveal', 'von der Ecke entlang der Leibung'),
}
const mu: SealValue = {
  id: 'fillet.mu',
  key: 'mu',
  name: words('Vapour resistance µ', 'Dampfwiderstand µ'),
  unit: 'one',
  bounds: { unit: 'one', min: 1, max: 1e6 },
  because: words('as declared by the product', 'nach Angabe des Produkts'),
  fallback: () => sealantMu,
}

type Fillet = {
  readonly kind: 'fillet-bead'
  readonly id: string
  readonly plane: (typeof planes)[number]
  readonly legFrame_mm: Stated<number>
  readonly legWall_mm: Stated<number>
  readonly breaker?: Stated<'yes' | 'no'>
  readonly mu?: Stated<number>
}

/** A triangular bead in the corner between the face of the frame and the reveal: only where little moves. */
export const filletBead = sealKind<Fillet>({
  kind: 'fillet-bead',
  name: words('Fillet bead', 'Dreiecksfuge'),
  shows: 'silicone',
  schema: z.strictObject({
    kind: z.literal('fillet-bead'),
    id: z.string(),
    plane: z.enum(planes),
    legFrame_mm: stated(z.number().positive().max(40)),
    legWall_mm: stated(z.number().positive().max(40)),
    breaker: stated(z.enum(['yes', 'no'])).exactOptional(),
    mu: stated(z.number().min(1).max(1e6)).exactOptional(),
  }),
  planes: ['outer', 'inner'],
  serves: it => [it.plane],
  only: words('where little moves', 'wo sich wenig bewegt'),
  values: [legFrame, legWall, mu],
  choices: [bondBreaker],
  // legs of 10 mm at least, with a bond breaker in the corner: sealant practice, from memory
  fresh: (id, plane) => ({
    kind: 'fillet-bead',
    id,
    plane,
    legFrame_mm: assumed(10),
    legWall_mm: assumed(10),
    breaker: assumed('yes'),
  }),
  takesDepth: () => 0,
  lay: (it, bay) => {
    const triangle = triangleOf(it, bay)
    return {
      regions: triangle ? [body(it.id, 'bead', turned(triangle), ofMaterial('silicone'))] : [],
      lines: [],
    }
  },
  grips: (it, bay) => {
    const [corner, onWall, onFrame] = triangleOf(it, bay) ?? []
    if (!corner || !onWall || !onFrame) return []
    return [
      { field: legWall.id, at: onWall, along: directionOf(corner, onWall) },
      { field: legFrame.id, at: onFrame, along: [1, 0] },
    ]
  },
  // its throat: from the corner at right angles to its open face
  sd_m: it => {
    const [a, b] = [it.legFrame_mm.value / 1000, it.legWall_mm.value / 1000]
    const throat_m = (a * b) / Math.hypot(a, b)
    const at = rangeOf(it, mu)
    return steady(at && { min: at.min * throat_m, max: at.max * throat_m })
  },
  takes: () => ({ by: 'nothing' }),
  bonds: (it, _bay, behind) => [
    { to: 'wall', width_mm: it.legWall_mm.value },
    { to: 'frame', width_mm: it.legFrame_mm.value },
    // what stands in the joint behind the corner
    ...(behind && it.breaker?.value !== 'yes' ? [{ to: 'seal' as const, width_mm: 1 }] : []),
  ],
  needs: (it, _bay, length_mm) => [
    {
      what: words('sealant', 'Dichtstoff'),
      amount: (0.5 * it.legFrame_mm.value * it.legWall_mm.value * length_mm) / 1000,
      unit: 'ml',
    },
    ...(it.breaker?.value === 'yes' ? [{ what: breakerTape, amount: length_mm, unit: 'mm' as const }] : []),
  ],
  called: it =>
    filled(words('fillet {0} × {1}', 'Dreiecksfuge {0} × {1}'), `${it.legFrame_mm.value}`, `${it.legWall_mm.value}`), // prettier-ignore
})

/**
 * Corner, end on the reveal, end on the frame. The corner is where the reveal meets the frame; where it ends beside the
 * joint, the bead spans the joint too. Nothing where there is no reveal, or no free face of the frame, to lie on.
 */
const triangleOf = (it: Fillet, bay: Bay): Outline | undefined => {
  const { face, free_mm } = it.plane === 'outer' ? bay.ends.outer : bay.ends.inner
  const [corner] = face
  const onWall = startOf(face, it.legWall_mm.value)[1]
  if (!corner || !onWall) return undefined
  const from = Math.max(corner[0], bay.frameFace[0][0])
  const onFrame: Point = [Math.min(from + it.legFrame_mm.value, free_mm), corner[1]]
  const triangle: Outline = [corner, onWall, onFrame]
  return onFrame[0] > from && Math.abs(areaOf(triangle)) > 0.01 ? triangle : undefined
}
