import type { Edit, Joint } from '../../detail'
import type { Id } from '../../geometry'
import type { Practice } from '../../practice'
import { type AnySeal, kindOf } from '../../seals'
import { type Band, inWords, specified, writeNumber, writeQuantity } from '../../units'
import { filled, isSome, listed, type Words, words } from '../../words'
import type { Remedy } from '../finding'
import { hasBreaker } from '../readings/breaker'
import { hasValue } from '../readings/seals'
import { beadDepth, rodSize, type Room, tapeRange_mm } from './sizes'

/** Changes of a joint, as edits and in words: "bead 8 mm deep". */
export type Design = { readonly edits: readonly Edit[]; readonly says: readonly Words[] }

/** Several changes one after the other. */
export const together = (all: readonly Design[]): Design => ({
  edits: all.flatMap(it => it.edits),
  says: all.flatMap(it => it.says),
})

/** Changes as a remedy; none where there is nothing to change. Two seals with the same new value are said once. */
export const choose = ({ edits, says }: Design): readonly Remedy[] => {
  const once = says.filter((it, i) => says.findIndex(other => other.en === it.en) === i)
  return isSome(edits)
    ? [{ kind: 'change', say: filled(words('Choose: {0}', 'Wählen: {0}'), listed(once)), edits }]
    : []
}

/** Whether sizes can be found with which every seal of a joint suits it. */
export const canSuit = (joint: Joint, room: Room, practice: Practice): boolean => {
  const has = (field: string) => joint.seals.some(seal => hasValue(seal, field))
  const ranges = joint.seals.flatMap(seal => {
    const { ranges_mm } = kindOf(seal)
    return ranges_mm ? [ranges_mm] : []
  })
  if (ranges.some(it => !tapeRange_mm(room, it).suits)) return false
  const wantsRod = joint.seals.some(seal => hasValue(seal, 'sealant.rod') && !hasBreaker(seal))
  if (wantsRod && !rodSize(room, practice).suits) return false
  return !has('sealant.depth') || beadDepth(room, practice).suits
}

/** The best sizes for every seal of a joint: depth of a bead, its rod, the range of a tape. */
export const fitSeals = (joint: Joint, room: Room, practice: Practice): Design =>
  together(
    joint.seals.flatMap(seal => [
      fitDepth(seal, room, practice),
      fitRod(seal, room, practice),
      fitTape(seal, room),
    ]),
  )

/** The best depth of a bead; nothing to change in other seals. */
export const fitDepth = (seal: AnySeal, room: Room, practice: Practice): Design =>
  states(
    seal,
    'sealant.depth',
    () => beadDepth(room, practice).value,
    words('bead {0} deep', 'Fugentiefe {0}'),
  )

/** The best rod behind a bead that does not lie on a bond breaker. */
export const fitRod = (seal: AnySeal, room: Room, practice: Practice): Design =>
  hasBreaker(seal)
    ? { edits: [], says: [] }
    : states(seal, 'sealant.rod', () => rodSize(room, practice).value, words('rod Ø {0}', 'Schnur Ø {0}'))

/** The best range of a tape. */
export const fitTape = (seal: AnySeal, room: Room): Design => {
  const range = (): Band => tapeRange_mm(room, kindOf(seal).ranges_mm ?? []).value
  const edits = [
    ...states(seal, 'tape.least', () => range().min, nothingToSay).edits,
    ...states(seal, 'tape.most', () => range().max, nothingToSay).edits,
  ]
  return { edits, says: isSome(edits) ? [filled(words('tape {0}', 'Band {0}'), sizeOf(range()))] : [] }
}

/** States a value of a seal as specified; nothing to do where the seal has no such value, or has it already. */
const states = (seal: AnySeal, field: string, wanted: () => number, says: Words): Design => {
  const key = kindOf(seal).values.find(it => it.id === field)?.key
  if (key === undefined) return { edits: [], says: [] }
  const value = wanted()
  const now = seal[key]
  if (typeof now === 'object' && now.value === value) return { edits: [], says: [] }
  return { edits: [stateIt(field, seal.id, value)], says: [filled(says, lengthIn(value))] }
}

/** An edit that specifies a value. */
export const stateIt = (field: string, part: Id, value: number): Edit => ({
  kind: 'state',
  at: { field, part },
  to: specified(value),
})

/** A length in words, with as many decimals as it has. */
export const lengthIn = (value_mm: number): Words =>
  inWords(language => writeQuantity(value_mm, 'mm', language))

const sizeOf = (range: Band): Words =>
  inWords(language => `${writeNumber(range.min, language)}–${writeQuantity(range.max, 'mm', language)}`)

const nothingToSay = words('', '')
