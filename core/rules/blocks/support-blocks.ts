import { words } from '../../words'
import { type Blocked, blockedWithin, supports } from '../readings/blocks'
import { act } from '../remedies/state'
import { rule } from '../rule'

/** The frame stands on blocks under each of its load paths; screws carry no weight. */
export const supportBlocks = rule({
  id: 'support-blocks',
  about: 'opening',
  title: words('Support blocks under the load', 'Tragklötze unter der Last'),
  says: words(
    'Permanent blocks stand under both lower corners and under every mullion.',
    'Bleibende Klötze stehen unter beiden unteren Ecken und unter jedem Pfosten.',
  ),
  why: words(
    'A frame that hangs on its screws sags; sashes bind and the joint at the head opens.',
    'Ein Rahmen, der an Schrauben hängt, sackt ab; Flügel klemmen, und die Fuge am Sturz geht auf.',
  ),
  reads: { supports },
  limit: 'support-blocks',
  band: [],
  applies: () => true,
  ask: () => [{ given: {} }],
  compare: (known, { corner_mm }) => blockedWithin(known.supports, corner_mm),
  sum: () => [],
  *remedies(_known, _then, at) {
    yield act(
      words(
        'Set permanent pressure-resistant blocks under both corners and each mullion, take the wedges out',
        'Bleibende druckfeste Klötze unter beide Ecken und jeden Pfosten setzen, Keile entfernen',
      ),
      'opening.blocks',
      at.opening.id,
    )
  },
  examples: [
    {
      when: words('blocks at both corners and the mullion', 'Klötze an beiden Ecken und am Pfosten'),
      practice: 'DE',
      joint: { planned_mm: 12 },
      known: { supports: [stand(150), stand(150), under(0)] },
      verdict: 'met',
    },
    {
      when: words('nothing under the mullion', 'nichts unter dem Pfosten'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { supports: [stand(150), stand(150), under(700)] },
      verdict: 'not-met',
    },
    {
      when: words('nobody says where blocks stand', 'niemand sagt, wo Klötze stehen'),
      practice: 'UK',
      joint: { planned_mm: 5 },
      known: {},
      verdict: 'unknown',
    },
  ],
})

function stand(off_mm: number): Blocked {
  return { at: words('lower corner', 'untere Ecke'), off_mm, isMember: false }
}
function under(off_mm: number): Blocked {
  return { at: words('under a mullion', 'unter einem Pfosten'), off_mm, isMember: true }
}
