import { profileOf, wallDepths } from '../../detail'
import { exactly } from '../../units'
import { words } from '../../words'
import type { Place } from '../place'
import { placed, type Reading } from '../reading'
import { wallKind } from '../readings/wall'
import { lengthOf } from '../remedies/state'
import { rule } from '../rule'

/** Where the frame stands in its wall. */
type Standing = {
  readonly wall: 'one-leaf' | 'insulated'
  /** middle of the frame from the outer face of the bearing layer, as a share of it too */
  readonly middle_mm: number
  readonly share: number
  /** between the insulation and the outer face of the frame */
  readonly gap_mm: number
}

const standing: Reading<Standing> = placed({
  id: 'opening.standing',
  name: words('Place of the frame in the wall', 'Lage des Rahmens in der Wand'),
  compute: at => standingOf(at),
  beneath: at => [{ field: 'opening.position', part: at.opening.id, stated: at.opening.position_mm }],
})

const standingOf = ({ wall, frame, opening }: Place): Standing => {
  const position_mm = opening.position_mm.value
  const middle_mm = position_mm + profileOf(frame).depth_mm / 2
  // insulation that laps the frame closes the outer reveal up to it
  const isLapped = wall.reveal.cover_mm.value > 0
  return {
    wall: wallKind(wall) === 'insulated' ? 'insulated' : 'one-leaf',
    middle_mm,
    share: middle_mm / wallDepths(wall).bearing_mm,
    gap_mm: isLapped ? 0 : Math.max(0, position_mm),
  }
}

/** A frame stands where the wall keeps it warm: in the middle of one leaf, at or in outside insulation. */
export const framePlace = rule({
  id: 'frame-position',
  about: 'opening',
  title: words('Place of the frame in the wall', 'Lage des Rahmens in der Wand'),
  says: words(
    'In one leaf the middle of the frame lies in the middle third; before insulation the frame touches it or stands in it.',
    'In einschaliger Wand liegt die Rahmenmitte im mittleren Drittel, bei Außendämmung berührt der Rahmen sie oder steht in ihr.',
  ),
  why: words(
    'Beside the warm part of the wall the reveal inside gets cold, and mould grows on it.',
    'Neben dem warmen Teil der Wand wird die Leibung innen kalt, und Schimmel wächst darauf.',
  ),
  reads: { standing },
  limit: 'frame-position',
  band: [],
  applies: ({ wall }) =>
    wallKind(wall) === 'other'
      ? words('the wall is insulated on its room side', 'die Wand ist innen gedämmt')
      : wall.reveal.form === 'inner-rebate' || wall.reveal.form === 'outer-rebate'
        ? words('the rebate gives the place', 'der Anschlag gibt die Lage vor')
        : true,
  ask: known => [{ given: { wall: known.standing.wall } }],
  compare: (known, { least, most }) =>
    known.standing.wall === 'insulated'
      ? { kind: 'amount', actual: exactly(known.standing.gap_mm), required: { unit: 'mm', max: most } }
      : {
          kind: 'amount',
          actual: exactly(known.standing.middle_mm),
          required: {
            unit: 'mm',
            ...(least === undefined ? {} : { min: least * thicknessOf(known.standing) }),
            max: most * thicknessOf(known.standing),
          },
        },
  sum: () => [],
  *remedies(known, { least, most }, at) {
    const name = words('frame from the bearing layer', 'Rahmen ab tragender Schicht')
    const { wall, middle_mm } = known.standing
    const thick_mm = thicknessOf(known.standing)
    const half_mm = middle_mm - at.opening.position_mm.value
    const to_mm =
      wall === 'insulated' ? 0 : middle_mm < most * thick_mm ? (least ?? 0) * thick_mm : most * thick_mm
    const place_mm = wall === 'insulated' ? 0 : to_mm - half_mm
    // a frame is set to the millimetre, into the band
    yield* lengthOf(name, 'opening.position', at.opening.id, middle_mm < to_mm ? Math.ceil(place_mm) : Math.floor(place_mm)) // prettier-ignore
  },
  examples: [
    {
      when: words('178 mm deep in a leaf of 365 mm', '178 mm tief in einer Schale von 365 mm'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { standing: { wall: 'one-leaf', middle_mm: 178, share: 178 / 365, gap_mm: 140 } },
      verdict: 'met',
    },
    {
      when: words('62 mm deep in the same leaf', '62 mm tief in derselben Schale'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { standing: { wall: 'one-leaf', middle_mm: 62, share: 62 / 365, gap_mm: 25 } },
      verdict: 'advice',
    },
    {
      when: words('a frame within the insulation', 'ein Rahmen in der Dämmung'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { standing: { wall: 'insulated', middle_mm: -145, share: -0.725, gap_mm: 0 } },
      verdict: 'met',
    },
  ],
})

const thicknessOf = ({ middle_mm, share }: Standing): number => (share === 0 ? 0 : middle_mm / share)
