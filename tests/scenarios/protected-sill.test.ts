import { breaksOnly, holds, spoiled } from './hold'

// Timber 68 × 70, 1200 × 2100, 123 mm behind a brick nib that laps by 55, in Germany; the stone sill is protected.
// Joint 12–13: cover 42–43, 27–28 mm of the face left. Jamb: (2100 − 2 × 200) ÷ 2 = 850. Axis 123 + 34 from outside.
holds('protected-sill', [
  ['planes-filled', 'jambs and head', 'met'],
  ['tape-class', 'jambs and head', 'met'],
  ['vapour-order', 'jambs', 'met', 9.6],
  ['least-joint', 'jambs', 'met', 12, 10],
  ['joint-for-movement', 'jambs', 'met', 12, 3],
  ['sealant-depth', 'jambs and head', 'met', 6],
  ['backing-rod', 'jambs and head', 'met', 115.4],
  ['bonded-faces', 'jambs and head', 'met', 2],
  ['fixing-corner', 'whole', 'met', 130],
  ['fixing-spacing', 'jambs', 'not-met', 850, 800],
  ['fixing-count', 'jambs', 'not-met', 3, 4],
  ['embedment', 'whole', 'refer', 55],
  ['edge-distance', 'whole', 'refer', 223],
  ['support-blocks', 'whole', 'unknown'],
  ['cover', 'jambs', 'met', 42, 30],
  ['visible-face', 'jambs', 'advice', 27],
  ['sill-fall', 'whole', 'refer', 4, 5],
  ['sill-overhang', 'whole', 'met', 40],
  ['second-plane', 'whole', 'advice'],
  ['tape-range', 'jambs and head', 'not-met', 13, 10],
  ['flank-angle', 'whole', 'not-met', 4.5, 3],
  ['flank-face', 'whole', 'not-met'],
  ['sealant-class', 'jambs and head', 'unknown'],
  ['planes-meet', 'whole', 'unknown'],
  // w 0.858 kPa, edge 0.515 kN/m over 0.85 m
  ['fixing-load', 'jambs', 'unknown', 858, 515, 656],
  ['fixing-bending', 'jambs', 'advice', 656, 500, 1001],
  ['timber-moisture', 'whole', 'advice', 19, 15],
  ['screening', 'whole', 'refer'],
  ['ventilation', 'whole', 'unknown'],
])
// Nothing is known of the seals at the sill, which the model takes for none.
spoiled('protected-sill', ['told', 'flank_deg'], 0.5, ['flank-angle', undefined])
breaksOnly('protected-sill', [
  'planes-filled',
  'tape-range',
  'flank-angle',
  'flank-face',
  'fixing-spacing',
  'fixing-count',
])
