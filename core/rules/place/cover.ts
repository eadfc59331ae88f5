import { exactly } from '../../units'
import { words } from '../../words'
import { type Cover, cover, coverBy } from '../readings/cover'
import { field } from '../readings/field'
import { stillSum } from '../readings/terms'
import { act, lengthOf } from '../remedies/state'
import { rule } from '../rule'

/** Insulation, a closer or the nib of a rebate covers enough of the frame. */
export const frameCover = rule({
  id: 'cover',
  about: 'zone',
  title: words('Cover of the frame', 'Überdeckung des Rahmens'),
  says: words(
    'Insulation, cavity closer or rebate laps the frame, even where the joint is widest.',
    'Dämmung, Hohlraumschließe oder Anschlag überdeckt den Rahmen, auch wo die Fuge am breitesten ist.',
  ),
  why: words(
    'What is not covered is a cold edge: heat runs past the frame, and the reveal inside grows damp.',
    'Was nicht überdeckt ist, bleibt kalt: Wärme fließt am Rahmen vorbei, und innen wird die Leibung feucht.',
  ),
  reads: { cover },
  limit: 'cover',
  band: ['still'],
  applies: at => {
    if (at.side === 'sill') return words('the sill closes the wall here', 'hier schließt die Fensterbank')
    return coverBy(at) === 'finish'
      ? words('nothing but a finish stands before the frame', 'vor dem Rahmen steht nur eine Oberfläche')
      : true
  },
  ask: known => [
    { given: { by: known.cover.by === 'finish' ? 'insulation' : known.cover.by }, state: 'widest' },
  ],
  compare: (known, { least_mm }) => ({
    kind: 'amount',
    actual: exactly(known.cover.cover_mm.min),
    required: { unit: 'mm', min: least_mm },
  }),
  sum: (known, _then, _asked, band) => (known.cover.by === 'rebate' ? lapSum(known.cover, band) : []),
  *remedies(known, { least_mm }, at) {
    if (known.cover.by === 'rebate')
      yield act(
        words(
          'Insulate the reveal inside, or build the nib further over the frame',
          'Leibung innen dämmen oder den Anschlag weiter über den Rahmen führen',
        ),
        'joint.planned',
        at.joint.id,
      )
    else yield* lengthOf(field('reveal.cover').name, 'reveal.cover', at.wall.id, least_mm)
  },
  examples: [
    {
      when: words('35 mm of insulation over the frame', '35 mm Dämmung über dem Rahmen'),
      practice: 'DE',
      joint: { planned_mm: 12 },
      known: { cover: covered('insulation', 35, 70) },
      verdict: 'met',
    },
    {
      when: words('a British closer that laps by 10 mm', 'eine britische Hohlraumschließe mit 10 mm'),
      practice: 'UK',
      joint: { planned_mm: 5 },
      known: { cover: covered('closer', 10, 70) },
      verdict: 'advice',
    },
    {
      when: words('a rebate in Austria, for which no figure is known', 'ein Anschlag in Österreich, ohne bekannten Wert'),
      practice: 'AT',
      joint: { planned_mm: 12 },
      known: { cover: covered('rebate', 42, 70) },
      verdict: 'refer',
    },
  ],
}) // prettier-ignore

const lapSum = ({ laps_mm, cover_mm }: Cover, band: Parameters<typeof stillSum>[0]) =>
  [
    ...stillSum(band, 'widest'),
    { sign: '', value: laps_mm, unit: 'mm', says: words('lap of the nib', 'Anschlagbreite') },
    { sign: '=', value: cover_mm.min, unit: 'mm', says: words('less the joint', 'abzüglich Fuge') },
  ] as const

/** A cover that does not change with the joint. A function, because the examples above call it. */
function covered(by: Cover['by'], cover_mm: number, face_mm: number): Cover {
  const left_mm = face_mm - cover_mm
  return {
    by,
    face_mm,
    laps_mm: cover_mm,
    cover_mm: { min: cover_mm, max: cover_mm },
    visible_mm: { min: left_mm, max: left_mm },
  }
}
