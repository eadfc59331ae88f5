import { z } from 'zod'
import { planes } from '../kinds'
import { assumed, type Stated, stated } from '../units'
import { filled, type Words, words } from '../words'
import { across, arched, body, drawnWidth_mm, ofMaterial } from './bay'
import { bondBreaker, breakerLine, breakerTape, sealantMu } from './bead'
import { inGap } from './gap'
import { sealKind } from './kind'
import { rangeOf, steady } from './resistance'
import { mostDepth_mm, type SealChoice, type SealValue } from './seal-kind'

const depth: SealValue = {
  id: 'sealant.depth',
  key: 'depth_mm',
  name: words('Bead depth', 'Fugentiefe'),
  unit: 'mm',
  bounds: { unit: 'mm', min: 1, max: mostDepth_mm },
  within: 'depth',
  because: words('depth of the bead at its middle', 'Tiefe der Fuge in der Mitte'),
}
const rod: SealValue = {
  id: 'sealant.rod',
  key: 'rod_mm',
  name: words('Backing rod', 'Rundschnur'),
  unit: 'mm',
  bounds: { unit: 'mm', min: 4, max: 80 },
  because: words('diameter of the rod before it is pressed in', 'Durchmesser der Schnur vor dem Einbau'),
}
const share: SealValue = {
  id: 'sealant.share',
  key: 'share_pct',
  name: words('Movement share', 'Bewegungsaufnahme'),
  unit: 'pct',
  bounds: { unit: 'pct', min: 1, max: 100 },
  because: words('as declared by the product', 'nach Angabe des Produkts'),
}
const mu: SealValue = {
  id: 'sealant.mu',
  key: 'mu',
  name: words('Vapour resistance µ', 'Dampfwiderstand µ'),
  unit: 'one',
  bounds: { unit: 'one', min: 1, max: 1e6 },
  because: words('as declared by the product', 'nach Angabe des Produkts'),
  fallback: () => sealantMu,
}

const sealantClasses = ['25LM', '25HM', '20LM', '20HM', '12.5E', '12.5P', '7.5P'] as const
type SealantClass = (typeof sealantClasses)[number]
const classOf = (value: SealantClass) => ({ value, name: words(`class ${value}`, `Klasse ${value}`) })
const classChoice: SealChoice = {
  id: 'sealant.class',
  key: 'class',
  name: words('Sealant class', 'Dichtstoffklasse'),
  choices: [classOf(sealantClasses[0]), ...sealantClasses.slice(1).map(classOf)],
  because: words('movement and modulus, as declared', 'Bewegung und Modul, nach Angabe des Produkts'),
}

type Sealant = {
  readonly kind: 'sealant'
  readonly id: string
  readonly plane: (typeof planes)[number]
  readonly gap?: 'rebate'
  readonly depth_mm?: Stated<number>
  readonly rod_mm?: Stated<number>
  readonly share_pct?: Stated<number>
  readonly mu?: Stated<number>
  /** a tape behind the bead that it does not stick to; counts only where there is no rod */
  readonly breaker?: Stated<'yes' | 'no'>
  /** as it is sold: movement and modulus (ISO 11600) */
  readonly class?: Stated<SealantClass>
}

/** How far the rod's face bulges into the bead, as a share of the joint's width: ours, a rod pressed flat at its flanks. */
const bulge = 0.25

/**
 * A rod of diameter d pressed between two flanks: it keeps its area, lies flat against both and bulges at both ends by
 * half an ellipse. Gives the length of the flat part and the bulge; a rod thinner than the joint stays round.
 */
const pressed = (rod_mm: number, width_mm: number): { flat_mm: number; rise_mm: number } => {
  const rise_mm = bulge * width_mm
  const ends_mm2 = (Math.PI / 2) * width_mm * rise_mm
  return { flat_mm: Math.max(0, ((Math.PI / 4) * rod_mm * rod_mm - ends_mm2) / width_mm), rise_mm }
}

