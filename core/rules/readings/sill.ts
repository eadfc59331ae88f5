import { fieldOf, type Sill } from '../../detail'
import type { Stated } from '../../units'
import { type Words, words } from '../../words'
import type { Place } from '../place'
import { placed, type Reading, statedThere } from '../reading'

/** A stated value of the sill, under its field's name. */
export const ofSill = (id: string, of: (it: Sill) => Stated<number> | undefined): Reading<number> => {
  const name = fieldOf(id)?.name
  if (name === undefined) throw new Error(`A rule reads ${id}, and there is no such value`)
  return statedThere({ id, name }, sillId, at => at.opening.sill && of(at.opening.sill))
}

export const sillId = (at: Place): string => at.opening.sill?.id ?? at.opening.id

/** Rules on the sill apply where there is one. */
export const hasSill = ({ opening }: Place): true | Words =>
  opening.sill ? true : words('no outside sill is designed here', 'hier ist keine Fensterbank geplant')

/** Rules on what sheet is folded to apply where the sill is of metal. */
export const hasMetalSill = (at: Place): true | Words => {
  const has = hasSill(at)
  if (has !== true) return has
  return sillKind.placed?.compute(at) === 'metal'
    ? true
    : words('the sill is not of metal', 'die Fensterbank ist nicht aus Metall')
}

/** Whether the sill is of metal, which grows and shrinks with the weather. */
export const sillKind: Reading<'metal' | 'other'> = placed({
  id: 'sill.material',
  name: words('Material of the sill', 'Werkstoff der Fensterbank'),
  compute: at => at.opening.sill && (metals.includes(at.opening.sill.material) ? 'metal' : 'other'),
})

const metals: readonly string[] = ['aluminium', 'steel', 'stainless-steel', 'zinc', 'copper']

/** Length of the sill: as stated, else what the opening leaves between both end gaps. */
export const sillLength: Reading<number> = placed({
  id: 'sill.length',
  name: words('Length of the sill', 'Länge der Fensterbank'),
  compute: ({ opening, round }) => {
    const { sill } = opening
    if (!sill) return undefined
    if (sill.length_mm) return sill.length_mm.value
    const joints = [...round.left, ...round.right].map(it => it.planned_mm.value)
    const beside_mm = Math.max(0, ...joints)
    return opening.width_mm.value + 2 * beside_mm - 2 * (sill.endGap_mm?.value ?? 0)
  },
})
