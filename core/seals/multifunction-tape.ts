import { z } from 'zod'
import { planes } from '../kinds'
import { assumed, type Band, type Stated, stated } from '../units'
import { filled, words } from '../words'
import { drawnWidth_mm, layer, ofMaterial } from './bay'
import { sealKind } from './kind'
import { rangeOf, steady } from './resistance'
import { type Bay, mostDepth_mm, type SealValue } from './seal-kind'
import { rangeFor } from './tape-range'
import { asClass, setback_mm, tapeClass, tapeLeast, tapeMost, tapeWidth } from './tape-values'

const sdOuter: SealValue = {
  id: 'multifunction-tape.sd-outer',
  key: 'sdOuter_m',
  name: words('s_d of the outer zone', 's_d der äußeren Zone'),
  unit: 'm',
  bounds: { unit: 'm', min: 0.001, max: 2000 },
  because: words('as declared by the product', 'nach Angabe des Produkts'),
  fallback: () => ({
    value: 0.5,
    // the requirement of the tape classes of DIN 18542 and an open foam: from memory
    band: { min: 0.02, max: 0.5 },
    why: words('tape classes ask for 0.5 m at most outside', 'Bandklassen fordern außen höchstens 0,5 m'),
  }),
}
const sdInner: SealValue = {
  ...sdOuter,
  id: 'multifunction-tape.sd-inner',
  key: 'sdInner_m',
  name: words('s_d of the inner zone', 's_d der inneren Zone'),
  fallback: () => ({
    value: 1,
    // 1 to 5 m for the whole tape, of which the outer zone is 0.5 m at most: from memory, medium confidence
    band: { min: 0.5, max: 5 },
    why: words('the whole tape lies between 1 and 5 m', 'das ganze Band liegt zwischen 1 und 5 m'),
  }),
}

/** Classes of DIN 18542:2020 for a tape through all planes: published by a maker. */
const classes = ['MF1', 'MF2'] as const

type Tape = {
  readonly kind: 'multifunction-tape'
  readonly id: string
  readonly plane: (typeof planes)[number]
  readonly least_mm?: Stated<number>
  readonly most_mm?: Stated<number>
  readonly width_mm: Stated<number>
  readonly sdOuter_m?: Stated<number>
  readonly sdInner_m?: Stated<number>
  readonly class?: Stated<(typeof classes)[number]>
}

/** Printed joint ranges and widths that it is sold in: common practice, no source; an office may change them. */
const ranges_mm: readonly Band[] = [
  { min: 5, max: 10 },
  { min: 7, max: 15 },
  { min: 10, max: 20 },
  { min: 15, max: 30 },
]
const widths_mm = [54, 66, 74, 84, 94] as const

/** How much of the width is impregnated tighter, at the room side: ours, makers grade it differently. */
const innerShare = 1 / 3

/** A precompressed tape as wide as the frame is deep: open outside, tighter inside, one body through all three planes. */
export const multifunctionTape = sealKind<Tape>({
  kind: 'multifunction-tape',
  name: words('Multifunction tape', 'Multifunktionsband'),
  shows: 'impregnated-foam',
  schema: z.strictObject({
    kind: z.literal('multifunction-tape'),
    id: z.string(),
    plane: z.enum(planes),
    least_mm: stated(z.number().positive().max(60)).exactOptional(),
    most_mm: stated(z.number().positive().max(60)).exactOptional(),
    width_mm: stated(z.number().positive().max(mostDepth_mm)),
    sdOuter_m: stated(z.number().positive().max(2000)).exactOptional(),
    sdInner_m: stated(z.number().positive().max(2000)).exactOptional(),
    class: stated(z.enum(classes)).exactOptional(),
  }),
  planes: ['middle'],
  serves: () => ['outer', 'middle', 'inner'],
  values: [tapeLeast, tapeMost, tapeWidth, sdOuter, sdInner],
  choices: [
    tapeClass([
      asClass('MF1', 'may stay exposed', 'darf frei bewittert bleiben'),
      asClass('MF2', 'covered later', 'wird später verdeckt'),
    ]),
  ],
  ranges_mm,
  fresh: (id, plane, bay) => {
    const range = rangeFor(bay.width_mm, ranges_mm)
    const room_mm = bay.to_mm - bay.from_mm - setback_mm
    return {
      kind: 'multifunction-tape',
      id,
      plane,
      least_mm: assumed(range.min),
      most_mm: assumed(range.max),
      // the widest that the frame covers
      width_mm: assumed(widths_mm.findLast(it => it <= room_mm) ?? widths_mm[0]),
      class: assumed('MF1'),
    }
  },
  takesDepth: it => it.width_mm.value + setback_mm,
  lay: (it, bay) => {
    const [from, to] = depths(it, bay)
    const graded = to - innerShare * (to - from)
    const foam = ofMaterial('impregnated-foam')
    return {
      regions: [
        ...layer(it.id, 'outer', bay, [from, graded], foam),
        ...layer(it.id, 'inner', bay, [graded, to], foam),
      ],
      lines: [],
    }
  },
  grips: (it, bay) => [
    {
      field: tapeWidth.id,
      at: [bay.wallFace[0][0] + drawnWidth_mm(bay) / 2, depths(it, bay)[1]],
      along: [0, 1],
    },
  ],
  sd_m: (it, plane) => {
    if (plane === 'outer') return steady(rangeOf(it, sdOuter))
    return plane === 'inner' ? steady(rangeOf(it, sdInner)) : undefined
  },
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

const depths = (it: Tape, bay: Bay): readonly [number, number] => {
  const from = bay.from_mm + setback_mm
  return [from, Math.min(from + it.width_mm.value, bay.to_mm)]
}

const tapeName = (it: Tape) =>
  filled(
    words('multifunction tape {0}/{1}–{2}', 'Multifunktionsband {0}/{1}–{2}'),
    `${it.width_mm.value}`,
    `${it.least_mm?.value ?? '?'}`,
    `${it.most_mm?.value ?? '?'}`,
  )
