import { serves } from '../../seals'
import { words } from '../../words'
import { closePlanes } from '../remedies/remedies'
import { isFill, ratedAsAirSeal } from '../readings/seals'
import { rule } from '../rule'

/** What only fills a joint does not make it airtight. */
export const foamAsAirSeal = rule({
  id: 'foam-as-air-seal',
  about: 'part',
  title: words('Foam as the only air seal', 'Schaum als einzige Luftdichtung'),
  says: words(
    'Foam fills and insulates. The joint is made airtight by sealant, membrane or tape on its room side.',
    'Schaum füllt und dämmt. Luftdicht wird die Fuge raumseitig durch Dichtstoff, Folie oder Band.',
  ),
  why: words(
    'Foam shrinks, ages in light and tears when the joint moves; air then finds a way through.',
    'Schaum schrumpft, altert im Licht und reißt, wenn sich die Fuge bewegt; dann strömt Luft hindurch.',
  ),
  reads: { rated: ratedAsAirSeal },
  limit: 'foam-as-air-seal',
  band: [],
  applies: at => {
    if (at.joint.seals.some(it => serves(it, 'inner'))) return sealedInside
    return at.seal && isFill(at.seal, at.joint) ? true : noFill
  },
  ask: ({ rated }) => [{ given: { rated } }],
  compare: ({ rated }, then) => ({
    kind: 'presence',
    there: [rated === 'yes' ? ratedFill : fill],
    missing: then === 'accepted' ? [] : [airSeal],
  }),
  sum: () => [],
  *remedies(_known, _then, at) {
    yield* closePlanes(at, ['inner'])
  },
  examples: [
    {
      when: words('foam and nothing inside, in Germany', 'Schaum und innen nichts, in Deutschland'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { rated: 'no' },
      verdict: 'not-met',
    },
    {
      when: words('even foam that is rated as an air seal', 'auch ein als Luftdichtung ausgewiesener Schaum'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { rated: 'yes' },
      verdict: 'not-met',
    },
    {
      when: words('rated foam in Britain', 'ausgewiesener Schaum in Großbritannien'),
      practice: 'UK',
      joint: { planned_mm: 8 },
      known: { rated: 'yes' },
      verdict: 'met',
    },
    {
      when: words('other foam in Britain', 'anderer Schaum in Großbritannien'),
      practice: 'UK',
      joint: { planned_mm: 8 },
      known: { rated: 'no' },
      verdict: 'advice',
    },
  ],
})

const sealedInside = words(
  'another seal closes the inner plane',
  'eine andere Dichtung schließt die innere Ebene',
)
const noFill = words('there is no fill in this joint', 'in dieser Fuge ist keine Füllung')
const fill = words('fill, not rated as an air seal', 'Füllung, nicht als Luftdichtung ausgewiesen')
const ratedFill = words('fill, rated as an air seal', 'Füllung, als Luftdichtung ausgewiesen')
const airSeal = words('inside: an airtight seal', 'innen: eine luftdichte Dichtung')
