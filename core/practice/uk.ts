import { type RoomUse, roomUses } from '../air'
import type { FrameMaterial } from '../kinds'
import { cite } from '../sources'
import { words } from '../words'
import { spacings } from './fixing-rows'
import { general } from './general'
import type { Practice, Row } from './limit'
import { always, upstands } from './work'

/** British practice. */
export const uk: Practice = {
  id: 'UK',
  edition: '1',
  name: words('United Kingdom', 'Vereinigtes Königreich'),
  limits: {
    ...general,
    // A continuous seal inside and outside; a filled middle is not asked for.
    'planes-filled': [
      {
        when: {},
        then: { planes: ['outer', 'inner'], isProven: true },
        cite: cite('warranty-gaps', 'published'),
        ifBroken: 'advice',
        last: {
          then: { planes: ['outer', 'inner'] },
          cite: cite('warranty-gaps', 'published'),
          ifBroken: 'not-met',
        },
      },
    ],
    // Rated, deep enough, in a joint that hardly moves, and dark: all four, or it only advises.
    'foam-as-air-seal': [
      {
        when: { rated: ['yes'], depth_mm: { above: 24.9 }, movement_pct: { upTo: 10 }, light: ['no'] },
        then: 'accepted',
        cite: cite('convention', 'ours'),
        ifBroken: 'advice',
      },
      { when: {}, then: 'not-accepted', cite: cite('convention', 'ours'), ifBroken: 'advice' },
    ],
    'plaster-edge': always<'plaster-edge'>(
      { accepted: ['bead', 'cut', 'membrane'] },
      cite('trade', 'memory'),
      'advice',
    ),
    'threshold-upstand': upstands(
      { none: 150, channel: 0, special: 0 },
      cite('approved-document-c', 'memory'),
    ),
    'threshold-step': always<'threshold-step'>({ most: 15 }, cite('approved-document-m', 'memory')),
    'guard-height': always<'guard-height'>({ least: 800 }, cite('approved-document-k', 'memory')),
    'checked-rebate': always<'checked-rebate'>({ behind_mm: 25 }, cite('approved-document-c', 'memory')),
    'sealant-depth': [
      {
        when: {},
        then: { least_mm: 6, mostShare: 1 },
        cite: cite('sealant-selection-standard', 'memory'),
        ifBroken: 'advice',
        last: { then: { least_mm: 6 }, cite: cite('warranty-gaps', 'published'), ifBroken: 'not-met' },
      },
    ],
    // A gap of 5 mm or less needs no backing: no row, so a rod there is referred.
    'backing-oversize': [
      {
        when: { width_mm: { above: 5 } },
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
    'surface-criterion': surfaceFactors(),
    'perimeter-gap': gaps(),
    'joint-for-movement': [
      {
        when: { table: ['has-cell'] },
        then: { basis: 'share-of-smallest' },
        cite: cite('sealant-selection-standard', 'memory'),
        ifBroken: 'advice',
      },
      {
        when: { table: ['no-cell'] },
        then: { basis: 'share-of-smallest' },
        cite: cite('sealant-selection-standard', 'memory'),
        ifBroken: 'not-met',
      },
    ],
    // Only for PVC-U a figure is known, measured from the outer corner.
    'fixing-corner': [
      {
        when: { frame: ['pvc-white', 'pvc-coloured'] },
        then: { from: 'outer-corner', least_mm: 150, most_mm: 250 },
        cite: cite('uk-installation-guides', 'memory'),
        ifBroken: 'not-met',
      },
    ],
    'fixing-spacing': spacings(
      { 'pvc-white': 600, 'pvc-coloured': 600, timber: 600, 'timber-aluminium': 600, aluminium: 600 },
      cite('uk-installation-guides', 'memory'),
    ),
    'fixing-at-member': [
      {
        when: {},
        then: { from: 'axis', least_mm: 150 },
        cite: cite('uk-installation-guides', 'memory'),
        ifBroken: 'not-met',
      },
    ],
    guarding: [
      {
        when: {},
        then: { sill_mm: 800 },
        cite: cite('approved-document-k', 'memory'),
        ifBroken: 'not-met',
      },
    ],
    cover: [
      {
        when: { by: ['insulation', 'closer'] },
        then: { least_mm: 30 },
        cite: cite('approved-document-c', 'memory'),
        ifBroken: 'advice',
      },
      {
        when: { by: ['rebate'] },
        then: { least_mm: 25 },
        cite: cite('approved-document-c', 'memory'),
        ifBroken: 'advice',
      },
    ],
    'sill-overhang': [
      {
        when: {},
        then: { least_mm: 25 },
        cite: cite('uk-installation-guides', 'memory'),
        ifBroken: 'not-met',
      },
    ],
    'sill-throat': [
      {
        when: {},
        then: { least_mm: 10 },
        cite: cite('uk-installation-guides', 'memory'),
        ifBroken: 'not-met',
      },
    ],
  },
  notAsked: {
    'sealant-class': words(
      'in Britain the movement share of the sealant governs',
      'in Großbritannien gilt die Bewegungsaufnahme des Dichtstoffs',
    ),
    'surveyed-joint': words(
      'the gap round the frame reads the measured joint',
      'die Fuge um den Rahmen wird an der gemessenen Fuge geprüft',
    ),
    'distance-blocks': words(
      'British practice packs beside every fixing instead',
      'in Großbritannien wird stattdessen neben jeder Befestigung hinterlegt',
    ),
    'frame-position': words(
      'British practice asks how far the frame stands behind the outer leaf',
      'in Großbritannien gilt der Abstand hinter der Außenschale',
    ),
    'least-joint': words(
      'British practice sets a least and a greatest gap by opening size',
      'in Großbritannien gelten kleinste und größte Fuge nach der Öffnungsgröße',
    ),
  },
  noFigure: {
    'open-weather': words('British practice has no figure', 'in Großbritannien ist kein Wert bekannt'),
    'opening-size': words('British practice has no figure', 'in Großbritannien ist kein Wert bekannt'),
    'head-joint': words(
      'British practice has no basis for the sag of a lintel',
      'in Großbritannien ist keine Grundlage für die Sturzdurchbiegung bekannt',
    ),
    'box-sealed': words(
      'British practice has no rule on boxes',
      'in Großbritannien ist keine Regel für Kästen bekannt',
    ),
    ventilation: words('British practice has rules of its own', 'in Großbritannien gelten eigene Regeln'),
    'membrane-on-reveal': words(
      'British practice has no figure for membranes under plaster',
      'in Großbritannien ist kein Wert für überputzte Folien bekannt',
    ),
    burglary: words(
      'the standard of the element names its fixing',
      'die Norm des Elements nennt seine Befestigung',
    ),
    'second-plane': words(
      'cavity tray and damp course follow from the wall',
      'Sperrbahn und Sperrlage folgen aus der Wand',
    ),
  },
}

/** Least gap of a perimeter joint by frame and opening size, and the greatest one, in mm a side. */
function gaps(): readonly Row<'perimeter-gap'>[] {
  const least_mm: Readonly<Record<FrameMaterial, readonly [number, number, number]>> = {
    'pvc-white': [5, 5, 7.5],
    'pvc-coloured': [7.5, 7.5, 11],
    timber: [5, 5, 5],
    // no table names it: the timber carries
    'timber-aluminium': [5, 5, 5],
    aluminium: [5, 5, 7.5],
  }
  const upTo_mm = [1500, 3000, 4500]
  const most_mm = [10, 10, 15]
  // Object.entries widens the key to string; the record has a line for every frame material and no other.
  return (Object.entries(least_mm) as [FrameMaterial, readonly number[]][]).flatMap(([frame, cells]) =>
    cells.map((least, at): Row<'perimeter-gap'> => ({
      when: { frame: [frame], length_mm: { above: upTo_mm[at - 1] ?? 0, upTo: upTo_mm[at] ?? 0 } },
      then: { least_mm: least, most_mm: most_mm[at] ?? 0 },
      cite: frame === 'timber-aluminium' ? cite('convention', 'ours') : cite('warranty-gaps', 'published'),
      ifBroken: 'not-met',
    })),
  )
}

/** Least surface factors by the use of the room. */
function surfaceFactors(): readonly Row<'surface-criterion'>[] {
  const least: Readonly<Record<RoomUse, number>> = {
    dwelling: 0.75,
    office: 0.5,
    hall: 0.8,
    wet: 0.9,
    store: 0.3,
  }
  return roomUses.map(room => ({
    when: { room: [room] },
    then: { fRsi: least[room] },
    cite: cite('condensation-leaflet', 'memory'),
    ifBroken: 'not-met',
  }))
}
