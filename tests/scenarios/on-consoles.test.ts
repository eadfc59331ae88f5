import { expect, test } from 'vitest'
import { check } from '../../core/rules'
import { specified } from '../../core/units'
import { breaksOnly, holds, sampleOf, spoiled } from './hold'

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
  // end of the mullion 0.320 kN, edge 0.291 kN/m over 0.56 m: 1.5 × 0.483 = 0.73 kN with 1.46 kN of weight
  ['frame-forward', 'whole', 'refer', 145, 897.6, 1464, 725, 2190, 2500],
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
  ['planes-meet', 'whole', 'met'],
  ['air-line', 'whole', 'met'],
  ['plaster-edge', 'whole', 'met'],
  ['flank-angle', 'whole', 'met', 1, 3],
  ['tape-corners', 'whole', 'met'],
  ['tape-overlength', 'whole', 'met'],
  ['tape-level', 'sill', 'not-applicable'],
  ['membrane-lap', 'whole', 'met', 50],
  ['peel-test', 'whole', 'met'],
  ['substrate', 'whole', 'met'],
  ['work-temperature', 'all sides', 'met', 12, 5],
  ['work-dry', 'whole', 'met'],
  ['surveyed-joint', 'all sides', 'met', 14],
  ['opening-size', 'whole', 'met', -2, 12],
  ['rain-class', 'whole', 'met'],
  ['open-weather', 'whole', 'met'],
  ['fixing-bending', 'all sides', 'not-applicable'],
  ['block-pressure', 'whole', 'not-applicable'],
  ['frame-true', 'whole', 'met', 1, 0.5],
  ['head-joint', 'head', 'met', 14, 12.75],
  ['free-span', 'whole', 'met', 583, 0.7, 5],
  ['fixing-metal', 'whole', 'met'],
  ['fixing-load', 'jambs', 'refer', 223, 1200],
  ['fixing-load', 'head', 'refer', 320 / 2, 405],
  ['timber-moisture', 'whole', 'met', 13, 15],
  ['drain-slots', 'whole', 'met'],
  ['rain-laps', 'whole', 'met'],
  ['work-order', 'whole', 'met'],
])
spoiled('on-consoles', ['told', 'lintel_mm'], 2, ['head-joint', 'head'])
breaksOnly('on-consoles', [])

// Timber-aluminium 0.5 mm/m, held in its middle and on its consoles: nothing about movement is assumed.
test('no verdict rests on an assumed movement, width or tolerance', () => {
  const findings = check(sampleOf('on-consoles')).findings.filter(it => it.rule === 'tape-range')
  expect(findings).toHaveLength(4)
  for (const it of findings) expect(it.restsOn).toEqual([])
})
test('a peel test that was not made is not known, never not met', () => {
  const project = sampleOf('on-consoles')
  const untested = Object.values(project.openings).map(it => {
    const { peelTest: _, ...told } = it.told ?? {}
    return [it.id, { ...it, told: { ...told, peelTest: specified('none' as const) } }] as const
  })
  const { findings } = check({ ...project, openings: Object.fromEntries(untested) })
  expect(findings.find(it => it.rule === 'peel-test')).toMatchObject({
    verdict: 'unknown',
    missing: [{ field: 'opening.peel-test' }],
  })
})
