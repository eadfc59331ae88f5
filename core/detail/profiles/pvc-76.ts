import { filled, words } from '../../words'
import {
  air,
  box,
  double,
  glazing,
  glazingName,
  solid,
  triple,
  tube,
  type Unit,
  unitDepth_mm,
} from './outline'
import type { Profile } from './profile'

const reach_mm = 310
/** where the outer face of the unit lies */
const glass_mm = 32

/**
 * A PVC-U frame 76 deep with chambers and a steel core in frame and sash: the bead takes what the unit leaves.
 * Outlines of our own.
 */
const pvc76With = (id: string, unit: Unit): Profile => {
  const back_mm = glass_mm + unitDepth_mm(unit)
  return {
    id,
    name: filled(words('PVC-U 76, {0}', 'PVC-U 76, {0}'), glazingName(unit)),
    materials: ['pvc-white', 'pvc-coloured'],
    depth_mm: 76,
    face_mm: 70,
    innerFace_mm: 16,
    reach_mm,
    steel_mm: 1.5,
    bodies: [
      air('gasket', box(16, 20, 70, 79)),
      air('gasket', box(66, 20, 70, 24), 'slightly'),
      air('gasket', box(16, 76, 20, 79), 'slightly'),
      // frame: an outer lip, the screw chamber with its steel, a chamber behind it
      solid('frame', 'pvc-u', [
        [0, 0],
        [70, 0],
        [70, 20],
        [46, 20],
        [46, 56],
        [34, 56],
        [34, 76],
        [0, 76],
      ]),
      air('frame', box(3, 3, 43.5, 15)),
      air('frame', box(45, 3, 67, 17)),
      air('frame', box(3, 16.5, 43, 29)),
      air('frame', box(3, 30.5, 43, 53)),
      air('frame', box(3, 54.5, 31, 73)),
      ...tube('core', 'steel', [4, 31.5], [42, 52], 1.5),
      // sash
      solid('sash', 'pvc-u', [
        [50, 24],
        [120, 24],
        [120, 30],
        [100, 30],
        [100, 98],
        [16, 98],
        [16, 79],
        [38, 79],
        [38, 60],
        [50, 60],
      ]),
      air('sash', box(53, 27, 97, 40)),
      air('sash', box(53, 41.5, 97, 74)),
      air('sash', box(41, 63, 51.5, 76)),
      air('sash', box(19, 82, 56, 95)),
      air('sash', box(57.5, 75.5, 97, 95)),
      ...tube('core', 'steel', [54, 43], [96, 72.5], 1.5),
      ...glazing(105, glass_mm, reach_mm, unit),
      air('gasket', box(100, 30, 105, back_mm + 2), 'slightly'),
      solid('bead', 'pvc-u', [
        [100, back_mm + 2],
        [120, back_mm + 2],
        [120, 91],
        [113, 98],
        [100, 98],
      ]),
      air('bead', box(102.5, back_mm + 4.5, 112, 95.5)),
      solid('gasket', 'epdm', box(60, 20, 66, 24)),
      solid('gasket', 'epdm', box(20, 76, 28, 79)),
      solid('gasket', 'epdm', box(107, 30, 120, glass_mm)),
      solid('gasket', 'epdm', box(107, back_mm, 120, back_mm + 2)),
    ],
  }
}

export const pvc76: Profile = pvc76With('pvc-76', triple)
export const pvc76Double: Profile = pvc76With('pvc-76-double', double)
