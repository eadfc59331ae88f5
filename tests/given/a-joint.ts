import type { Block, Fixing, Joint, Project, Sill } from '../../core/detail'
import {
  assessedScrew,
  timberAsItShouldBe,
  workAsItShouldBe,
} from '../../core/detail/samples/work-as-it-should-be'
import type { FrameMaterial, RevealForm, Side } from '../../core/kinds'
import type { OwnRow } from '../../core/practice'
import type { AnySeal } from '../../core/seals'
import { specified, type Stated } from '../../core/units'

/** What of a joint a test wants to say; the rest is a 1230 × 1480 mm window of white PVC-U in a straight reveal. */
export type Wanted = {
  readonly practice?: string
  readonly own?: readonly OwnRow[]
  readonly frame?: FrameMaterial
  readonly movement_mm_m?: Stated<number>
  readonly reveal?: RevealForm
  readonly width_mm?: Stated<number>
  readonly height_mm?: Stated<number>
  readonly planned_mm?: Stated<number>
  readonly tolerance_mm?: Stated<number>
  readonly seals?: readonly AnySeal[]
  readonly sill?: Sill
  /** further members of the joint */
  readonly joint?: Partial<Joint>
}

/** A project with one opening, `opening-1`, whose four sides share the joint `joint-1`. */
export const aJoint = (it: Wanted = {}): Project => ({
  format: { name: 'jambwright', version: 2, readableFrom: 2 },
  title: { name: 'Test', office: '', author: '', place: '', number: '', note: '' },
  practice: { id: it.practice ?? 'DE', edition: '1', own: it.own ?? [] },
  next: 100,
  materials: {},
  walls: {
    'wall-1': {
      id: 'wall-1',
      name: 'Brick',
      layers: [
        { id: 'layer-1', material: 'eps', thickness_mm: specified(140), duties: ['insulating', 'rain'] },
        {
          id: 'layer-2',
          material: 'calcium-silicate-1800',
          thickness_mm: specified(240),
          duties: ['bearing'],
        },
        { id: 'layer-3', material: 'gypsum-plaster', thickness_mm: specified(15), duties: ['airtight'] },
      ],
      reveal: { form: it.reveal ?? 'butt', cover_mm: specified(30), lining_mm: specified(15) },
    },
  },
  frames: {
    'frame-1': {
      id: 'frame-1',
      name: 'Window',
      profile: 'pvc-76',
      material: it.frame ?? 'pvc-white',
      ...(it.movement_mm_m ? { movement_mm_m: it.movement_mm_m } : {}),
    },
  },
  joints: {
    'joint-1': {
      id: 'joint-1',
      name: 'Joint',
      planned_mm: it.planned_mm ?? specified(15),
      tolerance_mm: it.tolerance_mm ?? specified(2),
      seals: it.seals ?? [],
      ...it.joint,
    },
  },
  openings: {
    'opening-1': {
      id: 'opening-1',
      name: 'Window',
      wall: 'wall-1',
      frame: 'frame-1',
      width_mm: it.width_mm ?? specified(1230),
      height_mm: it.height_mm ?? specified(1480),
      position_mm: specified(20),
      mullions: [],
      fixings: [fixings(it)],
      blocks: blocks(it),
      asked: {
        exposure: specified('exposed'),
        guarding: specified('no'),
        baseKnown: specified('yes'),
        mass_kg: specified(76),
      },
      told: { ...workAsItShouldBe, ...timberAsItShouldBe },
      ...(it.sill ? { sill: it.sill } : {}),
      stays: [],
      sides: { head: [zone('head')], left: [zone('left')], right: [zone('right')], sill: [zone('sill')] },
    },
  },
})

/** The size of the frame that is wanted. */
const sizeOf = (it: Wanted) => ({ wide_mm: it.width_mm?.value ?? 1230, high_mm: it.height_mm?.value ?? 1480 })

/** Screws as every practice wants them: 140 mm from the inner corner of a frame with a face of 70 mm, 600 mm apart. */
const fixings = (it: Wanted): Fixing => {
  const { wide_mm, high_mm } = sizeOf(it)
  const count = (length_mm: number) => specified(Math.max(2, Math.ceil((length_mm - 420) / 600) + 1))
  return {
    id: 'fixing-1',
    kind: 'frame-screw',
    diameter_mm: specified(7.5),
    embedment_mm: specified(60),
    axis_mm: specified(40),
    corner_mm: specified(140),
    counts: { head: count(wide_mm), left: count(high_mm), right: count(high_mm), sill: count(wide_mm) },
    drilling: specified('rotary'),
    ...assessedScrew,
  }
}

/** Two blocks below, four beside. */
const blocks = (it: Wanted): readonly Block[] => {
  const { wide_mm, high_mm } = sizeOf(it)
  const block = (kind: Block['kind'], side: Side, at_mm: number): Block => ({
    id: `block-${side}-${at_mm}`,
    kind,
    side,
    at_mm: specified(at_mm),
    length_mm: specified(100),
  })
  return [
    block('support', 'sill', 150),
    block('support', 'sill', wide_mm - 150),
    ...(['left', 'right'] as const).flatMap(side => [
      block('distance', side, 150),
      block('distance', side, high_mm - 150),
    ]),
  ]
}

const zone = (side: Side) => ({ id: `zone-${side}`, joint: 'joint-1', to_mm: 10000 })
