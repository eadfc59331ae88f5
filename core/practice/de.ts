import { cite } from '../sources'
import { words } from '../words'
import { inRange } from './anchors'
import { central, centralBy, centralNotAsked } from './central'
import { spacings } from './fixing-rows'
import { general } from './general'
import type { Practice } from './limit'
import { always, trueWithin, upstands } from './work'

const surveyedElsewhere = words(
  'the measured joint is held to the seals and to the least width',
  'die gemessene Fuge wird an Dichtungen und Mindestbreite gemessen',
)

/** German practice. */
export const de: Practice = {
  id: 'DE',
  edition: '1',
  name: words('Germany', 'Deutschland'),
  limits: {
    ...general,
    ...central,
    ...centralBy({
      depth: cite('resealing-table', 'published', 'DIN 18540'),
      basis: cite('installation-materials', 'memory'),
      reveal: cite('installation-materials', 'memory'),
      member: cite('window-installation-guide', 'memory'),
      overhang: cite('aluminium-sills', 'published'),
      size: cite('building-tolerances', 'memory', 'table 1'),
    }),
    // The directive on guards counts wind and guard in full at once.
    'fixing-load': always<'fixing-load'>(
      { wind: 1.5, guard: 1.5, isInFull: true },
      cite('guarding-directive', 'memory'),
    ),
    'frame-true': trueWithin(1.5, cite('window-installation-guide', 'memory')),
    'guard-height': [
      {
        when: { fall_mm: { upTo: 12_000 } },
        then: { least: 900 },
        cite: cite('guarding-heights', 'published'),
        ifBroken: 'not-met',
      },
      {
        when: { fall_mm: { above: 12_000 } },
        then: { least: 1100 },
        cite: cite('guarding-heights', 'published'),
        ifBroken: 'not-met',
      },
    ],
    'threshold-upstand': upstands(
      { none: 150, channel: 50, special: 0 },
      cite('threshold-page', 'published'),
    ),
    'threshold-step': always<'threshold-step'>(
      { most: 20 },
      cite('threshold-page', 'published', 'DIN 18040'),
    ),
    ventilation: always<'ventilation'>({ accepted: ['few', 'planned'] }, cite('trade', 'memory'), 'advice'),
    'planes-filled': [
      {
        when: {},
        then: { planes: ['outer', 'middle', 'inner'], isProven: true },
        cite: cite('position-and-blocks-article', 'published'),
        ifBroken: 'advice',
        last: {
          then: { planes: ['outer', 'middle', 'inner'] },
          cite: cite('position-and-blocks-article', 'published'),
          ifBroken: 'not-met',
        },
      },
    ],
    'foam-as-air-seal': [
      { when: {}, then: 'not-accepted', cite: cite('foam-is-no-seal', 'published'), ifBroken: 'not-met' },
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
    'surface-criterion': [
      {
        when: { room: ['dwelling'], air: ['norm'] },
        then: { fRsi: 0.7 },
        cite: cite('din-4108-2', 'published', 'fRsi ≥ 0.70'),
        ifBroken: 'not-met',
      },
      ...general['surface-criterion'],
    ],
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
    ...centralNotAsked,
    'surveyed-joint': surveyedElsewhere,
    'perimeter-gap': words(
      'German practice sets the least width by a table of frame lengths',
      'in Deutschland gilt die Mindestbreite nach der Tabelle der Rahmenlängen',
    ),
  },
  noFigure: {
    'open-weather': words(
      'German practice has no figure; Austria knows two months',
      'in Deutschland ist kein Wert bekannt; Österreich kennt zwei Monate',
    ),
  },
}
