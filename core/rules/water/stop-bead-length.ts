import type { RevealForm } from '../../kinds'
import { exactly } from '../../units'
import { words } from '../../words'
import type { Place } from '../place'
import { placed, type Reading } from '../reading'
import { revealForm } from '../readings/kinds'
import { hasValue, sealsRound } from '../readings/seals'
import type { AnySeal } from '../../seals'
import { act } from '../remedies/state'
import { rule } from '../rule'
import { boundsOf } from '../told-rules'

/** Longest edge that a render stop bead runs along, and what it is declared for. */
type Edge = { readonly length_mm: number; readonly covers_mm: number }
const edge: Reading<Edge> = placed({
  id: 'opening.bead-edge',
  name: words('Edge along a render stop bead', 'Kante an einem Anputzprofil'),
  compute: at => ({
    length_mm: Math.max(at.opening.width_mm.value, at.opening.height_mm.value),
    covers_mm: Math.min(...beads(at).map(declared_mm)),
  }),
})

/** Render stop beads round the opening: they state how long an edge they are made for. */
const beads = (at: Place): readonly AnySeal[] =>
  sealsRound(at).filter(it => hasValue(it, 'render-bead.longest'))

/** The edge that a bead is declared for in mm; 0 where nobody states it. */
const declared_mm = (bead: AnySeal): number => {
  const longest = bead['longest_m']
  return typeof longest === 'object' && typeof longest.value === 'number' ? 1000 * longest.value : 0
}

/** A render stop bead takes the movement of a frame edge only up to a length. */
export const stopBeadLength = rule({
  id: 'stop-bead-length',
  about: 'opening',
  title: words('Length along a render stop bead', 'Länge an einem Anputzprofil'),
  says: words(
    'In a straight reveal a render stop bead is used up to the edge length that it is made for.',
    'In stumpfer Leibung reicht ein Anputzprofil bis zu der Kantenlänge, für die es gemacht ist.',
  ),
  why: words(
    'The bead is stretched by the frame and by the render; on a long edge it tears off one of them.',
    'Rahmen und Putz dehnen das Profil; an langer Kante reißt es von einem ab.',
  ),
  reads: { edge, reveal: revealForm },
  limit: 'stop-bead-length',
  band: [],
  applies: at => {
    if (beads(at).length === 0) return words('render ends at no stop bead', 'der Putz endet an keinem Profil')
    const form: RevealForm = at.wall.reveal.form
    return form === 'butt' || form === 'splayed' || words('the rebate takes the bead', 'der Anschlag nimmt das Profil auf')
  },
  ask: ({ reveal }) => [{ given: { reveal } }],
  compare: (known, then) => ({
    kind: 'amount',
    actual: exactly(known.edge.length_mm),
    // a bead of a higher class covers what it declares
    required: boundsOf({ most: Math.max(then.most ?? Infinity, known.edge.covers_mm) }, 'mm'),
  }),
  sum: () => [],
  *remedies(_known, _then, at) {
    yield act(words('Choose a bead of a higher class', 'Profil höherer Klasse wählen'), 'render-bead.longest', beads(at)[0]?.id ?? at.opening.id)
  },
  examples: [
    {
      when: words('an edge of 1.4 m', 'eine Kante von 1,4 m'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { edge: { length_mm: 1400, covers_mm: 0 }, reveal: 'butt' },
      verdict: 'met',
    },
    {
      when: words('an edge of 2.4 m, class not stated', 'eine Kante von 2,4 m, Klasse nicht genannt'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { edge: { length_mm: 2400, covers_mm: 0 }, reveal: 'butt' },
      verdict: 'advice',
    },
    {
      when: words('the same with a bead made for 3 m', 'dieselbe mit einem Profil für 3 m'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { edge: { length_mm: 2400, covers_mm: 3000 }, reveal: 'butt' },
      verdict: 'met',
    },
  ],
}) // prettier-ignore
