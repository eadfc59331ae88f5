import { exactly } from '../../units'
import { type Words, words } from '../../words'
import { field } from '../readings/field'
import { hasValue } from '../readings/seals'
import { lengthOf } from '../remedies/state'
import { type AnyRule, rule } from '../rule'

type Bond = {
  readonly id: 'membrane-on-frame' | 'membrane-on-wall'
  readonly field: 'membrane.bond-frame' | 'membrane.bond-wall'
  readonly title: Words
  readonly says: Words
  readonly why: Words
  /** a bond that is wide enough, and one that is not */
  readonly enough_mm: number
  readonly short_mm: number
}

/** A membrane is bonded to what it joins over a least width. */
const membraneBond = (bond: Bond): AnyRule =>
  rule({
    id: bond.id,
    about: 'part',
    title: bond.title,
    says: bond.says,
    why: bond.why,
    reads: { bond_mm: field(bond.field) },
    limit: bond.id,
    band: [],
    applies: ({ seal }) =>
      seal && hasValue(seal, bond.field) ? true : words('there is no membrane here', 'hier ist keine Folie'),
    ask: () => [{ given: {} }],
    compare: ({ bond_mm }, { least_mm }) => ({
      kind: 'amount',
      actual: exactly(bond_mm),
      required: { unit: 'mm', min: least_mm },
    }),
    sum: () => [],
    *remedies(_known, { least_mm }, at) {
      if (!at.seal) return
      yield* lengthOf(field(bond.field).name, bond.field, at.seal.id, least_mm)
    },
    examples: [
      {
        when: words('a bond as wide as asked', 'eine Klebung so breit wie verlangt'),
        practice: 'DE',
        joint: { planned_mm: 15 },
        known: { bond_mm: bond.enough_mm },
        verdict: 'met',
      },
      {
        when: words('a bond that is a little narrower', 'eine etwas schmalere Klebung'),
        practice: 'AT',
        joint: { planned_mm: 15 },
        known: { bond_mm: bond.short_mm },
        verdict: 'not-met',
      },
    ],
  })

export const membraneOnFrame = membraneBond({
  id: 'membrane-on-frame',
  field: 'membrane.bond-frame',
  title: words('Membrane bonded to the frame', 'Folie am Rahmen verklebt'),
  says: words(
    'A membrane is bonded to the flank of the frame over a least width.',
    'Eine Folie ist an der Rahmenflanke auf einer Mindestbreite verklebt.',
  ),
  why: words(
    'A narrow strip peels off when the joint moves, and nobody sees it behind the plaster.',
    'Ein schmaler Streifen löst sich, wenn sich die Fuge bewegt, und hinter dem Putz sieht es niemand.',
  ),
  enough_mm: 15,
  short_mm: 12,
})

export const membraneOnWall = membraneBond({
  id: 'membrane-on-wall',
  field: 'membrane.bond-wall',
  title: words('Membrane bonded to the wall', 'Folie an der Wand verklebt'),
  says: words(
    'A membrane is bonded to the wall over a least width.',
    'Eine Folie ist an der Wand auf einer Mindestbreite verklebt.',
  ),
  why: words(
    'Masonry is rough and dusty: only a broad bond holds in enough places to stay tight.',
    'Mauerwerk ist rau und staubig: Nur eine breite Klebung haftet an genug Stellen, um dicht zu bleiben.',
  ),
  enough_mm: 40,
  short_mm: 30,
})
