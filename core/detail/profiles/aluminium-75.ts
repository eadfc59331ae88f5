import { filled, words } from '../../words'
import { air, box, glazing, glazingName, solid, triple, tube, type Unit, unitDepth_mm } from './outline'
import type { Body, Member, Profile } from './profile'

const reach_mm = 310
/** where the outer face of the unit lies */
const glass_mm = 11

/** The thermal break between two shells: a bar at either side, and still air between them. */
const broken = (member: Member, [u0, v0]: readonly [number, number], [u1, v1]: readonly [number, number]): readonly Body[] => [
  solid(member, 'polyamide-glass-25', box(u0, v0, u1, v1)),
  air(member, box(u0 + bar_mm, v0, u1 - bar_mm, v1)),
] // prettier-ignore

/** thickness of a bar of polyamide, and of the aluminium round a chamber */
const bar_mm = 2
const shell_mm = 2

/**
 * An aluminium frame 75 deep: outer and inner shells as chambers, joined by polyamide bars, a gasket in the middle
 * between two breaks, and a rebate before it that drains to outside. Outlines of our own.
 */
const aluminium75With = (id: string, unit: Unit): Profile => {
  const back_mm = glass_mm + unitDepth_mm(unit)
  return {
    id,
    name: filled(words('Aluminium 75, thermal break, {0}', 'Aluminium 75, thermisch getrennt, {0}'), glazingName(unit)),
    materials: ['aluminium'],
    depth_mm: 75,
    face_mm: 68,
    innerFace_mm: 18,
    reach_mm,
    bodies: [
      // the rebate: in touch with the outside up to the gasket in its middle, closed behind it
      air('gasket', box(18, 2.5, 68, 78)),
      air('gasket', box(34, 2.5, 68, 36), 'slightly'),
      air('gasket', box(18, 75, 22, 78), 'slightly'),
      // frame: outer shell with the lip before the sash, break, inner shell
      solid('frame', 'aluminium', [
        [0, 0],
        [68, 0],
        [68, 2.5],
        [46, 2.5],
        [46, 22],
        [0, 22],
      ]),
      air('frame', box(shell_mm, 2.5, 46 - shell_mm, 22 - shell_mm)),
      ...broken('frame', [0, 22], [34, 50]),
      ...tube('frame', 'aluminium', [0, 50], [34, 75], shell_mm),
      // sash: outer shell with the stop for the glass, break, inner shell that overlaps the frame
      solid('sash', 'aluminium', [
        [50, 6],
        [112, 6],
        [112, 9],
        [92, 9],
        [92, 26],
        [50, 26],
      ]),
      air('sash', box(50 + shell_mm, 8.5, 92 - shell_mm, 26 - shell_mm)),
      ...broken('sash', [50, 26], [92, 54]),
      solid('sash', 'aluminium', [
        [38, 54],
        [92, 54],
        [92, 85],
        [18, 85],
        [18, 78],
        [38, 78],
      ]),
      air('sash', box(38 + shell_mm, 54 + shell_mm, 92 - shell_mm, 85 - shell_mm)),
      air('sash', box(18 + shell_mm, 78 + shell_mm, 38, 85 - shell_mm)),
      ...glazing(97, glass_mm, reach_mm, unit),
      // the drained rebate round the glass
      air('gasket', box(92, 9, 97, back_mm + 3), 'slightly'),
      ...tube('bead', 'aluminium', [92, back_mm + 3], [112, 85], shell_mm),
      // between the breaks a hollow gasket, at the room side one that the sash closes against
      solid('gasket', 'epdm', box(34, 36, 50, 43)),
      air('gasket', box(36, 38, 48, 41)),
      solid('gasket', 'epdm', box(22, 75, 31, 78)),
      solid('gasket', 'epdm', box(99, 9, 112, glass_mm)),
      solid('gasket', 'epdm', box(99, back_mm, 112, back_mm + 3)),
    ],
  } // prettier-ignore
}

export const aluminium75: Profile = aluminium75With('aluminium-75', triple)
