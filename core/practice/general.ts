import { cite } from '../sources'
import { anchors, inRange } from './anchors'
import type { Practice } from './limit'
import { loads, work } from './work'

/** Limits that all practices share. A practice may put its own rows in their place. */
export const general = {
  ...anchors,
  ...work,
  ...loads,
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
  // A joint of a tenth of a millimetre is none.
  'joint-there': [
    { when: {}, then: { least_mm: 0.1 }, cite: cite('convention', 'ours'), ifBroken: 'not-met' },
  ],
  // What cannot be laid is not there, whatever the list says.
  'seal-placed': [{ when: {}, then: 'all', cite: cite('convention', 'ours'), ifBroken: 'not-met' }],
  'membrane-on-frame': [
    { when: {}, then: { least_mm: 15 }, cite: cite('trade', 'memory'), ifBroken: 'not-met' },
  ],
  'membrane-on-wall': [
    { when: {}, then: { least_mm: 40 }, cite: cite('trade', 'memory'), ifBroken: 'not-met' },
  ],
  // Tension-free is published; the usual size of the loop, 5 to 10 mm, is from memory.
  'membrane-slack': [
    {
      when: {},
      then: { least_mm: 5 },
      cite: cite('trade', 'memory'),
      ifBroken: 'advice',
      last: {
        then: { least_mm: 0.1 },
        cite: cite('installation-materials', 'published'),
        ifBroken: 'not-met',
      },
    },
  ],
  'tape-class': [
    {
      when: { exposure: ['exposed'] },
      then: { classes: ['BG1', 'MF1'] },
      cite: cite('tape-classes', 'published', 'DIN 18542'),
      ifBroken: 'not-met',
    },
    {
      when: { exposure: ['sheltered', 'covered'] },
      then: { classes: ['BG2', 'BG1', 'MF2', 'MF1'] },
      cite: cite('tape-classes', 'published', 'DIN 18542'),
      ifBroken: 'not-met',
    },
    {
      when: { exposure: ['inside'] },
      then: { classes: ['BGR'] },
      cite: cite('tape-standard-changes', 'published', 'DIN 18542'),
      ifBroken: 'not-met',
    },
  ],
  'tape-lower-half': [
    { when: {}, then: { share: 0.5 }, cite: cite('convention', 'ours'), ifBroken: 'advice' },
  ],
  'tape-flanks': [
    { when: {}, then: 'firm', cite: cite('window-joint-leaflet', 'memory'), ifBroken: 'not-met' },
  ],
  'steel-core': [
    {
      when: { frame: ['pvc-white'] },
      then: { least_mm: 1.5 },
      cite: cite('steel-core-text', 'published'),
      ifBroken: 'not-met',
    },
    {
      when: { frame: ['pvc-coloured'] },
      then: { least_mm: 2 },
      cite: cite('trade', 'memory'),
      ifBroken: 'advice',
      last: {
        then: { least_mm: 1.5 },
        cite: cite('steel-core-text', 'published'),
        ifBroken: 'not-met',
      },
    },
  ],
  // Guides place blocks 50 to 200 mm from the corner; what stands further off than 300 mm leaves the corner alone: ours.
  'support-blocks': [
    {
      when: {},
      then: { corner_mm: 300 },
      cite: cite('fixing-and-joint-summary', 'published'),
      ifBroken: 'not-met',
    },
  ],
  'frame-forward': [{ when: {}, then: 'brackets', cite: cite('trade', 'memory'), ifBroken: 'not-met' }],
  'visible-face': [{ when: {}, ...inRange([15, 20], cite('convention', 'ours')) }],
  'sill-fall': [
    {
      when: {},
      then: { least_deg: 5 },
      cite: cite('wood-fibre-sills', 'published', '5° or 8 %, as each source prints it'),
      ifBroken: 'not-met',
    },
  ],
  'sill-end-dam': [{ when: {}, ...inRange([15, 20], cite('trade', 'memory')) }],
  // Water that stands on the sill stands as high at the frame as at the ends: no lower than the end dams.
  'sill-upstand': [{ when: {}, ...inRange([15, 20], cite('trade', 'practice')) }],
  // Aluminium 24 millionths over 70 K; the least gap decouples the sill from the render.
  'sill-end-gap': [
    {
      when: { sill: ['metal'] },
      then: { least_mm: 5, movement_mm_m: 1.68 },
      cite: cite('trade', 'memory'),
      ifBroken: 'advice',
      last: {
        then: { least_mm: 3, movement_mm_m: 1.68 },
        cite: cite('sill-decoupling', 'published'),
        ifBroken: 'not-met',
      },
    },
    {
      when: { sill: ['other'] },
      then: { least_mm: 5, movement_mm_m: 0 },
      cite: cite('trade', 'memory'),
      ifBroken: 'advice',
      last: {
        then: { least_mm: 3, movement_mm_m: 0 },
        cite: cite('sill-decoupling', 'published'),
        ifBroken: 'not-met',
      },
    },
  ],
  'surface-criterion': [
    {
      when: {},
      then: { humidity_pct: 80 },
      cite: cite('en-iso-13788', 'published', '80 %'),
      ifBroken: 'not-met',
    },
  ],
  // Half a kilogram where a layer cannot draw water away, as films and foam in a joint cannot; a kilogram elsewhere.
  condensate: [
    {
      when: {},
      then: { most_kg_m2: 0.5, dries: 'yes' },
      cite: cite('din-4108-3', 'memory'),
      ifBroken: 'advice',
      last: {
        then: { most_kg_m2: 1, dries: 'no' },
        cite: cite('din-4108-3', 'memory'),
        ifBroken: 'not-met',
      },
    },
  ],
  'sill-length': [
    {
      when: { sill: ['metal'] },
      then: { most_mm: 3000 },
      cite: cite('trade', 'memory'),
      ifBroken: 'not-met',
    },
  ],
} as const satisfies Practice['limits']
