import { cite } from '../sources'
import type { Practice } from './limit'

/** Limits that all practices share. A practice may put its own rows in their place. */
export const general = {
  'vapour-order': [
    {
      when: {},
      then: { least: 2 },
      cite: cite('convention', 'ours'),
      ifBroken: 'advice',
      last: { then: { least: 1 }, cite: cite('inside-tighter', 'memory'), ifBroken: 'not-met' },
    },
  ],
  'bonded-faces': [
    { when: {}, then: { faces: 2 }, cite: cite('installation-materials', 'memory'), ifBroken: 'not-met' },
  ],
  'tape-range': [
    { when: {}, then: 'inside', cite: cite('window-joint-leaflet', 'published'), ifBroken: 'not-met' },
  ],
} as const satisfies Practice['limits']
