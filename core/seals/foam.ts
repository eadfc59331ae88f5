import { z } from 'zod'
import { planes } from '../kinds'
import { type Stated, stated } from '../units'
import { words } from '../words'
import { across, body, ofMaterial } from './bay'
import { filled_l, fillBonds } from './fill'
import { inGap } from './gap'
import { sealKind } from './kind'
import { yesNo } from './yes-no'

type Foam = {
  readonly kind: 'foam'
  readonly id: string
  readonly plane: (typeof planes)[number]
  readonly gap?: 'rebate'
  /** whether the product is declared as an air seal */
  readonly rated?: Stated<'yes' | 'no'>
}

/** Gun foam: fills the middle plane between the other seals. */
export const foam = sealKind<Foam>({
  kind: 'foam',
  name: words('Gun foam', 'Ortschaum'),
  shows: 'gun-foam',
  schema: z.strictObject({
    kind: z.literal('foam'),
    id: z.string(),
    plane: z.enum(planes),
    ...inGap,
    rated: stated(z.enum(['yes', 'no'])).exactOptional(),
  }),
  planes: ['middle'],
  inRebate: true,
  serves: it => [it.plane],
  values: [],
  choices: [
    {
      id: 'foam.rated',
      key: 'rated',
      name: words('Rated as an air seal', 'Als Luftdichtung ausgewiesen'),
      choices: yesNo,
      because: words('as declared by the product', 'nach Angabe des Produkts'),
    },
  ],
  fresh: (id, plane) => ({ kind: 'foam', id, plane }),
  takesDepth: () => 'rest',
  lay: (it, bay) => ({
    regions: [body(it.id, 'fill', across(bay, bay.from_mm, bay.to_mm), ofMaterial('gun-foam'))],
    lines: [],
  }),
  grips: () => [],
  // it serves the middle plane, whose resistance no rule compares
  sd_m: () => undefined,
  takes: () => ({ by: 'nothing' }),
  bonds: (_it, bay) => fillBonds(bay),
  // as cured: no expansion is counted
  needs: (_it, bay, length_mm) => [
    { what: words('gun foam', 'Ortschaum'), amount: filled_l(bay, length_mm), unit: 'l' },
  ],
  called: () => words('foam over the full depth', 'Schaum über die volle Tiefe'),
})
