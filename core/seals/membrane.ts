import { z } from 'zod'
import { planes } from '../kinds'
import { type Stated, stated } from '../units'
import { filled, words } from '../words'
import {
  freshRevealFilm,
  revealFilm,
  type RevealFilm,
  revealFilmShape,
  revealFilmValues,
} from './reveal-film'
import { sealKind } from './kind'
import { rangeOf } from './resistance'
import type { SealValue } from './seal-kind'
import type { Seasonal } from '../geometry'

const sd: SealValue = {
  id: 'membrane.sd',
  key: 'sd_m',
  name: words('Vapour resistance s_d', 'Dampfwiderstand s_d'),
  unit: 'm',
  bounds: { unit: 'm', min: 0.01, max: 2000 },
  because: words('dry state, as declared by the product', 'trocken, nach Angabe des Produkts'),
  // both from memory, medium confidence
  fallback: it =>
    it.plane === 'outer'
      ? {
          value: 0.1,
          band: { min: 0.02, max: 0.5 },
          why: words('outer membranes lie between 0.02 and 0.5 m', 'äußere Folien liegen zwischen 0,02 und 0,5 m'),
        }
      : {
          value: 10,
          band: { min: 10, max: 55 },
          why: words('inner membranes lie between 10 and 55 m', 'innere Folien liegen zwischen 10 und 55 m'),
        }, // prettier-ignore
}
const sdHumid: SealValue = {
  id: 'membrane.sd-humid',
  key: 'sdHumid_m',
  name: words('s_d when humid', 's_d feucht'),
  unit: 'm',
  bounds: { unit: 'm', min: 0.01, max: 2000 },
  because: words(
    'for a membrane that opens with moisture; else as dry',
    'für feuchtevariable Folien; sonst wie trocken',
  ),
}

type Membrane = RevealFilm & {
  readonly kind: 'membrane'
  readonly sd_m?: Stated<number>
  readonly sdHumid_m?: Stated<number>
}

/**
 * A membrane over the joint: bonded to the flank of the frame, a fold across the joint that lets it move, and bonded to
 * the flank of the reveal, round its edge where the flank is too short.
 */
export const membrane = sealKind<Membrane>({
  kind: 'membrane',
  name: words('Membrane', 'Folie'),
  schema: z.strictObject({
    kind: z.literal('membrane'),
    id: z.string(),
    plane: z.enum(planes),
    ...revealFilmShape,
    sd_m: stated(z.number().positive().max(2000)).exactOptional(),
    sdHumid_m: stated(z.number().positive().max(2000)).exactOptional(),
  }),
  planes: ['outer', 'inner'],
  serves: it => [it.plane],
  values: [...revealFilmValues, sd, sdHumid],
  choices: [],
  fresh: (id, plane) => ({
    kind: 'membrane',
    id,
    plane,
    ...freshRevealFilm,
  }),
  ...revealFilm(it => resistanceOf(it), words('membrane', 'Folie')),
  called: it =>
    it.sd_m
      ? filled(words('membrane, s_d {0} m', 'Folie, s_d {0} m'), `${it.sd_m.value}`)
      : words('membrane, s_d not stated', 'Folie, s_d nicht genannt'),
})

const resistanceOf = (it: Membrane): Seasonal | undefined => {
  const dry = rangeOf(it, sd)
  return dry && { winter: dry, summer: rangeOf(it, sdHumid) ?? dry }
}
