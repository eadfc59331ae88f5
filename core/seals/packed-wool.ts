import { z } from 'zod'
import { planes } from '../kinds'
import { assumed, type Stated, stated } from '../units'
import { words } from '../words'
import { across, body, ofMaterial } from './bay'
import { fillBonds, filled_l } from './fill'
import { inGap } from './gap'
import { sealKind } from './kind'

const fibres = ['mineral', 'hemp'] as const
type Fibre = (typeof fibres)[number]

type Wool = {
  readonly kind: 'packed-wool'
  readonly id: string
  readonly plane: (typeof planes)[number]
  readonly gap?: 'rebate'
  readonly fibre: Stated<Fibre>
}

/** What each fibre is in a section. */
const materialOf: Readonly<Record<Fibre, string>> = { mineral: 'mineral-wool', hemp: 'hemp-wool' }
const nameOf = {
  mineral: words('mineral wool', 'Mineralwolle'),
  hemp: words('hemp', 'Hanf'),
} as const

/** Wool packed into the middle plane by hand: it insulates and takes up sound, and holds nothing. */
export const packedWool = sealKind<Wool>({
  kind: 'packed-wool',
  name: words('Packed wool', 'Stopfwolle'),
  shows: 'mineral-wool',
  schema: z.strictObject({
    kind: z.literal('packed-wool'),
    id: z.string(),
    plane: z.enum(planes),
    ...inGap,
    fibre: stated(z.enum(fibres)),
  }),
  planes: ['middle'],
  inRebate: true,
  serves: it => [it.plane],
  values: [],
  choices: [
    {
      id: 'wool.fibre',
      key: 'fibre',
      name: words('Fibre', 'Faser'),
      choices: [
        { value: 'mineral', name: nameOf.mineral },
        { value: 'hemp', name: nameOf.hemp },
      ],
      because: words('what the joint is packed with', 'womit die Fuge ausgestopft wird'),
    },
  ],
  fresh: (id, plane) => ({ kind: 'packed-wool', id, plane, fibre: assumed('mineral') }),
  takesDepth: () => 'rest',
  lay: (it, bay) => ({
    regions: [
      body(it.id, 'fill', across(bay, bay.from_mm, bay.to_mm), ofMaterial(materialOf[it.fibre.value])),
    ],
    lines: [],
  }),
  grips: () => [],
  // it serves the middle plane, whose resistance no rule compares
  sd_m: () => undefined,
  takes: () => ({ by: 'nothing' }),
  bonds: (_it, bay) => fillBonds(bay),
  // as packed: how much loose wool that takes hangs on the product
  needs: (it, bay, length_mm) => [
    { what: nameOf[it.fibre.value], amount: filled_l(bay, length_mm), unit: 'l' },
  ],
  called: it =>
    it.fibre.value === 'mineral'
      ? words('mineral wool, packed over the full depth', 'Mineralwolle, über die volle Tiefe gestopft')
      : words('hemp, packed over the full depth', 'Hanf, über die volle Tiefe gestopft'),
})
