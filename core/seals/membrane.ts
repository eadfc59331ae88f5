import { z } from 'zod'
import { directionOf, lengthOf, type Point, startOf } from '../geometry'
import { planes } from '../kinds'
import { assumed, type Stated, stated } from '../units'
import { filled, words } from '../words'
import { body, drawnWidth_mm } from './bay'
import { sealKind } from './kind'
import { type Bay, mostDepth_mm, type SealValue } from './seal-kind'

const bondFrame: SealValue = {
  id: 'membrane.bond-frame',
  key: 'bondFrame_mm',
  name: words('Bond on the frame', 'Klebung am Rahmen'),
  unit: 'mm',
  bounds: { unit: 'mm', min: 5, max: mostDepth_mm },
  within: 'depth',
  because: words('on the flank of the frame, before it is set', 'an der Rahmenflanke, vor dem Einbau'),
}
const bondWall: SealValue = {
  id: 'membrane.bond-wall',
  key: 'bondWall_mm',
  name: words('Bond on the wall', 'Klebung an der Wand'),
  unit: 'mm',
  bounds: { unit: 'mm', min: 5, max: 300 },
  because: words('on the flank of the reveal, then round its edge', 'an der Leibung, dann um die Kante'),
}
const slack: SealValue = {
  id: 'membrane.slack',
  key: 'slack_mm',
  name: words('Slack of the loop', 'Schlaufe'),
  unit: 'mm',
  bounds: { unit: 'mm', min: 0, max: 40 },
  because: words('length that the fold holds over the joint', 'Länge, die die Falte über der Fuge hält'),
}
const sd: SealValue = {
  id: 'membrane.sd',
  key: 'sd_m',
  name: words('Vapour resistance s_d', 'Dampfwiderstand s_d'),
  unit: 'm',
  bounds: { unit: 'm', min: 0.01, max: 2000 },
  because: words('dry state, as declared by the product', 'trocken, nach Angabe des Produkts'),
  fallback: {
    value: 10,
    // inner membranes 10 to 55 m: from memory, medium confidence
    band: { min: 10, max: 55 },
    why: words('inner membranes lie between 10 and 55 m', 'innere Folien liegen zwischen 10 und 55 m'),
  },
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

type Membrane = {
  readonly kind: 'membrane'
  readonly id: string
  readonly plane: (typeof planes)[number]
  readonly bondFrame_mm: Stated<number>
  readonly bondWall_mm: Stated<number>
  readonly slack_mm: Stated<number>
  readonly sd_m?: Stated<number>
  readonly sdHumid_m?: Stated<number>
}

/** Thickness and conductivity of a fleece-covered film: ours, of no weight for heat. */
const thickness_mm = 0.6
const lambda_W_mK = 0.22

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
    bondFrame_mm: stated(z.number().positive().max(mostDepth_mm)),
    bondWall_mm: stated(z.number().positive().max(300)),
    slack_mm: stated(z.number().min(0).max(40)),
    sd_m: stated(z.number().positive().max(2000)).exactOptional(),
    sdHumid_m: stated(z.number().positive().max(2000)).exactOptional(),
  }),
  planes: ['inner'],
  values: [bondFrame, bondWall, slack, sd, sdHumid],
  fresh: (id, plane) => ({
    kind: 'membrane',
    id,
    plane,
    bondFrame_mm: assumed(20),
    bondWall_mm: assumed(50),
    slack_mm: assumed(8),
  }),
  takesDepth: (it, width_mm) => foldDepth_mm(width_mm, it.slack_mm.value),
  lay: (it, bay) => {
    const fold = foldPath(bay, it.slack_mm.value)
    const [start] = fold
    const onFrame: readonly Point[] = start
      ? [[start[0], Math.max(bay.from_mm, bay.to_mm - it.bondFrame_mm.value)]]
      : []
    const path = [...onFrame, ...fold, ...onWall(bay, it.bondWall_mm.value)]
    const band = it.sd_m
      ? { min: it.sd_m.value, max: it.sd_m.value }
      : (sd.fallback?.band ?? { min: 0, max: 0 })
    const humid = it.sdHumid_m ? { min: it.sdHumid_m.value, max: it.sdHumid_m.value } : band
    const sag =
      it.slack_mm.value > 0 ? [body(it.id, 'fold', fold.toReversed(), { kind: 'air', vented: 'closed' })] : []
    return {
      regions: sag,
      lines: [
        {
          id: `${it.id}.path`,
          part: it.id,
          path,
          thickness_mm,
          lambda_W_mK,
          sd_m: { winter: band, summer: humid },
        },
      ],
    }
  },
  grips: (it, bay) => {
    const bond = [...bay.flank.slice(0, 1), ...onWall(bay, it.bondWall_mm.value)]
    const end = bond.at(-1)
    const before = bond.at(-2)
    return end && before ? [{ field: bondWall.id, at: end, along: directionOf(before, end) }] : []
  },
  sd_m: it => {
    const dry = it.sd_m ? { min: it.sd_m.value, max: it.sd_m.value } : sd.fallback?.band
    if (dry === undefined) return undefined
    return { winter: dry, summer: it.sdHumid_m ? { min: it.sdHumid_m.value, max: it.sdHumid_m.value } : dry }
  },
  takes: it => ({ by: 'slack', loop_mm: it.slack_mm.value }),
  bonds: it => [
    { to: 'wall', width_mm: it.bondWall_mm.value },
    { to: 'frame', width_mm: it.bondFrame_mm.value },
  ],
  needs: (it, bay, length_mm) => [
    {
      what: filled(words('membrane, at least {0} wide', 'Folie, mindestens {0} breit'), `${Math.ceil(it.bondFrame_mm.value + drawnWidth_mm(bay) + it.slack_mm.value + it.bondWall_mm.value)}`), // prettier-ignore
      amount: length_mm,
      unit: 'mm',
    },
  ],
  called: it =>
    it.sd_m
      ? filled(words('membrane, s_d {0} m', 'Folie, s_d {0} m'), `${it.sd_m.value}`)
      : words('membrane, s_d not stated', 'Folie, s_d nicht genannt'),
})

