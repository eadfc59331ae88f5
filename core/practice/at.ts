import { frameMaterials } from '../kinds'
import { cite } from '../sources'
import { words } from '../words'
import { central, centralBy, centralNotAsked } from './central'
import { spacings } from './fixing-rows'
import { general } from './general'
import type { Practice, Row } from './limit'
import { always, upstands } from './work'

/** A side of at most this clear width needs one fixing only. */
const small_mm = 450
const summary = cite('fixing-and-joint-summary', 'published', 'ÖNORM B 5320')
const materials = cite('installation-materials', 'published')
const exposure = cite('catalogue-clauses', 'published', 'ÖNORM B 5320, 4.2')

/** Austrian practice. */
export const at: Practice = {
  id: 'AT',
  edition: '1',
  name: words('Austria', 'Österreich'),
  limits: {
    ...general,
    ...central,
    // The table of depths is German; half the width, 6 to 15 mm deep, is asked alike.
    ...centralBy({
      depth: cite('resealing-table', 'memory', 'DIN 18540'),
      basis: materials,
      reveal: materials,
      member: cite('fixing-and-joint-summary', 'memory'),
      overhang: cite('aluminium-sills', 'memory'),
      size: summary,
    }),
    'peel-test': always<'peel-test'>({ accepted: ['passed'] }, materials),
    'guard-height': [
      {
        when: { fall_mm: { upTo: 12_000 } },
        then: { least: 1000 },
        cite: cite('oib-4', 'memory'),
        ifBroken: 'not-met',
      },
      {
        when: { fall_mm: { above: 12_000 } },
        then: { least: 1100 },
        cite: cite('oib-4', 'memory'),
        ifBroken: 'not-met',
      },
    ],
    // A lower upstand with a channel is known to be allowed, its figure is not.
    'threshold-upstand': upstands({ none: 150, special: 0 }, cite('trade', 'memory')),
    'threshold-step': always<'threshold-step'>({ most: 20 }, cite('trade', 'memory', 'ÖNORM B 1600')),
    // A tape of class BG1 or MF1 may stay in the weather.
    'open-weather': [
      { when: { tape: ['weatherproof'] }, then: {}, cite: exposure, ifBroken: 'advice' },
      { when: { tape: ['other'] }, then: { most: 2 }, cite: exposure, ifBroken: 'advice' },
    ],
    // 15 planned: the opening may be 24 or 32 mm larger than its nominal size, and all of it may lie on one side.
    'surveyed-joint': [
      { when: { end: ['narrowest'] }, then: { least: 10 }, cite: summary, ifBroken: 'not-met' },
      {
        when: { end: ['widest'], length_mm: { upTo: 3000 } },
        then: { most: 39 },
        cite: summary,
        ifBroken: 'not-met',
      },
      {
        when: { end: ['widest'], length_mm: { above: 3000 } },
        then: { most: 47 },
        cite: summary,
        ifBroken: 'not-met',
      },
    ],
    'planes-filled': [
      {
        when: {},
        then: { planes: ['outer', 'middle', 'inner'], isProven: true },
        cite: summary,
        ifBroken: 'advice',
        last: { then: { planes: ['outer', 'middle', 'inner'] }, cite: summary, ifBroken: 'not-met' },
      },
    ],
    'foam-as-air-seal': [
      { when: {}, then: 'not-accepted', cite: cite('foam-is-no-seal', 'memory'), ifBroken: 'not-met' },
    ],
    'backing-oversize': [
      { when: {}, then: { share_pct: { min: 115, max: 130 } }, cite: materials, ifBroken: 'not-met' },
    ],
    'bonded-faces': [{ when: {}, then: { faces: 2 }, cite: materials, ifBroken: 'not-met' }],
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
    ...centralNotAsked,
    'perimeter-gap': words(
      'Austrian practice sets the least width by a table of frame lengths',
      'in Österreich gilt die Mindestbreite nach der Tabelle der Rahmenlängen',
    ),
  },
  noFigure: {
    ventilation: words(
      'Austrian practice has no figure of its own',
      'in Österreich ist kein eigener Wert bekannt',
    ),
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
