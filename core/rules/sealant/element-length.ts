import { profileOf } from '../../detail'
import { exactly } from '../../units'
import { words } from '../../words'
import { placed, type Reading } from '../reading'
import { frameMaterial } from '../readings/kinds'
import { act } from '../remedies/state'
import { rule } from '../rule'
import { boundsOf } from '../told-rules'

/** The longer edge of an element, and whether it has more than one fixed light. */
type Longest = { readonly length_mm: number; readonly lights: 'one' | 'several' }
const longest: Reading<Longest> = placed({
  id: 'opening.longest-edge',
  name: words('Longest edge of the element', 'Längste Kante des Elements'),
  compute: ({ opening, frame }) => {
    const hasSash = profileOf(frame).bodies.some(it => it.member === 'sash')
    const members = opening.mullions.length + (opening.transoms ?? []).length
    return {
      length_mm: Math.max(opening.width_mm.value, opening.height_mm.value),
      lights: hasSash || members > 0 ? 'several' : 'one',
    }
  },
  beneath: ({ opening: { id, width_mm, height_mm } }) => [
    { field: 'opening.width', part: id, stated: width_mm },
    { field: 'opening.height', part: id, stated: height_mm },
  ],
})

/** A long element of PVC-U is coupled, so that each part moves by itself. */
export const elementLength = rule({
  id: 'element-length',
  about: 'opening',
  title: words('Length of the element without coupling', 'Elementlänge ohne Kopplung'),
  says: words(
    'An element of PVC-U is coupled with an expansion joint where it is longer than its frame may be in one piece.',
    'Ein Element aus PVC-U wird mit Dehnstoß gekoppelt, wo es länger ist, als sein Rahmen in einem Stück sein darf.',
  ),
  why: words(
    'PVC-U grows by millimetres a metre; past some length no joint beside it takes that.',
    'PVC-U wächst um Millimeter je Meter; ab einer Länge nimmt das keine Fuge daneben mehr auf.',
  ),
  reads: { longest, frame: frameMaterial },
  limit: 'element-length',
  band: [],
  applies: ({ frame: { material } }) =>
    material === 'pvc-white' || material === 'pvc-coloured' || words('the frame is not of PVC-U', 'der Rahmen ist nicht aus PVC-U'),
  ask: known => [{ given: { frame: known.frame, lights: known.longest.lights } }],
  compare: (known, then) => ({
    kind: 'amount',
    actual: exactly(known.longest.length_mm),
    required: boundsOf(then, 'mm'),
  }),
  sum: () => [],
  *remedies(_known, _then, at) {
    yield act(words('Divide the element and couple its parts', 'Element teilen und koppeln'), 'opening.width', at.opening.id)
  },
  examples: [
    {
      when: words('a white window of 2.4 m', 'ein weißes Fenster von 2,4 m'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { longest: { length_mm: 2400, lights: 'several' }, frame: 'pvc-white' },
      verdict: 'met',
    },
    {
      when: words('a coloured one of 3.4 m', 'ein farbiges von 3,4 m'),
      practice: 'AT',
      joint: { planned_mm: 20 },
      known: { longest: { length_mm: 3400, lights: 'several' }, frame: 'pvc-coloured' },
      verdict: 'advice',
    },
  ],
}) // prettier-ignore
