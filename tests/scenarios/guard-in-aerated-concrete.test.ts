import { breaksOnly, holds, spoiled } from './hold'

// White PVC-U 74 × 70, 1250 × 2350 with a transom at 900, 25 mm deep in 365 mm aerated concrete, in Germany; a guard.
// Plugs at 210, 750, 1050, 1600, 2140; 25 + 37 = 62 from the arris; jambs 24–26 ∓ 1.00, head ∓ 3.76.
holds('guard-in-aerated-concrete', [
  ['guarding', 'whole', 'not-met'],
  ['edge-distance', 'whole', 'not-met', 62, 80],
  ['embedment', 'whole', 'refer', 70],
  ['drilling', 'whole', 'unknown'],
  ['fixing-corner', 'whole', 'met', 140],
  ['fixing-spacing', 'jambs', 'met', 550],
  ['fixing-count', 'jambs', 'met', 2],
  ['fixing-at-member', 'jambs', 'met', 115],
  ['steel-core', 'whole', 'met', 1.5],
  ['support-blocks', 'whole', 'met'],
  ['planes-filled', 'all sides', 'met'],
  ['vapour-order', 'jambs', 'met', 50],
  ['least-joint', 'jambs', 'not-applicable'],
  ['tape-range', 'jambs', 'not-met', 27, 18],
  ['tape-range', 'head', 'not-met', 29.76],
  ['tape-class', 'all sides', 'met'],
  ['membrane-on-frame', 'all sides', 'met', 15],
  ['membrane-on-wall', 'all sides', 'met', 50],
  ['frame-position', 'whole', 'advice', 62, 121.7, 243.3],
  // w 0.849 kPa, edge 0.531 kN/m, end of the transom 0.319 kN; wind 0.577, guard 0.234: 0.581, 0.741, in full 0.812 kN
  ['fixing-load', 'jambs', 'not-met', 849, 531, 319 / 2, 577, 234, 581, 741, 812, 450],
  ['fixing-bending', 'jambs', 'not-met', 812, 289, 579],
  ['guard-height', 'whole', 'refer', 900],
  ['guard-infill', 'whole', 'refer'],
  ['block-pressure', 'whole', 'refer', 0.142, 0.5],
])
spoiled('guard-in-aerated-concrete', ['told', 'guard_N_m'], 0, ['fixing-bending', 'left'])
breaksOnly('guard-in-aerated-concrete', [
  'guarding',
  'edge-distance',
  'tape-range',
  'fixing-load',
  'fixing-bending',
])
