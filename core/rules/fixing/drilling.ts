import { words } from '../../words'
import { statedThere } from '../reading'
import { anchorBase, isBaseOf } from '../readings/wall'
import { wordOf } from '../remedies/state'
import { rule } from '../rule'

const drilling = statedThere(
  { id: 'fixing.drilling', name: words('Drilling', 'Bohrverfahren') },
  at => at.fixing?.id ?? at.opening.id,
  at => at.fixing?.drilling,
)

const how = {
  rotary: words('rotary, without hammer', 'drehend, ohne Schlag'),
  hammer: words('with hammer', 'mit Schlag'),
} as const

/** Hollow and aerated units are drilled without hammer. */
export const drillingRule = rule({
  id: 'drilling',
  about: 'fixing',
  title: words('Drilling in hollow masonry', 'Bohren in Loch- und Porensteinen'),
  says: words(
    'Perforated brick and aerated concrete are drilled with rotation only.',
    'Hochlochziegel und Porenbeton werden nur drehend gebohrt.',
  ),
  why: words(
    'The hammer breaks the webs behind the face; half of what a plug holds can be lost.',
    'Der Schlag bricht die Stege hinter der Außenschale; die Hälfte des Halts kann verloren gehen.',
  ),
  reads: { drilling, base: anchorBase },
  limit: 'drilling',
  band: [],
  applies: at => {
    if (!isBaseOf(at, ['perforated-brick', 'aerated-concrete']))
      return words('the base is solid', 'der Untergrund ist voll')
    return at.fixing?.kind === 'frame-screw' || at.fixing?.kind === 'frame-plug'
      ? true
      : words('no screw or plug goes into the masonry here', 'hier geht keine Schraube ins Mauerwerk')
  },
  ask: ({ base }) => [{ given: { base: base.base } }],
  compare: known => ({
    kind: 'presence',
    there: [how[known.drilling]],
    missing: known.drilling === 'rotary' ? [] : [how.rotary],
  }),
  sum: () => [],
  *remedies(_known, { allowed }, at) {
    if (!at.fixing) return
    for (const one of allowed) yield* wordOf(at.project, 'fixing.drilling', at.fixing.id, one)
  },
  examples: [
    {
      when: words('perforated brick, drilled without hammer', 'Hochlochziegel, ohne Schlag gebohrt'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { drilling: 'rotary', base: { base: 'perforated-brick', isKnown: true } },
      verdict: 'met',
    },
    {
      when: words('aerated concrete, drilled with hammer', 'Porenbeton, mit Schlag gebohrt'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { drilling: 'hammer', base: { base: 'aerated-concrete', isKnown: true } },
      verdict: 'not-met',
    },
    {
      when: words('nobody says how it is drilled', 'niemand sagt, wie gebohrt wird'),
      practice: 'UK',
      joint: { planned_mm: 5 },
      known: { base: { base: 'perforated-brick', isKnown: true } },
      verdict: 'unknown',
    },
  ],
})
