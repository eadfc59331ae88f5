import { filled, words } from '../../words'
import { air, box, double, glazing, glazingName, solid, triple, type Unit, unitDepth_mm } from './outline'
import type { Profile } from './profile'

const reach_mm = 300
/** where the outer face of the unit lies */
const glass_mm = 34

/** A timber frame 78 deep with a flush-set sash: the bead takes what the unit leaves. Outlines of our own. */
const timber78With = (id: string, unit: Unit): Profile => {
  const back_mm = glass_mm + unitDepth_mm(unit)
  return {
    id,
    name: filled(words('Timber 78, {0}', 'Holz 78, {0}'), glazingName(unit)),
    materials: ['timber'],
    depth_mm: 78,
    face_mm: 58,
    innerFace_mm: 10,
    reach_mm,
    bodies: [
      // the gap round the sash: open to outside before the outer gasket, closed behind it
      air('gasket', box(10, 20, 58, 80)),
      air('gasket', box(46, 20, 58, 24), 'slightly'),
      air('gasket', box(10, 78, 14, 80), 'slightly'),
      solid('frame', 'softwood', [
        [0, 0],
        [55, 0],
        [58, 3],
        [58, 20],
        [38, 20],
        [38, 52],
        [24, 52],
        [24, 78],
        [0, 78],
      ]),
      solid('sash', 'softwood', [
        [42, 24],
        [109, 24],
        [112, 27],
        [112, 32],
        [92, 32],
        [92, 94],
        [13, 94],
        [10, 91],
        [10, 80],
        [28, 80],
        [28, 56],
        [42, 56],
      ]),
      ...glazing(97, glass_mm, reach_mm, unit),
      // the drained rebate round the glass
      air('gasket', box(92, 32, 97, back_mm + 2), 'slightly'),
      solid('bead', 'softwood', [
        [92, back_mm + 2],
        [112, back_mm + 2],
        [112, 88],
        [106, 94],
        [92, 94],
      ]),
      solid('gasket', 'epdm', box(46, 20, 52, 24)),
      solid('gasket', 'epdm', box(14, 78, 21, 80)),
      solid('gasket', 'silicone', box(99, 32, 112, glass_mm)),
      solid('gasket', 'silicone', box(99, back_mm, 112, back_mm + 2)),
    ],
  }
}

export const timber78: Profile = timber78With('timber-78', triple)
export const timber78Double: Profile = timber78With('timber-78-double', double)
