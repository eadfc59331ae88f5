import { cite } from '../sources'
import { words } from '../words'
import { inRange } from './anchors'
import { spacings } from './fixing-rows'
import { general } from './general'
import { leastJoints } from './least-joint'
import type { Practice } from './limit'

/** German practice. */
export const de: Practice = {
  id: 'DE',
  edition: '1',
  name: words('Germany', 'Deutschland'),
  limits: {
    ...general,
    'planes-filled': [
      {
        when: {},
        then: { planes: ['outer', 'middle', 'inner'] },
        cite: cite('position-and-blocks-article', 'published'),
        ifBroken: 'not-met',
      },
    ],
    'foam-as-air-seal': [
      { when: {}, then: 'not-accepted', cite: cite('foam-is-no-seal', 'published'), ifBroken: 'not-met' },
    ],
    // The wider tolerance holds from 25 mm on; a joint of just 25 mm keeps the narrower one of the table.
    'sealant-depth': [
      {
        when: { width_mm: { upTo: 25 } },
        then: { share: 0.5, within_mm: 2, least_mm: 6, most_mm: 15 },
        cite: cite('resealing-table', 'published', 'DIN 18540'),
        ifBroken: 'not-met',
      },
      {
        when: { width_mm: { above: 25 } },
        then: { share: 0.5, within_mm: 3, least_mm: 6, most_mm: 15 },
        cite: cite('resealing-table', 'published', 'DIN 18540'),
        ifBroken: 'not-met',
      },
    ],
    'backing-oversize': [
      {
        when: {},
        then: { share_pct: { min: 115, max: 135 } },
        cite: cite('convention', 'ours'),
        ifBroken: 'advice',
        last: {
          then: { share_pct: { min: 110, max: 150 } },
          cite: cite('convention', 'ours'),
          ifBroken: 'not-met',
        },
      },
    ],
    'least-joint': leastJoints(),
    'joint-for-movement': [
      {
        when: { table: ['has-cell'] },
        then: { basis: 'total' },
        cite: cite('installation-materials', 'memory'),
        ifBroken: 'advice',
      },
      {
        when: { table: ['no-cell'] },
        then: { basis: 'total' },
        cite: cite('installation-materials', 'memory'),
        ifBroken: 'not-met',
      },
    ],
    'membrane-on-reveal': [
      {
        when: { of: ['width'] },
        then: { most: 60 },
        cite: cite('installation-materials', 'memory'),
        ifBroken: 'not-met',
      },
      {
        when: { of: ['share'] },
        then: { most: 50 },
        cite: cite('installation-materials', 'memory'),
        ifBroken: 'not-met',
      },
      {
        when: { of: ['bonded'] },
        then: { least: 75 },
        cite: cite('installation-materials', 'memory'),
        ifBroken: 'not-met',
      },
    ],
    'fixing-corner': [
      {
        when: {},
        then: { from: 'inner-corner', least_mm: 100, most_mm: 150 },
        cite: cite('window-installation-guide', 'memory'),
        ifBroken: 'not-met',
      },
    ],
    'fixing-spacing': spacings(
      { 'pvc-white': 700, 'pvc-coloured': 700, timber: 800, 'timber-aluminium': 800, aluminium: 800 },
      cite('window-installation-guide', 'memory'),
    ),
    'fixing-at-member': [
      {
        when: {},
        then: { from: 'edge', least_mm: 100, most_mm: 150 },
        cite: cite('window-installation-guide', 'memory'),
        ifBroken: 'not-met',
      },
    ],
    'distance-blocks': [
      {
        when: {},
        then: { corner_mm: 300, isOptional: false },
        cite: cite('window-installation-guide', 'memory'),
        ifBroken: 'advice',
      },
    ],
    guarding: [
      {
        when: { fall_mm: { upTo: 12_000 } },
        then: { sill_mm: 800 },
        cite: cite('guarding-heights', 'published'),
        ifBroken: 'not-met',
      },
      {
        when: { fall_mm: { above: 12_000 } },
        then: { sill_mm: 900 },
        cite: cite('guarding-heights', 'published'),
        ifBroken: 'not-met',
      },
    ],
    burglary: [
      {
        when: {},
        then: { spacing_mm: 600, corner_mm: 150, embedment_mm: 50 },
        cite: cite('burglary-note', 'published'),
        ifBroken: 'not-met',
      },
    ],
    cover: [
      {
        when: { by: ['insulation', 'closer', 'rebate'] },
        then: { least_mm: 30 },
        cite: cite('window-installation-guide', 'memory'),
        ifBroken: 'advice',
      },
    ],
    // A frame in a rebate keeps 25 to 35 mm in sight.
    'visible-face': [
      { when: { by: ['rebate'] }, ...inRange([25, 35], cite('window-installation-guide', 'memory')) },
      ...general['visible-face'],
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
    'surface-criterion': [
      {
        when: { room: ['dwelling'], air: ['norm'] },
        then: { fRsi: 0.7 },
        cite: cite('din-4108-2', 'published', 'fRsi ≥ 0.70'),
        ifBroken: 'not-met',
      },
      ...general['surface-criterion'],
    ],
    'sill-overhang': [{ when: {}, ...inRange([20, 30], cite('aluminium-sills', 'published')) }],
    'second-plane': [
      {
        when: { wall: ['timber'] },
        then: 'asked',
        cite: cite('second-plane-article', 'published'),
        ifBroken: 'not-met',
      },
      {
        when: { wall: ['wood-fibre'] },
        then: 'asked',
        cite: cite('wood-fibre-sills', 'published'),
        ifBroken: 'not-met',
      },
      {
        when: { wall: ['other'] },
        then: 'asked',
        cite: cite('wood-fibre-sills', 'published'),
        ifBroken: 'advice',
      },
    ],
  },
  notAsked: {
    'sill-throat': words(
      'a drip groove is asked for in Britain alone',
      'eine Abtropfnut wird nur in Großbritannien verlangt',
    ),
    'perimeter-gap': words(
      'German practice sets the least width by a table of frame lengths',
      'in Deutschland gilt die Mindestbreite nach der Tabelle der Rahmenlängen',
    ),
  },
  noFigure: {},
}
