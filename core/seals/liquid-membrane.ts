import { z } from 'zod'
import { planes } from '../kinds'
import { assumed, type Stated, stated } from '../units'
import { filled, words } from '../words'
import { bondFrame, bondWall, filmBonds, filmGrips, girth_mm, layFilm } from './film'
import { sealKind } from './kind'
import { rangeOf, steady } from './resistance'
import { mostDepth_mm, type SealValue } from './seal-kind'

const thickness: SealValue = {
  id: 'liquid.thickness',
  key: 'thickness_mm',
  name: words('Thickness, dry', 'Schichtdicke, trocken'),
  unit: 'mm',
  bounds: { unit: 'mm', min: 0.2, max: 5 },
  because: words('as declared by the product', 'nach Angabe des Produkts'),
}
const sd: SealValue = {
  id: 'liquid.sd',
  key: 'sd_m',
  name: words('Vapour resistance s_d', 'Dampfwiderstand s_d'),
  unit: 'm',
  bounds: { unit: 'm', min: 0.01, max: 2000 },
  because: words('as declared by the product', 'nach Angabe des Produkts'),
  fallback: () => ({
    value: 10,
    // waterproofing of 2 mm and airtight coatings alike: from memory, low confidence
    band: { min: 2, max: 20 },
    why: words('liquid-applied membranes lie between 2 and 20 m', 'Flüssigabdichtungen liegen zwischen 2 und 20 m'), // prettier-ignore
  }),
}

const carriers = ['fleece', 'none'] as const

type Liquid = {
  readonly kind: 'liquid-membrane'
  readonly id: string
  readonly plane: (typeof planes)[number]
  readonly bondFrame_mm: Stated<number>
  readonly bondWall_mm: Stated<number>
  readonly thickness_mm: Stated<number>
  readonly carrier?: Stated<(typeof carriers)[number]>
  readonly sd_m?: Stated<number>
}

/** Conductivity of a cured resin: ours, of no weight for heat. */
const lambda_W_mK = 0.25

/** A film brushed on from the flank of the frame over the joint onto the wall. Only with a carrier does it bridge the joint. */
export const liquidMembrane = sealKind<Liquid>({
  kind: 'liquid-membrane',
  name: words('Liquid-applied membrane', 'Flüssigabdichtung'),
  schema: z.strictObject({
    kind: z.literal('liquid-membrane'),
    id: z.string(),
    plane: z.enum(planes),
    bondFrame_mm: stated(z.number().positive().max(mostDepth_mm)),
    bondWall_mm: stated(z.number().positive().max(300)),
    thickness_mm: stated(z.number().positive().max(5)),
    carrier: stated(z.enum(carriers)).exactOptional(),
    sd_m: stated(z.number().positive().max(2000)).exactOptional(),
  }),
  planes: ['outer', 'inner'],
  // without a carrier it tears where the joint opens; not stated counts as none
  serves: it => (it.carrier?.value === 'fleece' ? [it.plane] : []),
  only: words('where no membrane can be bonded', 'wo sich keine Folie kleben lässt'),
  values: [bondFrame, bondWall, thickness, sd],
  choices: [
    {
      id: 'liquid.carrier',
      key: 'carrier',
      name: words('Carrier over the joint', 'Einlage über der Fuge'),
      choices: [
        { value: 'fleece', name: words('fleece', 'Vlies') },
        { value: 'none', name: words('none', 'keine') },
      ],
      because: words('what lets it bridge the joint', 'was sie über die Fuge trägt'),
    },
  ],
  fresh: (id, plane) => ({
    kind: 'liquid-membrane',
    id,
    plane,
    // at least 50 mm on a door frame: from memory
    bondFrame_mm: assumed(50),
    bondWall_mm: assumed(100),
    thickness_mm: assumed(plane === 'outer' ? 2 : 1),
    carrier: assumed('fleece'),
  }),
  takesDepth: () => 0,
  lay: (it, bay) => {
    const made = { thickness_mm: it.thickness_mm.value, lambda_W_mK }
    const sd_m = steady(rangeOf(it, sd))
    return layFilm(it, bay, sd_m ? { ...made, sd_m } : made)
  },
  grips: filmGrips,
  sd_m: it => steady(rangeOf(it, sd)),
  takes: () => ({ by: 'nothing' }),
  bonds: filmBonds,
  needs: (it, bay, length_mm) => [
    {
      what: words('liquid-applied membrane, cured', 'Flüssigabdichtung, ausgehärtet'),
      amount: (it.thickness_mm.value * girth_mm(it, bay) * length_mm) / 1000,
      unit: 'ml',
    },
    ...(it.carrier?.value === 'fleece'
      ? [{ what: words('fleece', 'Vlies'), amount: length_mm, unit: 'mm' as const }]
      : []),
  ],
  called: it =>
    it.carrier?.value === 'fleece'
      ? filled(words('liquid-applied, {0} thick, on fleece', 'Flüssigabdichtung, {0} dick, auf Vlies'), `${it.thickness_mm.value}`) // prettier-ignore
      : filled(words('liquid-applied, {0} thick, no carrier', 'Flüssigabdichtung, {0} dick, ohne Einlage'), `${it.thickness_mm.value}`), // prettier-ignore
})
