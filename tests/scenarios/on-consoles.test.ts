import { breaksOnly, holds } from './hold'

// Timber-aluminium 110 × 90, 1600 × 1500 with a mullion of 90, 200 mm before a concrete wall on consoles, in Austria.
// (1628 to 1632 − 1600) ÷ 2 = 14–16; jambs ∓ 0.40, head ∓ 0.75. Offset 200 − 55 = 145; 1.35 × 898 N × 145 ÷ 120 = 1464 N.
holds('on-consoles', [
  ['planes-filled', 'all sides', 'met'],
  ['vapour-order', 'all sides', 'met'],
  ['tape-range', 'jambs', 'met', 13.6],
  ['tape-range', 'head', 'met', 13.25],
  ['tape-range', 'sill', 'met', 14],
  ['tape-lower-half', 'all sides', 'met', 15],
  ['tape-class', 'all sides', 'met'],
  ['tape-flanks', 'all sides', 'met'],
  ['membrane-on-frame', 'all sides', 'met', 15],
  ['membrane-on-wall', 'all sides', 'met', 50],
  ['membrane-slack', 'all sides', 'met', 8],
  ['membrane-on-reveal', 'jambs', 'met', 60, 290],
  ['fixing-corner', 'whole', 'met', 150],
  ['fixing-spacing', 'jambs', 'met', 510],
  // within a bay 365; across the mullion 2 × 195 = 390, which is the largest
  ['fixing-spacing', 'head', 'met', 390],
  ['fixing-spacing', 'sill', 'met', 560],
  ['fixing-count', 'jambs', 'met', 3],
  ['fixing-count', 'head', 'met', 2],
  ['fixing-at-member', 'head', 'met', 150],
  ['embedment', 'whole', 'not-applicable'],
  ['edge-distance', 'whole', 'not-applicable'],
  ['guarding', 'whole', 'not-applicable'],
  ['frame-forward', 'whole', 'refer', 145, 897.6, 1464],
  ['support-blocks', 'whole', 'met'],
  ['distance-blocks', 'whole', 'met'],
  ['cover', 'jambs', 'met', 40, 30],
  ['visible-face', 'jambs', 'met', 50],
  ['frame-position', 'whole', 'met'],
  ['sill-fall', 'whole', 'met', 5],
  ['sill-overhang', 'whole', 'met', 40],
  ['sill-end-dam', 'whole', 'met', 20],
  ['sill-end-gap', 'whole', 'met', 5, 1.34],
  ['sill-length', 'whole', 'met', 1600],
  ['second-plane', 'whole', 'met'],
])
breaksOnly('on-consoles', [])
