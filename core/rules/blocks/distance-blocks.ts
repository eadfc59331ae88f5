import { lookUp } from '../../practice'
import { words } from '../../words'
import { type Blocked, blockedWithin, distances } from '../readings/blocks'
import { act } from '../remedies/state'
import { rule } from '../rule'

/** Blocks beside the jambs hold the frame off the reveal. */
export const distanceBlocks = rule({
  id: 'distance-blocks',
  about: 'opening',
  title: words('Distance blocks at the corners', 'Distanzklötze an den Ecken'),
  says: words(
    'Distance blocks stand at both ends of both jambs.',
    'An beiden Enden beider Leibungen stehen Distanzklötze.',
  ),
  why: words(
    'They pass the weight of an open sash into the wall and keep the frame from being pulled out of square.',
    'Sie leiten das Gewicht offener Flügel in die Wand und halten den Rahmen im Winkel.',
  ),
  reads: { distances },
  limit: 'distance-blocks',
  band: [],
  applies: ({ practice, opening }) =>
    lookUp(practice, 'distance-blocks', {})?.then.isOptional && !opening.blocks.some(it => it.kind === 'distance')
      ? words('they are optional here, and none is stated', 'sie sind hier freigestellt, und keiner ist genannt')
      : true,
  ask: () => [{ given: {} }],
  compare: (known, { corner_mm }) => blockedWithin(known.distances, corner_mm),
  sum: () => [],
  *remedies(_known, _then, at) {
    yield act(
      words('Set distance blocks at both ends of the jambs', 'Distanzklötze an beide Enden der Leibungen setzen'),
      'opening.blocks',
      at.opening.id,
    )
  },
  examples: [
    {
      when: words('one near each corner', 'einer nahe jeder Ecke'),
      practice: 'DE',
      joint: { planned_mm: 12 },
      known: { distances: [at(150), at(150), at(180), at(180)] },
      verdict: 'met',
    },
    {
      when: words('none above', 'keiner oben'),
      practice: 'DE',
      joint: { planned_mm: 12 },
      known: { distances: [at(150), at(1200), at(180), at(1200)] },
      verdict: 'advice',
    },
  ],
}) // prettier-ignore

function at(off_mm: number): Blocked {
  return { at: words('end of a jamb', 'Ende einer Leibung'), off_mm, isMember: false }
}
