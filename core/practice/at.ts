import { frameMaterials } from '../kinds'
import { cite } from '../sources'
import { words } from '../words'
import { inRange } from './anchors'
import { spacings } from './fixing-rows'
import { general } from './general'
import { leastJoints } from './least-joint'
import type { Practice, Row } from './limit'

/** A side of at most this clear width needs one fixing only. */
const small_mm = 450
const summary = cite('fixing-and-joint-summary', 'published', 'ÖNORM B 5320')
const materials = cite('installation-materials', 'published')

/** Austrian practice. */
export const at: Practice = {
  id: 'AT',
  edition: '1',
  name: words('Austria', 'Österreich'),
  limits: {
    ...general,
    'planes-filled': [
      { when: {}, then: { planes: ['outer', 'middle', 'inner'] }, cite: summary, ifBroken: 'not-met' },
    ],
    'foam-as-air-seal': [
      { when: {}, then: 'not-accepted', cite: cite('foam-is-no-seal', 'memory'), ifBroken: 'not-met' },
    ],
    // The table is German; half the width, 6 to 15 mm deep, is asked alike.
    'sealant-depth': [
      {
        when: { width_mm: { upTo: 25 } },
        then: { share: 0.5, within_mm: 2, least_mm: 6, most_mm: 15 },
        cite: cite('resealing-table', 'memory', 'DIN 18540'),
        ifBroken: 'not-met',
      },
      {
        when: { width_mm: { above: 25 } },
        then: { share: 0.5, within_mm: 3, least_mm: 6, most_mm: 15 },
        cite: cite('resealing-table', 'memory', 'DIN 18540'),
        ifBroken: 'not-met',
      },
    ],
    'backing-oversize': [
      { when: {}, then: { share_pct: { min: 115, max: 130 } }, cite: materials, ifBroken: 'not-met' },
    ],
    'bonded-faces': [{ when: {}, then: { faces: 2 }, cite: materials, ifBroken: 'not-met' }],
    'least-joint': leastJoints(),
    'joint-for-movement': [
      { when: { table: ['has-cell'] }, then: { basis: 'total' }, cite: materials, ifBroken: 'advice' },
      { when: { table: ['no-cell'] }, then: { basis: 'total' }, cite: materials, ifBroken: 'not-met' },
    ],
    'membrane-on-reveal': [
      { when: { of: ['width'] }, then: { most: 60 }, cite: materials, ifBroken: 'not-met' },
      { when: { of: ['share'] }, then: { most: 50 }, cite: materials, ifBroken: 'not-met' },
      { when: { of: ['bonded'] }, then: { least: 75 }, cite: materials, ifBroken: 'not-met' },
    ],
    'fixing-corner': [
      {
        when: {},
        then: { from: 'inner-corner', least_mm: 100, most_mm: 200 },
        cite: summary,
        ifBroken: 'not-met',
      },
    ],
    'surface-criterion': [
      {
        when: { room: ['dwelling'], air: ['norm'] },
        then: { fRsi: 0.71 },
        cite: cite('oenorm-b-8110-2', 'memory'),
        ifBroken: 'not-met',
      },
      ...general['surface-criterion'],
    ],
    'fixing-spacing': austrianSpacings(),
    'fixing-at-member': [
      {
        when: {},
        then: { from: 'edge', least_mm: 100, most_mm: 150 },
        cite: cite('fixing-and-joint-summary', 'memory'),
        ifBroken: 'not-met',
      },
    ],
    'distance-blocks': [
      { when: {}, then: { corner_mm: 300, isOptional: true }, cite: summary, ifBroken: 'advice' },
    ],
    guarding: [
      {
        when: { fall_mm: { upTo: 12_000 } },
        then: { sill_mm: 1000 },
        cite: cite('oib-4', 'memory'),
        ifBroken: 'not-met',
      },
      {
        when: { fall_mm: { above: 12_000 } },
        then: { sill_mm: 1100 },
        cite: cite('oib-4', 'memory'),
        ifBroken: 'not-met',
      },
    ],
    cover: [
      {
        when: { by: ['insulation'] },
        then: { least_mm: 30 },
        cite: cite('trade', 'memory'),
        ifBroken: 'advice',
      },
    ],
    'frame-position': [
      {
        when: { wall: ['one-leaf'] },
        then: { least: 1 / 3, most: 2 / 3 },
        cite: cite('wall-position-article', 'published'),
        ifBroken: 'advice',
      },
      {
        when: { wall: ['insulated'] },
        then: { most: 0 },
        cite: cite('wall-position-article', 'published'),
        ifBroken: 'advice',
      },
    ],
    'sill-overhang': [{ when: {}, ...inRange([20, 30], cite('aluminium-sills', 'memory')) }],
    'second-plane': [
      {
        when: {},
        then: 'asked',
        cite: cite('fixing-and-joint-summary', 'memory'),
        ifBroken: 'not-met',
      },
    ],
  },
  notAsked: {
    'perimeter-gap': words(
      'Austrian practice sets the least width by a table of frame lengths',
      'in Österreich gilt die Mindestbreite nach der Tabelle der Rahmenlängen',
    ),
    'sill-throat': words(
      'a drip groove is asked for in Britain alone',
      'eine Abtropfnut wird nur in Großbritannien verlangt',
    ),
  },
  noFigure: {
    burglary: words(
      'Austrian practice has no figure of its own',
      'in Österreich ist kein eigener Wert bekannt',
    ),
  },
}

/** 700 mm whatever the frame is made of; on a side of 450 mm clear width one fixing is enough. */
function austrianSpacings(): readonly Row<'fixing-spacing'>[] {
  const rows = spacings(
    { 'pvc-white': 700, 'pvc-coloured': 700, timber: 700, 'timber-aluminium': 700, aluminium: 700 },
    summary,
  )
  const small: Row<'fixing-spacing'> = {
    when: { frame: frameMaterials, burglary: ['no'], length_mm: { upTo: small_mm } },
    then: { most_mm: 700, least: 1 },
    cite: summary,
    ifBroken: 'not-met',
  }
  return [small, ...rows]
}
