import { exactly } from '../../units'
import { words } from '../../words'
import { bondedFaces, hasValue } from '../readings/seals'
import { choose, fitRod } from '../remedies/fit'
import { otherWidth, replaceSeal } from '../remedies/remedies'
import { roomOf } from '../remedies/room'
import { rule } from '../rule'

/** A bead bonds to its two flanks and to nothing behind it. */
export const beadFaces = rule({
  id: 'bonded-faces',
  about: 'part',
  title: words('Bead bonded to two flanks', 'Dichtstoff haftet an zwei Flanken'),
  says: words(
    'A bead bonds to the frame and to the wall, never to its back.',
    'Dichtstoff haftet am Rahmen und an der Wand, nie am Grund der Fuge.',
  ),
  why: words(
    'A bead that is held on three sides cannot stretch and tears at once when the joint opens.',
    'Eine Fuge, die an drei Seiten haftet, kann sich nicht dehnen und reißt, sobald sich die Fuge öffnet.',
  ),
  reads: { faces: bondedFaces },
  limit: 'bonded-faces',
  band: [],
  applies: ({ seal }) =>
    seal && hasValue(seal, 'sealant.depth')
      ? true
      : words('there is no sealant bead here', 'hier ist keine Dichtstofffuge'),
  ask: () => [{ given: {} }],
  compare: ({ faces }, then) => ({
    kind: 'amount',
    actual: exactly(faces),
    required: { unit: 'one', min: then.faces, max: then.faces },
  }),
  sum: () => [],
  *remedies(_known, _then, at) {
    if (!at.seal) return
    yield* choose(fitRod(at.seal, roomOf(at), at.practice))
    yield* otherWidth(at)
    yield* replaceSeal(at, at.seal)
  },
  examples: [
    {
      when: words('a bead on a backing rod', 'Dichtstoff auf Rundschnur'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { faces: 2 },
      verdict: 'met',
    },
    {
      when: words('a bead straight on the foam', 'Dichtstoff direkt auf dem Schaum'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { faces: 3 },
      verdict: 'not-met',
    },
  ],
})
