import type { AnchorBase } from '../kinds'
import { type Citation, cite } from '../sources'
import type { IfBroken, LimitShapes, Practice, Row } from './limit'
import type { LoadShapes, WorkShapes } from './work-shapes'

const remembered = cite('trade', 'memory')
const ours = cite('convention', 'ours')

/** The only row of a limit that depends on nothing. */
export const always = <K extends keyof WorkShapes | keyof LoadShapes>(
  then: LimitShapes[K]['then'],
  by: Citation,
  ifBroken: IfBroken = 'not-met',
): readonly Row<K>[] => [{ when: {}, then, cite: by, ifBroken }]

const words = (...accepted: readonly string[]) => ({ accepted })

/** What every practice asks of the work: mostly what nobody would leave out, from memory. */
export const work = {
  'planes-meet': always<'planes-meet'>(words('closed'), remembered),
  'air-line': always<'air-line'>(words('continuous', 'none'), remembered),
  'plaster-edge': always<'plaster-edge'>(words('bead', 'cut', 'membrane'), remembered),
  'joint-sound': always<'joint-sound'>('asked', ours),
  // From +5 °C on everything is worked; sealants to +40 °C.
  'work-temperature': [
    { when: { of: ['sealant'] }, then: { least: 5, most: 40 }, cite: cite('din-18540', 'memory'), ifBroken: 'not-met' },
    { when: { of: ['bonded'] }, then: { least: 5 }, cite: remembered, ifBroken: 'not-met' },
  ],
  'work-dry': always<'work-dry'>(words('yes'), remembered),
  substrate: [
    {
      when: {},
      then: words('sound'),
      cite: remembered,
      ifBroken: 'advice',
      last: { then: words('sound', 'doubtful'), cite: remembered, ifBroken: 'not-met' },
    },
  ],
  // The rule of one maker, so it only advises.
  'element-length': [
    longest('pvc-white', 'several', 4000),
    longest('pvc-coloured', 'several', 3000),
    longest('pvc-white', 'one', 3000),
    longest('pvc-coloured', 'one', 2500),
  ],
  compatible: always<'compatible'>(words('proven'), remembered),
  'fillet-leg': always<'fillet-leg'>({ least: 10 }, cite('joint-calculation-guide', 'memory')),
  'flank-angle': always<'flank-angle'>({ most: 3 }, cite('window-joint-leaflet', 'memory')),
  'flank-face': always<'flank-face'>(words('flush'), cite('window-joint-leaflet', 'memory')),
  'tape-corners': always<'tape-corners'>(words('butted'), cite('window-joint-leaflet', 'memory')),
  'tape-overlength': always<'tape-overlength'>({ least: 1 }, cite('trade', 'practice'), 'advice'),
  'tape-level': always<'tape-level'>('drained-or-tight', remembered),
  'membrane-lap': always<'membrane-lap'>({ least: 50 }, remembered),
  'peel-test': [
    {
      when: { substrate: ['doubtful'] },
      then: words('passed'),
      cite: cite('installation-materials', 'memory'),
      ifBroken: 'not-met',
    },
  ],
  'sheet-duty': always<'sheet-duty'>(words('moisture', 'others'), remembered),
  'frame-true': trueWithin(2, cite('assembly-manual', 'published')),
  'fixing-metal': [
    { when: { air: ['plain'] }, then: words('zinc', 'A2', 'A4', 'special'), cite: remembered, ifBroken: 'not-met' },
    { when: { air: ['coast'] }, then: words('A4', 'special'), cite: remembered, ifBroken: 'not-met' },
    // In the chloride air of a pool an engineer chooses, whatever is stated.
    { when: { air: ['pool'] }, then: words(), cite: remembered, ifBroken: 'refer' },
  ],
  'drain-slots': always<'drain-slots'>(words('free'), remembered),
  'stop-bead-length': [
    { when: { reveal: ['butt', 'splayed'] }, then: { most: 2000 }, cite: remembered, ifBroken: 'advice' },
  ],
  'rain-laps': always<'rain-laps'>(words('shed'), remembered),
  'threshold-fall': always<'threshold-fall'>(words('away'), remembered),
  'rain-class': always<'rain-class'>('asked', cite('rain-tightness-steps', 'published')),
  'timber-moisture': [
    { when: { of: ['frame'] }, then: { most: 15 }, cite: remembered, ifBroken: 'advice' },
    { when: { of: ['wall'] }, then: { most: 18 }, cite: remembered, ifBroken: 'advice' },
  ],
  'work-order': always<'work-order'>(words('seal-first'), ours),
  screening: always<'screening'>(words('screened'), remembered, 'refer'),
  'fire-joint': always<'fire-joint'>('proof', remembered, 'refer'),
} as const satisfies Practice['limits'] // prettier-ignore

