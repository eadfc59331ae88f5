import { filled, words } from '../../words'
import { air, box, glazing, glazingName, solid, triple, type Unit, unitDepth_mm } from './outline'
import type { Profile } from './profile'

const reach_mm = 310
/** where the outer face of the unit lies */
const glass_mm = 20

/**
 * A timber frame 90 deep under a cover of aluminium: the cover stands on clips, with ventilated air behind it, and is
 * the stop for the glass. Outlines of our own.
 */
const timberAluminium90With = (id: string, unit: Unit): Profile => {
  const back_mm = glass_mm + unitDepth_mm(unit)
  return {
    id,
    name: filled(words('Timber-aluminium 90, {0}', 'Holz-Aluminium 90, {0}'), glazingName(unit)),
    materials: ['timber-aluminium'],
    depth_mm: 90,
    face_mm: 44,
    innerFace_mm: 12,
    reach_mm,
    bodies: [
      // the gap round the sash: in touch with the outside up to the gasket in its middle, closed behind it
      air('gasket', box(12, 50, 48, 93)),
      air('gasket', box(36, 0, 48, 50), 'slightly'),
      air('gasket', box(12, 90, 16, 93), 'slightly'),
      solid('frame', 'softwood', [
        [0, 18],
        [44, 18],
        [44, 40],
        [36, 40],
        [36, 62],
        [22, 62],
        [22, 90],
        [0, 90],
      ]),
      // the cover of the frame, open to the timber, on its clip
      solid('frame', 'aluminium', box(0, 0, 44, 18)),
      air('frame', box(2, 2, 42, 18), 'slightly'),
      solid('frame', 'polyamide', box(18, 2, 26, 18)),
      solid('sash', 'softwood', [
        [48, 18],
        [92, 18],
        [92, 104],
        [15, 104],
        [12, 101],
        [12, 93],
        [26, 93],
        [26, 66],
        [40, 66],
        [40, 44],
        [48, 44],
      ]),
      // the cover of the sash: open to the timber, closed where it holds the glass
      solid('sash', 'aluminium', box(48, 0, 112, 18)),
      air('sash', box(50, 2, 90, 18), 'slightly'),
      air('sash', box(92, 2, 110, 16)),
      solid('sash', 'polyamide', box(66, 2, 74, 18)),
      ...glazing(97, glass_mm, reach_mm, unit),
      // the drained rebate round the glass
      air('gasket', box(92, 18, 97, back_mm + 2), 'slightly'),
      solid('bead', 'softwood', [
        [92, back_mm + 2],
        [112, back_mm + 2],
        [112, 98],
        [106, 104],
        [92, 104],
      ]),
      solid('gasket', 'epdm', box(36, 50, 40, 56)),
      solid('gasket', 'epdm', box(16, 90, 22, 93)),
      solid('gasket', 'epdm', box(99, 18, 112, glass_mm)),
      solid('gasket', 'silicone', box(99, back_mm, 112, back_mm + 2)),
    ],
  }
}

export const timberAluminium90: Profile = timberAluminium90With('timber-aluminium-90', triple)
