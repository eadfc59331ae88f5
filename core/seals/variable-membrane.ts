import { z } from 'zod'
import type { Seasonal } from '../geometry'
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

const dry: SealValue = {
  id: 'variable-membrane.sd-dry',
  key: 'sdDry_m',
  name: words('s_d when dry', 's_d trocken'),
  unit: 'm',
  bounds: { unit: 'm', min: 0.01, max: 2000 },
  because: words('as declared by the product', 'nach Angabe des Produkts'),
  fallback: () => ({
    value: 15,
    // variable retarders 10 m and more (published), membranes for windows 15 to 25 m (from memory)
    band: { min: 10, max: 25 },
    why: words('variable membranes lie between 10 and 25 m dry', 'feuchtevariable Folien liegen trocken zwischen 10 und 25 m'), // prettier-ignore
  }),
}
const humid: SealValue = {
  ...dry,
  id: 'variable-membrane.sd-humid',
  key: 'sdHumid_m',
  name: words('s_d when humid', 's_d feucht'),
  fallback: () => ({
    value: 0.25,
    // 0.25 m for variable retarders (published), 0.1 to 0.4 m for membranes for windows (from memory)
    band: { min: 0.1, max: 0.4 },
    why: words('variable membranes lie between 0.1 and 0.4 m humid', 'feuchtevariable Folien liegen feucht zwischen 0,1 und 0,4 m'), // prettier-ignore
  }),
}

type VariableMembrane = RevealFilm & {
  readonly kind: 'variable-membrane'
  readonly sdDry_m?: Stated<number>
  readonly sdHumid_m?: Stated<number>
}

/** A membrane that is tight to vapour while it is dry and opens when it gets humid: a joint behind it can dry to the room. */
export const variableMembrane = sealKind<VariableMembrane>({
  kind: 'variable-membrane',
  name: words('Moisture-variable membrane', 'Feuchtevariable Folie'),
  schema: z.strictObject({
    kind: z.literal('variable-membrane'),
    id: z.string(),
    plane: z.enum(planes),
    ...revealFilmShape,
    sdDry_m: stated(z.number().positive().max(2000)).exactOptional(),
    sdHumid_m: stated(z.number().positive().max(2000)).exactOptional(),
  }),
  planes: ['inner'],
  serves: it => [it.plane],
  values: [...revealFilmValues, dry, humid],
  choices: [],
  fresh: (id, plane) => ({
    kind: 'variable-membrane',
    id,
    plane,
    ...freshRevealFilm,
  }),
  ...revealFilm(it => resistanceOf(it), words('moisture-variable membrane', 'feuchtevariable Folie')),
  called: it =>
    it.sdDry_m && it.sdHumid_m
      ? filled(words('variable membrane, s_d {0} to {1} m', 'feuchtevariable Folie, s_d {0} bis {1} m'), `${it.sdHumid_m.value}`, `${it.sdDry_m.value}`) // prettier-ignore
      : words('variable membrane, s_d not stated', 'feuchtevariable Folie, s_d nicht genannt'),
})

const resistanceOf = (it: VariableMembrane): Seasonal | undefined => {
  const winter = rangeOf(it, dry)
  const summer = rangeOf(it, humid)
  return winter && summer && { winter, summer }
}
