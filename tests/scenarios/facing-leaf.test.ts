import { breaksOnly, holds, spoiled } from './hold'

// White PVC-U 70 × 70, 1800 × 1200, 20 mm deep in a facing leaf of 102.5 mm, in Britain. Jambs 4–9, head 5–7, sill 5–6.
// Jamb: (2 × 1.44) ÷ 0.25 + 1.44 = 12.96; head: (2 × 1.92) ÷ 0.25 + 1.92 = 17.28. Axis min(20 + 30, 102.5 − 50) = 50.
holds('facing-leaf', [
  ['perimeter-gap', 'jambs', 'not-met', 4, 5],
  ['perimeter-gap', 'head', 'met', 5],
  ['least-joint', 'jambs', 'not-applicable'],
  ['vapour-order', 'all sides', 'unknown'],
  ['cover', 'jambs', 'advice', 10, 30],
  ['fixing-corner', 'whole', 'met', 200],
  ['fixing-spacing', 'jambs', 'met', 400],
  ['fixing-spacing', 'head', 'met', 466.7],
  ['fixing-spacing', 'sill', 'met', 466.7],
  ['fixing-count', 'jambs', 'met', 3],
  ['fixing-count', 'head', 'met', 4],
  ['fixing-count', 'sill', 'met', 4],
  ['embedment', 'whole', 'met', 60],
  ['edge-distance', 'whole', 'advice', 50],
  ['support-blocks', 'whole', 'unknown'],
  ['distance-blocks', 'whole', 'not-applicable'],
  ['frame-position', 'whole', 'not-applicable'],
  ['sill-overhang', 'whole', 'met', 30, 25],
  ['sill-throat', 'whole', 'met', 10],
  ['sill-fall', 'whole', 'met', 5],
  ['second-plane', 'whole', 'refer'],
  ['guarding', 'whole', 'refer', 800],
  ['checked-rebate', 'whole', 'not-met', 20, 25],
  ['planes-filled', 'all sides', 'advice'],
  ['sealant-class', 'whole', 'not-applicable'],
  ['surveyed-joint', 'jambs', 'not-applicable'],
  // w 1.466 kPa, edge 0.880 kN/m over 0.400 and 0.467 m
  ['fixing-load', 'head', 'unknown', 1466, 880, 616],
  ['fixing-bending', 'jambs', 'met', 528, 590, 1180],
  ['fixing-bending', 'head', 'met', 616, 652, 1305],
])
// The bead lies on foam: the model sees its third face, where nobody has looked behind it.
spoiled('facing-leaf', ['told', 'wind_Pa'], 1.2, ['fixing-bending', 'left'])
breaksOnly('facing-leaf', ['perimeter-gap', 'backing-rod', 'bonded-faces', 'checked-rebate'])
