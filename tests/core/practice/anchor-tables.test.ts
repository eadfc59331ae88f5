import { expect, test } from 'vitest'
import type { AnchorBase } from '../../../core/kinds'
import { lookUp, practiceOf, practices } from '../../../core/practice'

// Copied by hand from a table of frame screws and plugs, generic ranges from memory, not from the code: embedment of a
// screw and of a plug, then their distance from the edge, each as lower–upper figure; one figure has no range.
const table: readonly (readonly [AnchorBase, string, string, string, string])[] = [
  ['concrete', '30–40', '50–70', '25–50', '50–100'],
  ['solid-brick', '40–60', '50–70', '50–60', '100'],
  ['sand-lime', '40–60', '50–70', '50–60', '100'],
  ['perforated-brick', '60–80', '70–100', '60–100', '60–100'],
  ['aerated-concrete', '80–100', '70–100', '80–100', '80–100'],
  ['lightweight-block', '60–80', '60–80', '80–100', '80–100'],
]
const cells = table.flatMap(([base, screwDepth, plugDepth, screwEdge, plugEdge]) => [
  { limit: 'embedment', fixing: 'frame-screw', base, range: screwDepth } as const,
  { limit: 'embedment', fixing: 'frame-plug', base, range: plugDepth } as const,
  { limit: 'edge-distance', fixing: 'frame-screw', base, range: screwEdge } as const,
  { limit: 'edge-distance', fixing: 'frame-plug', base, range: plugEdge } as const,
])

test.each(cells)('$limit of a $fixing in $base: $range mm, in every practice', ({ limit, fixing, base, range }) => {
  const [lower = 0, upper = lower] = range.split('–').map(Number)
  for (const it of practices) {
    const row = lookUp(it, limit, { fixing, base })
    expect(row?.then.least_mm).toBe(upper)
    expect(row?.cite.trust).toBe('memory')
    expect(row?.ifBroken).toBe(lower === upper ? 'not-met' : 'advice')
    expect(row?.last?.then.least_mm).toBe(lower === upper ? undefined : lower)
    expect(row?.last?.ifBroken ?? 'not-met').toBe('not-met')
  }
}) // prettier-ignore

test('lugs, brackets and unknown bases have no row: they are referred', () => {
  const de = practiceOf({ id: 'DE', own: [] })
  expect(lookUp(de, 'embedment', { fixing: 'lug', base: 'concrete' })).toBeUndefined()
  expect(lookUp(de, 'edge-distance', { fixing: 'bracket', base: 'sand-lime' })).toBeUndefined()
  expect(lookUp(de, 'embedment', { fixing: 'frame-screw', base: 'other' })).toBeUndefined()
})

// EN 1995-1-1, from memory: six diameters of thread; four to seven diameters from the edge, never less than 25 mm.
test('a screw in timber has six diameters of thread and four to seven from the edge, at least 25 mm', () => {
  for (const it of practices) {
    expect(lookUp(it, 'screw-in-timber', { of: 'thread' })?.then).toEqual({ diameters: 6, least_mm: 0 })
    const edge = lookUp(it, 'screw-in-timber', { of: 'edge' })
    expect([edge?.then, edge?.ifBroken]).toEqual([{ diameters: 7, least_mm: 25 }, 'advice'])
    expect([edge?.last?.then, edge?.last?.ifBroken]).toEqual([{ diameters: 4, least_mm: 25 }, 'not-met'])
  }
})

// A maker's text outside the EU publishes 1.5 mm; 2 mm for coloured frames is from memory and only advises.
test('steel in PVC-U is 1.5 mm, in coloured frames better 2 mm', () => {
  for (const it of practices) {
    const white = lookUp(it, 'steel-core', { frame: 'pvc-white' })
    expect([white?.then.least_mm, white?.ifBroken, white?.cite.trust]).toEqual([1.5, 'not-met', 'published'])
    const coloured = lookUp(it, 'steel-core', { frame: 'pvc-coloured' })
    expect([coloured?.then.least_mm, coloured?.ifBroken, coloured?.cite.trust]).toEqual([2, 'advice', 'memory'])
    expect(coloured?.last?.then.least_mm).toBe(1.5)
  }
}) // prettier-ignore

// The lexicon of a brick association publishes it for perforated brick; for aerated concrete it is from memory.
test('perforated brick and aerated concrete are drilled with rotation only, and nothing else is asked', () => {
  for (const it of practices) {
    expect(lookUp(it, 'drilling', { base: 'perforated-brick' })?.cite.trust).toBe('published')
    expect(lookUp(it, 'drilling', { base: 'aerated-concrete' })?.cite.trust).toBe('memory')
    expect(lookUp(it, 'drilling', { base: 'perforated-brick' })?.then.allowed).toEqual(['rotary'])
    expect(lookUp(it, 'drilling', { base: 'concrete' })).toBeUndefined()
  }
})
