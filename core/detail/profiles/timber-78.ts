import { words } from '../../words'
import { air, box, glazing, solid } from './outline'
import type { Profile } from './profile'

const reach_mm = 300

/** A timber frame 78 deep with a flush-set sash and triple glazing. Outlines of our own. */
export const timber78: Profile = {
  id: 'timber-78',
  name: words('Timber 78, triple glazing', 'Holz 78, Dreifachglas'),
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
    ...glazing(97, 34, reach_mm, { panes_mm: [4, 4, 4], gaps_mm: [16, 16] }),
    // the drained rebate round the glass
    air('gasket', box(92, 32, 97, 80), 'slightly'),
    solid('bead', 'softwood', [
      [92, 80],
      [112, 80],
      [112, 88],
      [106, 94],
      [92, 94],
    ]),
    solid('gasket', 'epdm', box(46, 20, 52, 24)),
    solid('gasket', 'epdm', box(14, 78, 21, 80)),
    solid('gasket', 'silicone', box(99, 32, 112, 34)),
    solid('gasket', 'silicone', box(99, 78, 112, 80)),
  ],
}
