import { z } from 'zod'
import { planes } from '../kinds'
import { assumed, type Band, type Stated, stated } from '../units'
import { filled, words } from '../words'
import { across, body, drawnWidth_mm, ofMaterial } from './bay'
import { sealKind } from './kind'
import { mostDepth_mm, type SealValue } from './seal-kind'

const least: SealValue = {
  id: 'tape.least',
  key: 'least_mm',
  name: words('Tape from joint', 'Band ab Fuge'),
  unit: 'mm',
  bounds: { unit: 'mm', min: 1, max: 60 },
  because: words('the printed range of the tape', 'aufgedruckter Einsatzbereich des Bands'),
}
const most: SealValue = {
  ...least,
  id: 'tape.most',
  key: 'most_mm',
  name: words('Tape to joint', 'Band bis Fuge'),
}
const width: SealValue = {
  id: 'tape.width',
  key: 'width_mm',
  name: words('Tape width', 'Bandbreite'),
  unit: 'mm',
  bounds: { unit: 'mm', min: 5, max: mostDepth_mm },
  within: 'depth',
  because: words('width of the tape: its depth in the joint', 'Breite des Bands: seine Tiefe in der Fuge'),
}
const sd: SealValue = {
  id: 'tape.sd',
  key: 'sd_m',
  name: words('Vapour resistance s_d', 'Dampfwiderstand s_d'),
  unit: 'm',
  bounds: { unit: 'm', min: 0.001, max: 2000 },
  because: words('as declared by the product', 'nach Angabe des Produkts'),
  fallback: {
    value: 0.5,
    // at most 0.5 m is a requirement of the tape classes of DIN 18542 (from memory); 0.02 m an open foam
    band: { min: 0.02, max: 0.5 },
    why: words('tape classes ask for 0.5 m at most', 'Bandklassen fordern höchstens 0,5 m'),
  },
}

type Tape = {
  readonly kind: 'impregnated-tape'
  readonly id: string
  readonly plane: (typeof planes)[number]
  readonly least_mm?: Stated<number>
  readonly most_mm?: Stated<number>
  readonly width_mm: Stated<number>
  readonly sd_m?: Stated<number>
}

/** Printed joint ranges of tapes: common practice, no source; an office may change them. */
export const tapeRanges_mm: readonly Band[] = [
  [2, 4], [3, 7], [4, 9], [5, 10], [7, 12], [8, 15], [10, 18], [12, 25], [15, 25], [20, 35],
].map(([min = 0, max = 0]) => ({ min, max })) // prettier-ignore

/** Setback of a tape from the front edge of the joint, 2 to 3 mm: from memory. */
const setback_mm = 2

/** A precompressed impregnated foam tape: it opens against both flanks and seals within its printed range. */
export const impregnatedTape = sealKind<Tape>({
  kind: 'impregnated-tape',
  name: words('Precompressed tape', 'Fugendichtband'),
  shows: 'impregnated-foam',
  schema: z.strictObject({
    kind: z.literal('impregnated-tape'),
    id: z.string(),
    plane: z.enum(planes),
    least_mm: stated(z.number().positive().max(60)).exactOptional(),
    most_mm: stated(z.number().positive().max(60)).exactOptional(),
    width_mm: stated(z.number().positive().max(mostDepth_mm)),
    sd_m: stated(z.number().positive().max(2000)).exactOptional(),
  }),
  planes: ['outer', 'inner'],
  values: [least, most, width, sd],
  fresh: (id, plane, bay) => {
    const range = rangeFor(bay.width_mm)
    return {
      kind: 'impregnated-tape',
      id,
      plane,
      least_mm: assumed(range.min),
      most_mm: assumed(range.max),
      width_mm: assumed(20),
    }
  },
  takesDepth: it => it.width_mm.value + setback_mm,
  lay: (it, bay) => {
    const from = it.plane === 'outer' ? bay.from_mm + setback_mm : bay.to_mm - setback_mm - it.width_mm.value
    const outline = across(bay, from, from + it.width_mm.value)
    return { regions: [body(it.id, 'tape', outline, ofMaterial('impregnated-foam'))], lines: [] }
  },
  grips: (it, bay) => {
    const outward = it.plane === 'outer'
    const end = outward
      ? bay.from_mm + setback_mm + it.width_mm.value
      : bay.to_mm - setback_mm - it.width_mm.value
    return [
      {
        field: width.id,
        at: [bay.wallFace[0][0] + drawnWidth_mm(bay) / 2, end],
        along: [0, outward ? 1 : -1],
      },
    ]
  },
  sd_m: it => {
    const band = it.sd_m ? { min: it.sd_m.value, max: it.sd_m.value } : sd.fallback?.band
    return band && { winter: band, summer: band }
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

const tapeName = (it: Tape) =>
  filled(words('tape {0}/{1}–{2}', 'Band {0}/{1}–{2}'), `${it.width_mm.value}`, `${it.least_mm?.value ?? '?'}`, `${it.most_mm?.value ?? '?'}`) // prettier-ignore

/** The smallest printed range that holds a joint; where none does, the one that leaves least of it outside. */
const rangeFor = (joint_mm: Band): Band => {
  const outside = (one: Band) => Math.max(0, one.min - joint_mm.min) + Math.max(0, joint_mm.max - one.max)
  return tapeRanges_mm.reduce((best, one) => (outside(one) < outside(best) ? one : best))
}
