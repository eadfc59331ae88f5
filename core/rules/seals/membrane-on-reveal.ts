import { profileOf, wallDepths } from '../../detail'
import { exactly } from '../../units'
import { words } from '../../words'
import type { Place } from '../place'
import { placed, type Reading, statedThere } from '../reading'
import { field } from '../readings/field'
import { hasValue } from '../readings/seals'
import { lengthOf } from '../remedies/state'
import { rule } from '../rule'
import type { AnySeal } from '../../seals'

/** Width of the bare flank behind the frame, from its room-side face to that of the bearing layer. */
const bareReveal: Reading<number> = placed({
  id: 'opening.bare-reveal',
  name: words('Bare reveal behind the frame', 'Rohe Leibung hinter dem Rahmen'),
  compute: at => bareRevealOf(at),
  beneath: at => [{ field: 'opening.position', part: at.opening.id, stated: at.opening.position_mm }],
})

const bareRevealOf = ({ wall, frame, opening }: Place): number =>
  wallDepths(wall).bearing_mm - opening.position_mm.value - profileOf(frame).depth_mm

const stated = (seal: AnySeal | undefined, key: string) => {
  const value = seal?.[key]
  // The kinds that have this value state it as a number.
  return typeof value === 'object' && typeof value.value === 'number'
    ? { ...value, value: value.value }
    : undefined
}

const bond = statedThere(
  field('membrane.bond-wall'),
  at => at.seal?.id ?? at.opening.id,
  at => stated(at.seal, 'bondWall_mm'),
)

/** What the membrane takes of the reveal: as stated, else as wide as its bond. */
const onReveal: Reading<number> = placed({
  id: 'membrane.on-reveal',
  name: field('membrane.on-reveal').name,
  compute: at => stated(at.seal, 'onReveal_mm')?.value ?? stated(at.seal, 'bondWall_mm')?.value,
  beneath: at => [
    {
      field: 'membrane.on-reveal',
      part: at.seal?.id ?? at.opening.id,
      stated: stated(at.seal, 'onReveal_mm') ?? { value: 0, basis: 'assumed' },
    },
  ],
})

/** Under plaster a membrane takes little of the reveal, so that plaster still holds on the wall, and is bonded itself. */
export const membraneOnReveal = rule({
  id: 'membrane-on-reveal',
  about: 'part',
  title: words('Membrane under the plaster of the reveal', 'Folie unter dem Leibungsputz'),
  says: words(
    'On a plastered reveal a membrane takes at most 60 mm and half of the bare flank, and most of it is bonded.',
    'Auf verputzter Leibung nimmt eine Folie höchstens 60 mm und die halbe rohe Leibung ein und ist größtenteils verklebt.',
  ),
  why: words(
    'Plaster holds on masonry, not on a loose film: over a broad one it sounds hollow and cracks.',
    'Putz haftet am Mauerwerk, nicht an loser Folie: Über einer breiten klingt er hohl und reißt.',
  ),
  reads: { width_mm: onReveal, bond_mm: bond, bare_mm: bareReveal },
  limit: 'membrane-on-reveal',
  band: [],
  applies: at => {
    const { seal, wall } = at
    if (at.side === 'sill')
      return words('under the sill board nothing is plastered', 'unter der Innenbank wird nicht verputzt')
    if (wall.reveal.lining_mm.value === 0)
      return words('the reveal is not plastered', 'die Leibung wird nicht verputzt')
    if (!seal || seal.plane !== 'inner' || !hasValue(seal, 'membrane.bond-wall'))
      return words('there is no membrane inside', 'innen ist keine Folie')
    return bareRevealOf(at) > 0
      ? true
      : words('the frame stands beyond the bearing layer', 'der Rahmen steht außerhalb der tragenden Schicht')
  },
  ask: () => [{ given: { of: 'width' } }, { given: { of: 'share' } }, { given: { of: 'bonded' } }],
  compare: ({ width_mm, bond_mm, bare_mm }, { least, most }, { given }) => {
    const actual = {
      width: width_mm,
      share: (100 * width_mm) / bare_mm,
      bonded: (100 * bond_mm) / width_mm,
    }[given.of]
    return {
      kind: 'amount',
      actual: exactly(actual),
      required: {
        unit: given.of === 'width' ? 'mm' : 'pct',
        ...(least === undefined ? {} : { min: least }),
        ...(most === undefined ? {} : { max: most }),
      },
    }
  },
  sum: ({ width_mm, bond_mm, bare_mm }) => [
    { sign: '', value: width_mm, unit: 'mm', says: words('width on the reveal', 'Breite auf der Leibung') },
    { sign: '', value: bond_mm, unit: 'mm', says: words('of it bonded', 'davon verklebt') },
    { sign: '', value: bare_mm, unit: 'mm', says: words('bare reveal', 'rohe Leibung') },
  ],
  *remedies({ bare_mm }, _then, at) {
    if (!at.seal) return
    const name = field('membrane.on-reveal').name
    for (const width_mm of [60, Math.floor(bare_mm / 2)])
      yield* lengthOf(name, 'membrane.on-reveal', at.seal.id, width_mm)
  },
  examples: [
    {
      when: words(
        '49 mm, 40 of them bonded, on a bare reveal of 99 mm',
        '49 mm, davon 40 verklebt, auf 99 mm roher Leibung',
      ),
      practice: 'DE',
      joint: { planned_mm: 12 },
      known: { width_mm: 49, bond_mm: 40, bare_mm: 99 },
      verdict: 'met',
    },
    {
      when: words('the same on a reveal of 90 mm', 'dieselbe auf 90 mm Leibung'),
      practice: 'DE',
      joint: { planned_mm: 12 },
      known: { width_mm: 49, bond_mm: 40, bare_mm: 90 },
      verdict: 'not-met',
    },
    {
      when: words('80 mm of which half is bonded', '80 mm, davon die Hälfte verklebt'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { width_mm: 80, bond_mm: 40, bare_mm: 290 },
      verdict: 'not-met',
    },
    {
      when: words('a British reveal', 'eine britische Leibung'),
      practice: 'UK',
      joint: { planned_mm: 8 },
      known: { width_mm: 50, bond_mm: 50, bare_mm: 150 },
      verdict: 'refer',
    },
  ],
})
