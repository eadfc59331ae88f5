import { exactly } from '../../units'
import { type Words, words } from '../../words'
import type { Place } from '../place'
import { placed, type Reading } from '../reading'
import { isBaseOf } from '../readings/wall'
import { act } from '../remedies/state'
import { rule } from '../rule'
import { boundsOf } from '../told-rules'

/** Moisture of the timber that the joint is built against: frame and wall, as far as they are of timber. */
type Moist = readonly { readonly of: 'frame' | 'wall'; readonly pct: number }[]

const isTimberFrame = ({ frame }: Place): boolean =>
  frame.material === 'timber' || frame.material === 'timber-aluminium'
const isTimberWall = (at: Place): boolean => isBaseOf(at, ['timber'])

const moisture: Reading<Moist> = placed({
  id: 'opening.timber-moisture',
  name: words('Moisture of the timber', 'Feuchte des Holzes'),
  compute: at => {
    const { told } = at.opening
    const ofFrame = isTimberFrame(at) ? told?.frameMoisture_pct : undefined
    const ofWall = isTimberWall(at) ? told?.wallMoisture_pct : undefined
    const all = [
      ...(ofFrame ? [{ of: 'frame' as const, pct: ofFrame.value }] : []),
      ...(ofWall ? [{ of: 'wall' as const, pct: ofWall.value }] : []),
    ]
    return all.length === Number(isTimberFrame(at)) + Number(isTimberWall(at)) ? all : undefined
  },
  beneath: at => [
    ...(isTimberFrame(at)
      ? [{ field: 'opening.frame-moisture', part: at.opening.id, stated: at.opening.told?.frameMoisture_pct }]
      : []),
    ...(isTimberWall(at)
      ? [{ field: 'opening.wall-moisture', part: at.opening.id, stated: at.opening.told?.wallMoisture_pct }]
      : []),
  ],
})

/** Timber is dry before the joint is closed. */
export const timberMoisture = rule({
  id: 'timber-moisture',
  about: 'opening',
  title: words('Moisture of timber', 'Holzfeuchte'),
  says: words(
    'A timber frame has at most 15 % of moisture when it is sealed, timber in the wall at most 18 %.',
    'Ein Holzrahmen hat beim Abdichten höchstens 15 % Feuchte, Holz in der Wand höchstens 18 %.',
  ),
  why: words(
    'Wet timber shrinks away from its seals and goes on giving its water to the joint.',
    'Nasses Holz schwindet von seinen Dichtungen weg und gibt sein Wasser an die Fuge ab.',
  ),
  reads: { moisture },
  limit: 'timber-moisture',
  band: [],
  applies: (at): true | Words =>
    isTimberFrame(at) || isTimberWall(at) || words('nothing here is of timber', 'hier ist nichts aus Holz'),
  ask: known => {
    const [first, ...more] = known.moisture.map(it => ({ given: { of: it.of }, width_mm: it.pct }))
    return [first ?? { given: { of: 'frame' }, width_mm: 0 }, ...more]
  },
  compare: (_known, then, { width_mm = 0 }) => ({
    kind: 'amount',
    actual: exactly(width_mm),
    required: boundsOf(then, 'pct'),
  }),
  sum: () => [],
  *remedies(_known, _then, at) {
    yield act(words('Dry the timber before sealing', 'Holz vor dem Abdichten trocknen'), 'opening.frame-moisture', at.opening.id)
  },
  examples: [
    {
      when: words('a frame of 13 %', 'ein Rahmen mit 13 %'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { moisture: [{ of: 'frame', pct: 13 }] },
      verdict: 'met',
    },
    {
      when: words('a frame of 19 %', 'ein Rahmen mit 19 %'),
      practice: 'DE',
      joint: { planned_mm: 12 },
      known: { moisture: [{ of: 'frame', pct: 19 }] },
      verdict: 'advice',
    },
    {
      when: words('a dry frame in a wet timber wall', 'ein trockener Rahmen in nasser Holzwand'),
      practice: 'UK',
      joint: { planned_mm: 8 },
      known: { moisture: [{ of: 'frame', pct: 13 }, { of: 'wall', pct: 22 }] },
      verdict: 'advice',
    },
  ],
}) // prettier-ignore
