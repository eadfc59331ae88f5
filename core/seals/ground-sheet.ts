import { z } from 'zod'
import { planes } from '../kinds'
import { assumed, type Stated, stated } from '../units'
import { filled, words } from '../words'
import { bondFrame, bondWall, filmBonds, filmDepth_mm, filmGrips, girth_mm, layFilm, slack } from './film'
import { sealKind } from './kind'
import { rangeOf, steady } from './resistance'
import { mostDepth_mm, type SealValue } from './seal-kind'

const thickness: SealValue = {
  id: 'sheet.thickness',
  key: 'thickness_mm',
  name: words('Thickness', 'Dicke'),
  unit: 'mm',
  bounds: { unit: 'mm', min: 0.3, max: 6 },
  because: words('as declared by the product', 'nach Angabe des Produkts'),
}
/** Sheets of one material differ by a factor of fifty: nothing is fallen back on. */
const sd: SealValue = {
  id: 'sheet.sd',
  key: 'sd_m',
  name: words('Vapour resistance s_d', 'Dampfwiderstand s_d'),
  unit: 'm',
  bounds: { unit: 'm', min: 0.1, max: 2000 },
  because: words('as declared by the product: never assumed', 'nach Angabe des Produkts: nie angenommen'),
}

const sheets = ['epdm', 'bitumen'] as const
type Sheet = (typeof sheets)[number]

type GroundSheet = {
  readonly kind: 'ground-sheet'
  readonly id: string
  readonly plane: (typeof planes)[number]
  readonly sheet: Stated<Sheet>
  readonly bondFrame_mm: Stated<number>
  readonly bondWall_mm: Stated<number>
  readonly slack_mm: Stated<number>
  readonly thickness_mm: Stated<number>
  readonly sd_m?: Stated<number>
}

const sheetName = {
  epdm: words('EPDM sheet', 'EPDM-Bahn'),
  bitumen: words('bitumen sheet', 'Bitumenbahn'),
} as const
/** Conductivities of the material library. */
const lambda_W_mK: Readonly<Record<Sheet, number>> = { epdm: 0.25, bitumen: 0.23 }

/** A waterproof sheet where a frame stands at floor level: from its flank over the joint down onto the wall. */
export const groundSheet = sealKind<GroundSheet>({
  kind: 'ground-sheet',
  name: words('Ground-level sheet', 'Abdichtungsbahn am Boden'),
  schema: z.strictObject({
    kind: z.literal('ground-sheet'),
    id: z.string(),
    plane: z.enum(planes),
    sheet: stated(z.enum(sheets)),
    bondFrame_mm: stated(z.number().positive().max(mostDepth_mm)),
    bondWall_mm: stated(z.number().positive().max(300)),
    slack_mm: stated(z.number().min(0).max(40)),
    thickness_mm: stated(z.number().positive().max(6)),
    sd_m: stated(z.number().positive().max(2000)).exactOptional(),
  }),
  planes: ['outer', 'inner'],
  serves: it => [it.plane],
  only: words('at floor level', 'am Bodenanschluss'),
  values: [bondFrame, bondWall, slack, thickness, sd],
  choices: [
    {
      id: 'sheet.kind',
      key: 'sheet',
      name: words('Sheet', 'Bahn'),
      choices: [
        { value: 'epdm', name: sheetName.epdm },
        { value: 'bitumen', name: sheetName.bitumen },
      ],
      because: words('what the sheet is made of', 'woraus die Bahn besteht'),
    },
  ],
  fresh: (id, plane) => ({
    kind: 'ground-sheet',
    id,
    plane,
    sheet: assumed('epdm'),
    bondFrame_mm: assumed(50),
    // the height of an upstand above ground
    bondWall_mm: assumed(150),
    slack_mm: assumed(8),
    thickness_mm: assumed(1.2),
  }),
  takesDepth: filmDepth_mm,
  lay: (it, bay) => {
    const made = { thickness_mm: it.thickness_mm.value, lambda_W_mK: lambda_W_mK[it.sheet.value] }
    const sd_m = steady(rangeOf(it, sd))
    return layFilm(it, bay, sd_m ? { ...made, sd_m } : made)
  },
  grips: filmGrips,
  sd_m: it => steady(rangeOf(it, sd)),
  takes: it => ({ by: 'slack', loop_mm: it.slack_mm.value }),
  bonds: filmBonds,
  needs: (it, bay, length_mm) => [
    {
      what: filled(words('{0}, at least {1} wide', '{0}, mindestens {1} breit'), sheetName[it.sheet.value], `${Math.ceil(girth_mm(it, bay))}`), // prettier-ignore
      amount: length_mm,
      unit: 'mm',
    },
  ],
  called: it =>
    it.sd_m
      ? filled(words('{0}, s_d {1} m', '{0}, s_d {1} m'), sheetName[it.sheet.value], `${it.sd_m.value}`)
      : filled(words('{0}, s_d not stated', '{0}, s_d nicht genannt'), sheetName[it.sheet.value]),
})
