import { type Citation, cite } from '../sources'
import { words } from '../words'
import { inRange } from './anchors'
import { leastJoints } from './least-joint'
import type { LimitKey, LimitShapes, Practice, Row } from './limit'

/** What German and Austrian practice ask alike. Where only the source differs, a practice names its own. */
export const central = {
  'least-joint': leastJoints(),
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
} as const satisfies Practice['limits']

/** The rows that both have, each under the source that a practice names for them. */
export const centralBy = (by: {
  readonly depth: Citation
  readonly basis: Citation
  readonly reveal: Citation
  readonly member: Citation
  readonly overhang: Citation
  readonly size: Citation
}) =>
  ({
    // The wider tolerance holds from 25 mm on; a joint of just 25 mm keeps the narrower one of the table.
    'sealant-depth': [
      {
        when: { width_mm: { upTo: 25 } },
        then: { share: 0.5, within_mm: 2, least_mm: 6, most_mm: 15 },
        cite: by.depth,
        ifBroken: 'not-met',
      },
      {
        when: { width_mm: { above: 25 } },
        then: { share: 0.5, within_mm: 3, least_mm: 6, most_mm: 15 },
        cite: by.depth,
        ifBroken: 'not-met',
      },
    ],
    'joint-for-movement': [
      { when: { table: ['has-cell'] }, then: { basis: 'total' }, cite: by.basis, ifBroken: 'advice' },
      { when: { table: ['no-cell'] }, then: { basis: 'total' }, cite: by.basis, ifBroken: 'not-met' },
    ],
    'membrane-on-reveal': [
      { when: { of: ['width'] }, then: { most: 60 }, cite: by.reveal, ifBroken: 'not-met' },
      { when: { of: ['share'] }, then: { most: 50 }, cite: by.reveal, ifBroken: 'not-met' },
      { when: { of: ['bonded'] }, then: { least: 75 }, cite: by.reveal, ifBroken: 'not-met' },
    ],
    'sealant-class': [
      { when: { plane: ['outer'] }, then: { accepted: ['25LM'] }, cite: by.reveal, ifBroken: 'not-met' },
      {
        when: { plane: ['inner'] },
        then: { accepted: ['20LM', '25LM'] },
        cite: by.reveal,
        ifBroken: 'not-met',
      },
    ],
    'fixing-at-member': only<'fixing-at-member'>({ from: 'edge', least_mm: 100, most_mm: 150 }, by.member),
    'sill-overhang': [{ when: {}, ...inRange([20, 30], by.overhang) }],
    'box-sealed': only<'box-sealed'>('sealed', cite('trade', 'memory')),
    'head-joint': only<'head-joint'>('takes-sag', cite('convention', 'ours')),
    'opening-size': [
      sized({ upTo: 1000 }, 10, by.size),
      sized({ above: 1000, upTo: 3000 }, 12, by.size),
      sized({ above: 3000, upTo: 6000 }, 16, by.size),
    ],
  }) as const satisfies Practice['limits']

/** What neither asks. */
export const centralNotAsked = {
  'sill-throat': words(
    'a drip groove is asked for in Britain alone',
    'eine Abtropfnut wird nur in Großbritannien verlangt',
  ),
  'checked-rebate': words(
    'a rebate against very severe driving rain is asked for in Britain alone',
    'ein Anschlag gegen sehr starken Schlagregen wird nur in Großbritannien verlangt',
  ),
} as const satisfies Practice['notAsked']

function only<K extends LimitKey>(then: LimitShapes[K]['then'], by: Citation): readonly Row<K>[] {
  return [{ when: {}, then, cite: by, ifBroken: 'not-met' }]
}

function sized(
  length_mm: { readonly above?: number; readonly upTo: number },
  within_mm: number,
  by: Citation,
): Row<'opening-size'> {
  return { when: { length_mm }, then: { within_mm }, cite: by, ifBroken: 'not-met' }
}
