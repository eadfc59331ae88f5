import { breaksOnly, holds } from './hold'

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
  // the box is no part of the model: with it the head would move by 2.62 mm
  ['tape-range', 'head', 'met'],
  ['support-blocks', 'whole', 'unknown'],
  ['tape-class', 'all sides', 'met'],
  ['sill-end-gap', 'whole', 'not-met', 2, 2.04],
  ['sill-length', 'whole', 'met', 2426],
  ['sill-fall', 'whole', 'met', 5],
  ['sill-overhang', 'whole', 'met', 35],
  ['second-plane', 'whole', 'met'],
  ['frame-position', 'whole', 'met', 178, 121.7, 243.3],
])
breaksOnly('unheld-head', ['fixing-spacing', 'fixing-count', 'tape-range', 'sill-end-gap'])
