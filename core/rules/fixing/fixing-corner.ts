import { exactly } from '../../units'
import { words } from '../../words'
import { placed, type Reading } from '../reading'
import { burglaryAsked, faceOf, ofFixing } from '../readings/fixings'
import { frameMaterial } from '../readings/kinds'
import { lengthOf } from '../remedies/state'
import { rule } from '../rule'

const corner = ofFixing('fixing.corner', it => it.corner_mm)

/** Face of the frame: what lies between its inner and its outer corner. */
const face: Reading<number> = placed({
  id: 'frame.face',
  name: words('Face of the frame', 'Ansichtsbreite des Rahmens'),
  compute: at => faceOf(at),
})

/** The fixing next to a corner is neither too near it nor too far. */
export const fixingCorner = rule({
  id: 'fixing-corner',
  about: 'fixing',
  title: words('Corner distance of fixings', 'Eckabstand der Befestigung'),
  says: words(
    'The fixing next to a corner of the frame stands within a band from it.',
    'Die Befestigung neben einer Rahmenecke steht in einem bestimmten Abstand von ihr.',
  ),
  why: words(
    'Too near, it strains the weld or joint of the corner; too far, the corner moves and tears the seals.',
    'Zu nah belastet sie die Eckverbindung, zu weit bewegt sich die Ecke und reißt die Dichtungen ab.',
  ),
  reads: { corner_mm: corner, face_mm: face, frame: frameMaterial, burglary: burglaryAsked },
  limit: 'fixing-corner',
  band: [],
  applies: () => true,
  ask: ({ frame, burglary }) => [{ given: { frame, burglary } }],
  compare: ({ corner_mm, face_mm }, { from, least_mm, most_mm }) => ({
    kind: 'amount',
    actual: exactly(from === 'outer-corner' ? corner_mm + face_mm : corner_mm),
    required: { unit: 'mm', min: least_mm, max: most_mm },
  }),
  sum: ({ corner_mm, face_mm }, { from }) => [
    { sign: '', value: corner_mm, unit: 'mm', says: words('from the inner corner', 'ab Innenecke') },
    ...(from === 'outer-corner'
      ? [
          { sign: '+', value: face_mm, unit: 'mm', says: words('face of the frame', 'Ansichtsbreite') },
          {
            sign: '=',
            value: corner_mm + face_mm,
            unit: 'mm',
            says: words('from the outer corner', 'ab Außenecke'),
          },
        ] as const
      : []),
  ],
  *remedies({ corner_mm, face_mm }, { from, least_mm, most_mm }, at) {
    if (!at.fixing) return
    const off_mm = from === 'outer-corner' ? face_mm : 0
    const near_mm = Math.min(Math.max(corner_mm, least_mm - off_mm), most_mm - off_mm)
    const middle_mm = (least_mm + most_mm) / 2 - off_mm
    for (const to_mm of [near_mm, middle_mm]) yield* lengthOf(corner.name, 'fixing.corner', at.fixing.id, to_mm)
  },
  examples: [
    {
      when: words('140 mm from the inner corner', '140 mm ab Innenecke'),
      practice: 'DE',
      joint: { planned_mm: 12 },
      known: { corner_mm: 140, face_mm: 70, frame: 'pvc-white', burglary: 'no' },
      verdict: 'met',
    },
    {
      when: words('180 mm in Germany', '180 mm in Deutschland'),
      practice: 'DE',
      joint: { planned_mm: 12 },
      known: { corner_mm: 180, face_mm: 70, frame: 'pvc-white', burglary: 'no' },
      verdict: 'not-met',
    },
    {
      when: words('180 mm in Austria', '180 mm in Österreich'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { corner_mm: 180, face_mm: 70, frame: 'timber', burglary: 'no' },
      verdict: 'met',
    },
    {
      when: words(
        '130 mm from the inner corner of a British window of PVC-U: 200 from the outer one',
        '130 mm ab Innenecke eines britischen PVC-U-Fensters: 200 ab Außenecke',
      ),
      practice: 'UK',
      joint: { planned_mm: 5 },
      known: { corner_mm: 130, face_mm: 70, frame: 'pvc-white', burglary: 'no' },
      verdict: 'met',
    },
    {
      when: words('a British window of aluminium', 'ein britisches Aluminiumfenster'),
      practice: 'UK',
      joint: { planned_mm: 5 },
      known: { corner_mm: 130, face_mm: 60, frame: 'aluminium', burglary: 'no' },
      verdict: 'refer',
    },
  ],
}) // prettier-ignore
