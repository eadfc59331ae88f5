import { exactly } from '../../units'
import { words } from '../../words'
import { embedment as inBearing, fixingKind, noBracket } from '../readings/fixings'
import { anchorBase, isBaseOf, weakBase } from '../readings/wall'
import { act, lengthOf } from '../remedies/state'
import { rule } from '../rule'

/** A fixing sits deep enough in the bearing layer; plaster, insulation and cavity never count. */
export const embedmentDepth = rule({
  id: 'embedment',
  about: 'fixing',
  title: words('Embedment of fixings', 'Verankerungstiefe'),
  says: words(
    'A screw or plug sits in the bearing layer as deep as that layer needs.',
    'Schraube oder Dübel sitzt so tief in der tragenden Schicht, wie diese es braucht.',
  ),
  why: words(
    'Only the bearing layer holds. What a screw passes before it is length, and no hold.',
    'Nur die tragende Schicht hält. Was die Schraube davor durchquert, ist Länge und kein Halt.',
  ),
  reads: { embedment_mm: inBearing, base: anchorBase, fixing: fixingKind },
  limit: 'embedment',
  band: [],
  applies: at =>
    isBaseOf(at, ['timber'])
      ? words('in timber the thread is asked for', 'in Holz wird das Gewinde abgefragt')
      : noBracket(at),
  ask: ({ base, fixing }) => [{ given: { base: base.base, fixing } }],
  compare: ({ embedment_mm }, { least_mm }) => ({
    kind: 'amount',
    actual: exactly(embedment_mm),
    required: { unit: 'mm', min: least_mm },
  }),
  sum: ({ embedment_mm }) => (embedment_mm > 0 ? [] : [{ sign: '', value: 0, unit: 'mm', says: besideIt }]),
  *remedies({ embedment_mm }, { least_mm }, at) {
    // a longer screw meets nothing there either
    if (embedment_mm === 0) yield act(meetIt, 'opening.position', at.opening.id)
    else if (at.fixing) yield* lengthOf(inBearing.name, 'fixing.embedment', at.fixing.id, least_mm)
  },
  caution: ({ base }) => weakBase(base),
  examples: [
    {
      when: words('a screw 60 mm deep in sand-lime brick', 'eine Schraube 60 mm tief in Kalksandstein'),
      practice: 'DE',
      joint: { planned_mm: 12 },
      known: { embedment_mm: 60, base: { base: 'sand-lime', isKnown: true }, fixing: 'frame-screw' },
      verdict: 'met',
    },
    {
      when: words('50 mm deep', '50 mm tief'),
      practice: 'AT',
      joint: { planned_mm: 12 },
      known: { embedment_mm: 50, base: { base: 'sand-lime', isKnown: true }, fixing: 'frame-screw' },
      verdict: 'advice',
    },
    {
      when: words('30 mm deep', '30 mm tief'),
      practice: 'UK',
      joint: { planned_mm: 5 },
      known: { embedment_mm: 30, base: { base: 'solid-brick', isKnown: true }, fixing: 'frame-screw' },
      verdict: 'not-met',
    },
    {
      when: words('a plug 70 mm deep in aerated concrete', 'ein Dübel 70 mm tief in Porenbeton'),
      practice: 'DE',
      joint: { planned_mm: 25 },
      known: { embedment_mm: 70, base: { base: 'aerated-concrete', isKnown: true }, fixing: 'frame-plug' },
      verdict: 'refer',
    },
    {
      when: words(
        'a screw 80 mm deep in brick of unknown strength',
        'eine Schraube 80 mm tief in Ziegel unbekannter Festigkeit',
      ),
      practice: 'DE',
      joint: { planned_mm: 12 },
      known: { embedment_mm: 80, base: { base: 'solid-brick', isKnown: false }, fixing: 'frame-screw' },
      verdict: 'refer',
    },
  ],
})

const besideIt = words(
  'the axis passes beside the bearing layer',
  'die Achse läuft an der tragenden Schicht vorbei',
)
const meetIt = words(
  'Hold the frame by brackets, or set it back until its screws meet the bearing layer',
  'Rahmen mit Konsolen halten oder zurücksetzen, bis seine Schrauben die tragende Schicht treffen',
)
