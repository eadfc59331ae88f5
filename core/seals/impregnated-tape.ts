import { z } from 'zod'
import { planes } from '../kinds'
import { assumed, type Band, type Stated, stated } from '../units'
import { filled, words } from '../words'
import { drawnWidth_mm, layer, ofMaterial } from './bay'
import { inGap } from './gap'
import { sealKind } from './kind'
import { rangeOf, steady } from './resistance'
import { type Bay, mostDepth_mm, type SealValue } from './seal-kind'
import { rangeFor } from './tape-range'
import { asClass, setback_mm, tapeClass, tapeLeast, tapeMost, tapeWidth } from './tape-values'

const sd: SealValue = {
  id: 'tape.sd',
  key: 'sd_m',
  name: words('Vapour resistance s_d', 'Dampfwiderstand s_d'),
  unit: 'm',
  bounds: { unit: 'm', min: 0.001, max: 2000 },
  because: words('as declared by the product', 'nach Angabe des Produkts'),
  fallback: () => ({
    value: 0.5,
    // at most 0.5 m is a requirement of the tape classes of DIN 18542 (from memory); 0.02 m an open foam
    band: { min: 0.02, max: 0.5 },
    why: words('tape classes ask for 0.5 m at most', 'Bandklassen fordern höchstens 0,5 m'),
  }),
}

/** Classes of DIN 18542 for a tape in one plane: what they are for is published by dealers and makers. */
const classes = ['BG1', 'BG2', 'BGR'] as const

type Tape = {
  readonly kind: 'impregnated-tape'
  readonly id: string
  readonly plane: (typeof planes)[number]
  readonly gap?: 'rebate'
  readonly least_mm?: Stated<number>
  readonly most_mm?: Stated<number>
  readonly width_mm: Stated<number>
  readonly sd_m?: Stated<number>
  readonly class?: Stated<(typeof classes)[number]>
}

/** Printed joint ranges of tapes: common practice, no source; an office may change them. */
const tapeRanges_mm: readonly Band[] = [
  [2, 4], [3, 7], [4, 9], [5, 10], [7, 12], [8, 15], [10, 18], [12, 25], [15, 25], [20, 35],
].map(([min = 0, max = 0]) => ({ min, max })) // prettier-ignore

/** A precompressed impregnated foam tape: it opens against both flanks and seals within its printed range. */
export const impregnatedTape = sealKind<Tape>({
  kind: 'impregnated-tape',
  name: words('Precompressed tape', 'Fugendichtband'),
  shows: 'impregnated-foam',
  schema: z.strictObject({
    kind: z.literal('impregnated-tape'),
    id: z.string(),
    plane: z.enum(planes),
    ...inGap,
    least_mm: stated(z.number().positive().max(60)).exactOptional(),
    most_mm: stated(z.number().positive().max(60)).exactOptional(),
    width_mm: stated(z.number().positive().max(mostDepth_mm)),
    sd_m: stated(z.number().positive().max(2000)).exactOptional(),
    class: stated(z.enum(classes)).exactOptional(),
  }),
  planes: ['outer', 'inner'],
  inRebate: true,
  serves: it => [it.plane],
  values: [tapeLeast, tapeMost, tapeWidth, sd],
  choices: [
    tapeClass([
      asClass('BG1', 'exposed to driving rain', 'dem Schlagregen ausgesetzt'),
      asClass('BG2', 'sheltered or covered', 'geschützt oder verdeckt'),
      asClass('BGR', 'room side', 'raumseitig'),
    ]),
  ],
  ranges_mm: tapeRanges_mm,
  fresh: (id, plane, bay) => {
    const range = rangeFor(bay.width_mm, tapeRanges_mm)
    return {
      kind: 'impregnated-tape',
      id,
      plane,
      least_mm: assumed(range.min),
      most_mm: assumed(range.max),
      width_mm: assumed(20),
      class: assumed(plane === 'inner' ? 'BGR' : 'BG1'),
    }
  },
  takesDepth: it => it.width_mm.value + setback_mm,
  lay: (it, bay) => ({
    regions: layer(it.id, 'tape', bay, depths(it, bay), ofMaterial('impregnated-foam')),
    lines: [],
  }),
  grips: (it, bay) => {
    const [from, to] = depths(it, bay)
    const outward = it.plane === 'outer'
    return [
      {
        field: tapeWidth.id,
        at: [bay.wallFace[0][0] + drawnWidth_mm(bay) / 2, outward ? to : from],
        along: [0, outward ? 1 : -1],
      },
    ]
  },
  sd_m: it => steady(rangeOf(it, sd)),
  takes: it =>
    it.least_mm && it.most_mm
      ? { by: 'range', joint_mm: { min: it.least_mm.value, max: it.most_mm.value } }
      : { by: 'nothing' },
  bonds: it => [
    { to: 'wall', width_mm: it.width_mm.value },
    { to: 'frame', width_mm: it.width_mm.value },
  ],
  // one hundredth over length, left at the end of the run: common practice
  needs: (it, _bay, length_mm) => [{ what: tapeName(it), amount: 1.01 * length_mm, unit: 'mm' }],
  called: it => tapeName(it),
})

/** From where to where a tape lies: set back from its end of the joint, and no further than the other end. */
const depths = (it: Tape, bay: Bay): readonly [number, number] => {
  const width_mm = Math.min(it.width_mm.value, Math.max(0, bay.to_mm - bay.from_mm - setback_mm))
  return it.plane === 'outer'
    ? [bay.from_mm + setback_mm, bay.from_mm + setback_mm + width_mm]
    : [bay.to_mm - setback_mm - width_mm, bay.to_mm - setback_mm]
}

const tapeName = (it: Tape) =>
  filled(words('tape {0}/{1}–{2}', 'Band {0}/{1}–{2}'), `${it.width_mm.value}`, `${it.least_mm?.value ?? '?'}`, `${it.most_mm?.value ?? '?'}`) // prettier-ignore