/** How far a threshold stands over the surface outside: without a drain, with a channel at the door, in step-free work. */
export const upstands = (
  figures: { readonly none: number; readonly channel?: number; readonly special: number },
  by: Citation,
): readonly Row<'threshold-upstand'>[] =>
  (['none', 'channel', 'special'] as const).flatMap((drain): readonly Row<'threshold-upstand'>[] => {
    const least = figures[drain]
    return least === undefined
      ? []
      : [{ when: { drain: [drain] }, then: { least }, cite: by, ifBroken: 'not-met' }]
  })

/** What every practice asks of forces: the factors of EN 1990, the bending of screws, our pressures under blocks. */
export const loads = {
  'fixing-load': always<'fixing-load'>({ wind: 1.5, guard: 1.5, isInFull: false }, cite('en-1990', 'memory')),
  'fixing-bending': [
    {
      when: { of: ['bending'] },
      then: { restraint: 1 },
      cite: cite('anchor-guideline', 'published'),
      ifBroken: 'advice',
      last: { then: { restraint: 2 }, cite: cite('anchor-guideline', 'published'), ifBroken: 'not-met' },
    },
    { when: { of: ['length'] }, then: { most_mm: 30 }, cite: ours, ifBroken: 'advice' },
  ],
  'block-pressure': [
    pressed(['concrete'], 5, ours),
    pressed(['solid-brick', 'sand-lime'], 1.5, ours),
    pressed(['timber'], 1.1, cite('en-1995', 'memory')),
    pressed(['perforated-brick', 'lightweight-block'], 0.6, ours),
    pressed(['aerated-concrete'], 0.5, ours),
  ],
  'free-span': [
    bent('A', 150, cite('element-classes', 'published', 'EN 12210')),
    bent('B', 200, cite('element-classes', 'published', 'EN 12210')),
    bent('C', 300, cite('element-classes', 'published', 'EN 12210')),
    bent('not-told', 300, ours),
  ],
  'bracket-slot': always<'bracket-slot'>('takes-sag', ours),
  'guard-infill': always<'guard-infill'>(words('proven'), cite('guarding-seminar', 'memory'), 'refer'),
} as const satisfies Practice['limits']

/** How far a frame may be out of plumb and level, per metre and over its longer edge, and bowed. A function, because the tables above call it. */
export function trueWithin(plumb_mm_m: number, by: Citation): readonly Row<'frame-true'>[] {
  return [
    { when: { of: ['plumb'] }, then: { most: plumb_mm_m }, cite: by, ifBroken: 'not-met' },
    { when: { of: ['edge'] }, then: { most: 3 }, cite: by, ifBroken: 'not-met' },
    { when: { of: ['bow'] }, then: { most: 1 }, cite: remembered, ifBroken: 'not-met' },
  ]
}

function longest(
  frame: 'pvc-white' | 'pvc-coloured',
  lights: 'one' | 'several',
  most: number,
): Row<'element-length'> {
  return {
    when: { frame: [frame], lights: [lights] },
    then: { most },
    cite: cite('window-lexicon', 'published'),
    ifBroken: 'advice',
  }
}

function pressed(base: readonly AnchorBase[], most_N_mm2: number, by: Citation): Row<'block-pressure'> {
  return { when: { base }, then: { most_N_mm2 }, cite: by, ifBroken: 'not-met' }
}

function bent(deflection: 'A' | 'B' | 'C' | 'not-told', part: number, by: Citation): Row<'free-span'> {
  return { when: { deflection: [deflection] }, then: { part }, cite: by, ifBroken: 'not-met' }
}
