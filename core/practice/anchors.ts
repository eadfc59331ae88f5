import type { AnchorBase } from '../kinds'
import { type Citation, cite } from '../sources'
import type { IfBroken, Practice } from './limit'
import type { Anchor } from './shapes'

/**
 * Usual embedment and edge distance of frame screws and plugs by what they are set into, in mm. Ranges are read so:
 * below the lower figure not met, between both the assessment of the product decides, from the upper one on met.
 * One figure alone has no range. All from memory: the assessment of the product governs.
 */
type Range = readonly [lower: number, upper: number]
const table: readonly (readonly [AnchorBase, Anchor, embedment: Range, edge: Range])[] = [
  ['concrete', 'frame-screw', [30, 40], [25, 50]],
  ['concrete', 'frame-plug', [50, 70], [50, 100]],
  ['solid-brick', 'frame-screw', [40, 60], [50, 60]],
  ['solid-brick', 'frame-plug', [50, 70], [100, 100]],
  ['sand-lime', 'frame-screw', [40, 60], [50, 60]],
  ['sand-lime', 'frame-plug', [50, 70], [100, 100]],
  ['perforated-brick', 'frame-screw', [60, 80], [60, 100]],
  ['perforated-brick', 'frame-plug', [70, 100], [60, 100]],
  ['aerated-concrete', 'frame-screw', [80, 100], [80, 100]],
  ['aerated-concrete', 'frame-plug', [70, 100], [80, 100]],
  ['lightweight-block', 'frame-screw', [60, 80], [80, 100]],
  ['lightweight-block', 'frame-plug', [60, 80], [80, 100]],
]

type LeastTier = {
  readonly then: { readonly least_mm: number }
  readonly cite: Citation
  readonly ifBroken: IfBroken
}

const remembered = cite('frame-anchors', 'memory')

/** A least length given as a range: short of its lower figure is not met, between both is advice. */
export const inRange = ([lower, upper]: Range, by: Citation): LeastTier & { readonly last?: LeastTier } => {
  const least = (least_mm: number, ifBroken: IfBroken): LeastTier => ({
    then: { least_mm },
    cite: by,
    ifBroken,
  })
  if (lower === upper) return least(upper, 'not-met')
  return { ...least(upper, 'advice'), last: least(lower, 'not-met') }
}

/** What every practice asks of screws and plugs in their base. */
export const anchors = {
  embedment: table.map(([base, fixing, embedment]) => ({
    when: { base: [base], fixing: [fixing] },
    ...inRange(embedment, remembered),
  })),
  'edge-distance': table.map(([base, fixing, , edge]) => ({
    when: { base: [base], fixing: [fixing] },
    ...inRange(edge, remembered),
  })),
  'screw-in-timber': [
    {
      when: { of: ['thread'] },
      then: { diameters: 6, least_mm: 0 },
      cite: cite('en-1995', 'memory'),
      ifBroken: 'not-met',
    },
    {
      when: { of: ['edge'] },
      then: { diameters: 7, least_mm: 25 },
      cite: cite('en-1995', 'memory'),
      ifBroken: 'advice',
      last: {
        then: { diameters: 4, least_mm: 25 },
        cite: cite('en-1995', 'memory'),
        ifBroken: 'not-met',
      },
    },
  ],
  drilling: (['perforated-brick', 'aerated-concrete'] as const).map(base => ({
    when: { base: [base] },
    then: { allowed: ['rotary'] },
    cite: cite('brick-lexicon', base === 'perforated-brick' ? 'published' : 'memory'),
    ifBroken: 'not-met',
  })),
} as const satisfies Practice['limits']
