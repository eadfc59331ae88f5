import type { FrameMaterial, RevealForm } from '../kinds'
import { type Citation, cite } from '../sources'
import { words } from '../words'
import { general } from './general'
import type { Practice, Row } from './limit'

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
  },
  notAsked: {
    'perimeter-gap': words(
      'German practice sets the least width by a table of frame lengths',
      'in Deutschland gilt die Mindestbreite nach der Tabelle der Rahmenlängen',
    ),
  },
}

/**
 * Least width of a joint with elastic sealant by frame, reveal and governing length, in mm.
 * Where a line ends, the table has no value: split the element or prove the width by calculation.
 */
function leastJoints(): readonly Row<'least-joint'>[] {
  const table = cite('joint-width-table', 'published')
  const remembered = cite('window-joint-leaflet', 'memory')
  return [
    ...lines('pvc-white', [10, 15, 20], [10, 10, 15], table),
    ...lines('pvc-coloured', [15, 20], [10, 15, 15], table),
    // Aluminium with thermal break; the colour is not asked, so the wider line for dark profiles holds.
    ...lines('aluminium', [10, 15, 20, 25], [10, 15, 15], remembered),
    ...lines('timber', [10, 10, 10, 10], [10, 10, 10], remembered),
  ]
}

function lines(
  frame: FrameMaterial,
  butt_mm: readonly number[],
  rebate_mm: readonly number[],
  by: Citation,
): readonly Row<'least-joint'>[] {
  const buttTo_mm = [1500, 2500, 3500, 4500]
  const rebateTo_mm = [2500, 3500, 4500]
  const cells = (reveal: RevealForm, least: readonly number[], to_mm: readonly number[]) =>
    least.map((least_mm, at): Row<'least-joint'> => ({
      when: {
        frame: [frame],
        reveal: [reveal],
        length_mm: { above: to_mm[at - 1] ?? 0, upTo: to_mm[at] ?? 0 },
      },
      then: { least_mm },
      cite: by,
      ifBroken: 'not-met',
    }))
  return [...cells('butt', butt_mm, buttTo_mm), ...cells('inner-rebate', rebate_mm, rebateTo_mm)]
}