/** A gunned sealant bead, on a backing rod, on a bond breaker, or on nothing. */
export const sealant = sealKind<Sealant>({
  kind: 'sealant',
  name: words('Sealant bead', 'Dichtstofffuge'),
  shows: 'silicone',
  schema: z.strictObject({
    kind: z.literal('sealant'),
    id: z.string(),
    plane: z.enum(planes),
    ...inGap,
    depth_mm: stated(z.number().positive().max(mostDepth_mm)).exactOptional(),
    rod_mm: stated(z.number().positive().max(80)).exactOptional(),
    share_pct: stated(z.number().positive().max(100)).exactOptional(),
    mu: stated(z.number().min(1).max(1e6)).exactOptional(),
    breaker: stated(z.enum(['yes', 'no'])).exactOptional(),
    class: stated(z.enum(sealantClasses)).exactOptional(),
  }),
  planes: ['outer', 'inner'],
  inRebate: true,
  serves: it => [it.plane],
  values: [depth, rod, share, mu],
  choices: [bondBreaker, classChoice],
  fresh: (id, plane, bay) => ({
    kind: 'sealant',
    id,
    plane,
    depth_mm: assumed(Math.max(6, Math.round((bay.width_mm.min + bay.width_mm.max) / 4))),
    rod_mm: assumed(rodFor(bay.width_mm.min, bay.width_mm.max)),
    share_pct: assumed(25),
  }),
  takesDepth: (it, width_mm) =>
    beadDepth_mm(it, width_mm) + (it.rod_mm ? rodLength_mm(it.rod_mm.value, width_mm) : 0),
  lay: (it, bay) => {
    const width_mm = drawnWidth_mm(bay)
    const inward = it.plane === 'outer'
    const face = inward ? bay.from_mm : bay.to_mm
    const towards = inward ? 1 : -1
    const slot_mm = bay.to_mm - bay.from_mm
    const deep_mm = Math.min(beadDepth_mm(it, width_mm), slot_mm)
    const back = face + towards * deep_mm
    const bead = (to_mm: number) =>
      body(it.id, 'bead', across(bay, Math.min(face, to_mm), Math.max(face, to_mm)), ofMaterial('silicone'))
    const { flat_mm, rise_mm } = pressed(it.rod_mm?.value ?? 0, width_mm)
    // a rod that is far too thick ends where the joint does; where a bead leaves no room for one, none is seen
    const room_mm = slot_mm - deep_mm - 2 * rise_mm
    if (!it.rod_mm || room_mm < 0)
      return { regions: [bead(back)], lines: onBreaker(it) ? [breakerLine(it.id, bay, back)] : [] }
    const near = back + towards * rise_mm
    const far = near + towards * Math.min(flat_mm, room_mm)
    const front = arched(bay, near, -towards * rise_mm)
    const rear = arched(bay, far, towards * rise_mm).toReversed()
    const outline = inward ? [...front.toReversed(), ...rear.toReversed()] : [...front, ...rear]
    return { regions: [bead(near), body(it.id, 'rod', outline, ofMaterial('pe-foam'))], lines: [] }
  },
  grips: (it, bay) => {
    const width_mm = drawnWidth_mm(bay)
    const back =
      it.plane === 'outer' ? bay.from_mm + beadDepth_mm(it, width_mm) : bay.to_mm - beadDepth_mm(it, width_mm)
    const along = it.plane === 'outer' ? 1 : -1
    return [{ field: depth.id, at: [bay.wallFace[0][0] + width_mm / 2, back], along: [0, along] }]
  },
  sd_m: it => {
    if (it.depth_mm === undefined) return undefined
    const depth_m = it.depth_mm.value / 1000
    const at = rangeOf(it, mu)
    return steady(at && { min: at.min * depth_m, max: at.max * depth_m })
  },
  takes: it => (it.share_pct ? { by: 'share', share_pct: it.share_pct.value } : { by: 'nothing' }),
  bonds: (it, bay, behind) => {
    const width_mm = drawnWidth_mm(bay)
    const flank = beadDepth_mm(it, width_mm) + (it.rod_mm ? pressed(it.rod_mm.value, width_mm).rise_mm : 0)
    const flanks = [
      { to: 'wall', width_mm: flank },
      { to: 'frame', width_mm: flank },
    ] as const
    return it.rod_mm || onBreaker(it) || !behind ? flanks : [...flanks, { to: 'seal', width_mm }]
  },
  needs: (it, bay, length_mm) => [
    {
      what: words('sealant', 'Dichtstoff'),
      amount: (drawnWidth_mm(bay) * beadDepth_mm(it, drawnWidth_mm(bay)) * length_mm) / 1000,
      unit: 'ml',
    },
    ...(it.rod_mm
      ? [
          {
            what: filled(words('backing rod Ø {0}', 'Rundschnur Ø {0}'), `${it.rod_mm.value}`),
            amount: length_mm,
            unit: 'mm' as const,
          },
        ]
      : []),
    ...(onBreaker(it) ? [{ what: breakerTape, amount: length_mm, unit: 'mm' as const }] : []),
  ],
  called: it => filled(calledBy(it), it.depth_mm ? `${it.depth_mm.value}` : '?', `${it.rod_mm?.value ?? ''}`),
})

const onBreaker = (it: Sealant): boolean => !it.rod_mm && it.breaker?.value === 'yes'

const calledBy = (it: Sealant): Words => {
  if (it.rod_mm) return words('sealant {0} deep, rod Ø {1}', 'Dichtstoff {0} tief, Schnur Ø {1}')
  if (onBreaker(it)) return words('sealant {0} deep, bond breaker', 'Dichtstoff {0} tief, Trennstreifen')
  return words('sealant {0} deep, no rod', 'Dichtstoff {0} tief, ohne Schnur')
}

/** Where the depth is not stated, the bead is drawn half as deep as wide. */
const beadDepth_mm = (it: Sealant, width_mm: number): number => it.depth_mm?.value ?? width_mm / 2

const rodLength_mm = (rod_mm: number, width_mm: number): number => {
  const { flat_mm, rise_mm } = pressed(rod_mm, width_mm)
  return flat_mm + 2 * rise_mm
}

/** Stock diameters of backing rod: common practice, no source. */
export const rodSizes_mm = [6, 8, 10, 13, 15, 18, 20, 25, 30, 40, 50] as const

/** The stock rod that is nearest to 125 % of the middle of a joint: common practice, "about 25 % wider". */
const rodFor = (narrowest_mm: number, widest_mm: number): number => {
  const wanted = 0.625 * (narrowest_mm + widest_mm)
  return [...rodSizes_mm].reduce(
    (best, one) => (Math.abs(one - wanted) < Math.abs(best - wanted) ? one : best),
    6,
  )
}
