import { serves } from '../../seals'
import { words } from '../../words'
import { closePlanes } from '../remedies/remedies'
import { fillDepth, isFill, ratedAsAirSeal } from '../readings/seals'
import { toldOr } from '../readings/told'
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
  reads: {
    rated: ratedAsAirSeal,
    depth_mm: fillDepth,
    light: toldOr('opening.foam-in-light', 'foamInLight'),
  },
  limit: 'foam-as-air-seal',
  band: ['still', 'movement'],
  applies: at => {
    if (at.joint.seals.some(it => serves(it, 'inner'))) return sealedInside
    return at.seal && isFill(at.seal, at.joint) ? true : noFill
  },
  ask: ({ rated, depth_mm, light }, { still_mm, opens_mm, closes_mm }) => [
    {
      given: {
        rated,
        depth_mm,
        light,
        movement_pct: (100 * Math.max(opens_mm, closes_mm)) / Math.max(still_mm.min, 0.1),
      },
    },
  ],
  compare: ({ rated }, then) => ({
    kind: 'presence',
    there: [rated === 'yes' ? ratedFill : fill],
    missing: then === 'accepted' ? [] : [airSeal],
  }),
  sum: ({ depth_mm }, _then, { given }) => [
    { sign: '', value: depth_mm, unit: 'mm', says: words('depth of the fill', 'Tiefe der Füllung') },
    {
      sign: '',
      value: given.movement_pct,
      unit: 'pct',
      says: words('movement of the narrowest joint', 'Bewegung der engsten Fuge'),
    },
  ],
  *remedies(_known, _then, at) {
    yield* closePlanes(at, ['inner'])
  },
  examples: [
    {
      when: words('foam and nothing inside, in Germany', 'Schaum und innen nichts, in Deutschland'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { rated: 'no', depth_mm: 60, light: 'no' },
      verdict: 'not-met',
    },
    {
      when: words('even foam that is rated as an air seal', 'auch ein als Luftdichtung ausgewiesener Schaum'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { rated: 'yes', depth_mm: 60, light: 'no' },
      verdict: 'not-met',
    },
    {
      when: words('rated foam in Britain', 'ausgewiesener Schaum in Großbritannien'),
      practice: 'UK',
      joint: { planned_mm: 8 },
      known: { rated: 'yes', depth_mm: 60, light: 'no' },
      verdict: 'met',
    },
    {
      when: words('rated foam that nobody keeps dark', 'ausgewiesener Schaum, den niemand dunkel hält'),
      practice: 'UK',
      joint: { planned_mm: 8 },
      known: { rated: 'yes', depth_mm: 60, light: 'not-told' },
      verdict: 'advice',
    },
    {
      when: words(
        'rated foam in a joint that moves by a fifth',
        'ausgewiesener Schaum in einer Fuge, die sich um ein Fünftel bewegt',
      ),
      practice: 'UK',
      joint: { planned_mm: 8, moves_mm: 1.6 },
      known: { rated: 'yes', depth_mm: 60, light: 'no' },
      verdict: 'advice',
    },
    {
      when: words('rated foam 20 mm deep', 'ausgewiesener Schaum, 20 mm tief'),
      practice: 'UK',
      joint: { planned_mm: 8 },
      known: { rated: 'yes', depth_mm: 20, light: 'no' },
      verdict: 'advice',
    },
    {
      when: words('other foam in Britain', 'anderer Schaum in Großbritannien'),
      practice: 'UK',
      joint: { planned_mm: 8 },
      known: { rated: 'no', depth_mm: 60, light: 'no' },
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