const foldSteps = 12

/** One wave across the joint, hanging by `depth`: (1 − cos) / 2, from the frame to the wall. */
const wave = (width_mm: number, depth_mm: number): readonly Point[] =>
  Array.from({ length: foldSteps + 1 }, (_, i): Point => {
    const t = i / foldSteps
    return [width_mm * (1 - t), (-depth_mm * (1 - Math.cos(2 * Math.PI * t))) / 2]
  })

/** How deep a fold hangs so that its path is longer than the joint by the slack: bisection to a thousandth. */
const foldDepth_mm = (width_mm: number, slack_mm: number): number => {
  if (slack_mm <= 0) return 0
  let low = 0
  let high = width_mm + slack_mm
  while (high - low > 1e-3) {
    const middle = (low + high) / 2
    if (lengthOf(wave(width_mm, middle)) < width_mm + slack_mm) low = middle
    else high = middle
  }
  return high
}

const foldPath = (bay: Bay, slack_mm: number): readonly Point[] => {
  const width_mm = drawnWidth_mm(bay)
  const wall = bay.wallFace[0][0]
  if (slack_mm <= 0) return [[wall + width_mm, bay.to_mm], [wall, bay.to_mm]] // prettier-ignore
  return wave(width_mm, foldDepth_mm(width_mm, slack_mm)).map(([x, y]): Point => [wall + x, bay.to_mm + y])
}

/** The bond on the wall: along the flank of the reveal, then round its edge on the room side. */
const onWall = (bay: Bay, bond_mm: number): readonly Point[] => startOf(bay.flank, bond_mm).slice(1)
