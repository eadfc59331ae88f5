import type { Joint, Project } from '../../core/detail'
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
          thickness_mm: specified(175),
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
      position_mm: specified(0),
      mullions: [],
      fixings: [],
      blocks: [],
      stays: [],
      sides: { head: [zone('head')], left: [zone('left')], right: [zone('right')], sill: [zone('sill')] },
    },
  },
})

const zone = (side: Side) => ({ id: `zone-${side}`, joint: 'joint-1', to_mm: 10000 })
