import { breaksOnly, holds } from './hold'

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
])
breaksOnly('guard-in-aerated-concrete', ['guarding', 'edge-distance', 'tape-range'])
