import { exactly } from '../../units'
import { words } from '../../words'
import { atBothEnds } from '../at-both-ends'
import { type Cover, cover } from '../readings/cover'
import { field } from '../readings/field'
import { act, lengthOf } from '../remedies/state'
import { rule } from '../rule'

/** Enough of the frame is left in sight outside. */
export const visibleFace = rule({
  id: 'visible-face',
  about: 'zone',
  title: words('Visible face of the frame', 'Sichtbare Ansicht des Rahmens'),
  says: words(
    'Outside enough of the face of the frame stays free for seals, drainage and hinges.',
    'Außen bleibt genug Rahmenansicht frei für Dichtungen, Entwässerung und Bänder.',
  ),
  why: words(
    'What is covered too far cannot be sealed, and insulation closes the drain slots.',
    'Was zu weit überdeckt ist, lässt sich nicht abdichten, und Dämmung schließt die Entwässerung.',
  ),
  reads: { cover },
  limit: 'visible-face',
  band: ['still'],
  applies: ({ side }) =>
    side === 'sill' ? words('the sill closes the wall here', 'hier schließt die Fensterbank') : true,
  ask: (known, { still_mm }) => atBothEnds(still_mm, () => ({ by: known.cover.by })),
  compare: (known, { least_mm }, { state }) => ({
    kind: 'amount',
    actual: exactly(known.cover.visible_mm[state === 'widest' ? 'max' : 'min']),
    required: { unit: 'mm', min: least_mm },
  }),
  sum: (known, _then, { state }) => {
    const covered_mm = known.cover.cover_mm[state === 'widest' ? 'min' : 'max']
    const { face_mm } = known.cover
    return [
      { sign: '', value: face_mm, unit: 'mm', says: words('face of the frame', 'Ansichtsbreite') },
      { sign: '−', value: covered_mm, unit: 'mm', says: words('cover', 'Überdeckung') },
      { sign: '=', value: face_mm - covered_mm, unit: 'mm', says: words('left in sight', 'sichtbar') },
    ]
  },
  *remedies(known, { least_mm }, at) {
    const { by, face_mm } = known.cover
    if (by === 'rebate')
      yield act(
        words(
          'Choose a frame with a broader face, or extend it',
          'Rahmen mit breiterer Ansicht wählen oder verbreitern',
        ),
        'joint.planned',
        at.joint.id,
      )
    else
      yield* lengthOf(field('reveal.cover').name, 'reveal.cover', at.wall.id, Math.max(0, face_mm - least_mm))
  },
  examples: [
    {
      when: words('35 mm of 70 mm covered', '35 von 70 mm überdeckt'),
      practice: 'DE',
      joint: { planned_mm: 12 },
      known: { cover: covered('insulation', 35, 35) },
      verdict: 'met',
    },
    {
      when: words('27 mm left beside a German rebate', '27 mm neben einem deutschen Anschlag'),
      practice: 'DE',
      joint: { planned_mm: 12 },
      known: { cover: covered('rebate', 43, 27) },
      verdict: 'advice',
    },
    {
      when: words('10 mm left', '10 mm sichtbar'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { cover: covered('insulation', 60, 10) },
      verdict: 'not-met',
    },
  ],
})

/** What covers the frame, and what is left of it. A function, because the examples above call it. */
function covered(by: Cover['by'], cover_mm: number, left_mm: number): Cover {
  return {
    by,
    face_mm: cover_mm + left_mm,
    laps_mm: cover_mm,
    cover_mm: { min: cover_mm, max: cover_mm },
    visible_mm: { min: left_mm, max: left_mm },
  }
}
