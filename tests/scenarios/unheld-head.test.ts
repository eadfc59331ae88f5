import { breaksOnly, holds, spoiled } from './hold'

// White PVC-U 76 × 70, 2400 × 1400, 140 mm deep in 365 mm perforated brick, in Germany; no fixing at the head.
// Jambs 14–16 ∓ 1.92; sill 14–16; sill sheet 2400 + 2 × 15 − 2 × 2 = 2426, each end 1.68 × 1.213 = 2.04.
holds('unheld-head', [
  ['fixing-spacing', 'head', 'not-met', 2400, 700],
  ['fixing-count', 'head', 'not-met', 0, 4],
  ['fixing-spacing', 'jambs', 'met', 490],
  ['fixing-spacing', 'sill', 'met', 660],
  ['fixing-count', 'jambs', 'met', 3],
  ['fixing-count', 'sill', 'met', 4],
  ['fixing-corner', 'whole', 'met', 140],
  ['embedment', 'whole', 'refer', 80],
  ['edge-distance', 'whole', 'refer', 178],
  ['drilling', 'whole', 'met'],
  ['planes-filled', 'jambs', 'met'],
  ['planes-filled', 'sill', 'met'],
  ['vapour-order', 'jambs', 'met', 50],
  ['least-joint', 'jambs', 'not-applicable'],
  ['tape-range', 'jambs', 'not-met', 17.92, 15],
  ['tape-range', 'sill', 'not-met', 16],
  // window and box, 1.64 m: 2.62 mm
  ['tape-range', 'head', 'met', 16.38, 2.62],
  ['support-blocks', 'whole', 'unknown'],
  ['tape-class', 'all sides', 'met'],
  ['sill-end-gap', 'whole', 'not-met', 2, 2.04],
  ['sill-length', 'whole', 'met', 2426],
  ['sill-fall', 'whole', 'met', 5],
  ['sill-overhang', 'whole', 'met', 35],
  ['second-plane', 'whole', 'met'],
  ['frame-position', 'whole', 'met', 178, 121.7, 243.3],
  // w 0.833 kPa, edge 0.683 kN/m: the head brings 0.819 kN to the top screws
  ['free-span', 'whole', 'not-met', 683, 35.1, 8, 17.6],
  ['fixing-load', 'jambs', 'unknown', 819, 455, 1695],
  ['fixing-bending', 'jambs', 'not-met', 1695, 402, 803],
  ['fixing-bending', 'sill', 'advice', 676, 438, 875],
  ['fixing-load', 'head', 'not-applicable'],
  ['box-sealed', 'whole', 'not-met'],
  ['planes-meet', 'whole', 'unknown'],
  ['stop-bead-length', 'whole', 'advice', 2400, 2000],
])
spoiled('unheld-head', ['told', 'inertia_cm4'], 5, ['free-span', undefined])
breaksOnly('unheld-head', [
  'fixing-spacing',
  'fixing-count',
  'tape-range',
  'sill-end-gap',
  'free-span',
  'fixing-bending',
  'box-sealed',
])
