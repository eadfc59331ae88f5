import { type Layer, profileOf } from '../../detail'
import { kindOf } from '../../seals'
import { filled, same, type Words, words } from '../../words'
import type { Place } from '../place'
import { placed, type Reading } from '../reading'
import { hasValue } from '../readings/seals'
import { isFirm } from '../../materials'
import { layersBetween, materialAtFlank } from '../readings/wall'
import { replaceSeal } from '../remedies/remedies'
import { act, lengthOf } from '../remedies/state'
import { rule } from '../rule'

/** What a tape lies against on the side of the wall, firm and soft; nothing at all beyond the wall. */
type Flank = { readonly firm: readonly Words[]; readonly soft: readonly Words[] }

/** The layers on the flank where the tape lies: from its end of the joint, over its width. */
const tapeFlank: Reading<Flank> = placed({
  id: 'seal.flank',
  name: words('Flank that the tape lies against', 'Flanke, an der das Band liegt'),
  compute: at => flankOf(at),
  beneath: at => [{ field: 'opening.position', part: at.opening.id, stated: at.opening.position_mm }],
})

const flankOf = (at: Place): Flank | undefined => {
  const width_mm = at.seal && kindOf(at.seal).takesDepth(at.seal, at.joint.planned_mm.value)
  if (typeof width_mm !== 'number') return undefined
  const outer_mm = at.opening.position_mm.value
  const inner_mm = outer_mm + profileOf(at.frame).depth_mm
  const lies = at.seal?.plane === 'inner' ? [inner_mm - width_mm, inner_mm] : [outer_mm, outer_mm + width_mm]
  const layers = layersBetween(at.wall, lies[0] ?? 0, lies[1] ?? 0)
  const names = (firm: boolean) =>
    layers.filter(it => isFirm(materialAtFlank(at, it)) === firm).map(it => nameAt(at, it))
  return { firm: names(true), soft: layers.length === 0 ? [nothing] : names(false) }
}

const nameAt = (at: Place, layer: Layer): Words => materialAtFlank(at, layer)?.name ?? same(layer.material)
const nothing = words('no wall behind it', 'keine Wand dahinter')

/** A tape lies between two firm flanks over its whole width. */
export const tapeFlanks = rule({
  id: 'tape-flanks',
  about: 'part',
  title: words('Firm flanks for the tape', 'Feste Flanken für das Band'),
  says: words(
    'Over its whole width a tape lies between firm flanks: masonry, concrete, timber, a rigid frame, never insulation or the edge of a render.',
    'Ein Band liegt auf ganzer Breite zwischen festen Flanken: Mauerwerk, Beton, Holz, fester Rahmen, nie Dämmung oder Putzkante.',
  ),
  why: words(
    'A tape seals by pressing. What gives way takes the pressure off it, and rain gets behind it.',
    'Ein Band dichtet durch Druck. Was nachgibt, nimmt ihm den Druck, und Regen gelangt dahinter.',
  ),
  reads: { flank: tapeFlank },
  limit: 'tape-flanks',
  band: [],
  applies: ({ seal }) =>
    seal && hasValue(seal, 'tape.least') ? true : words('there is no tape here', 'hier ist kein Fugenband'),
  ask: () => [{ given: {} }],
  compare: ({ flank }) => ({
    kind: 'presence',
    there: [...flank.firm, frame],
    missing: flank.soft.map(it => filled(words('firm instead of: {0}', 'fest statt: {0}'), it)),
  }),
  sum: () => [],
  *remedies(_known, _then, at) {
    yield act(
      words(
        'Set a rigid installation frame round the opening, for the tape to lie against',
        'Festen Montagerahmen um die Öffnung setzen, an dem das Band liegt',
      ),
      'opening.position',
      at.opening.id,
    )
    const name = words('frame from the bearing layer', 'Rahmen ab tragender Schicht')
    if (at.opening.position_mm.value < 0) yield* lengthOf(name, 'opening.position', at.opening.id, 0)
    if (at.seal) yield* replaceSeal(at, at.seal)
  },
  examples: [
    {
      when: words('between brick and the frame', 'zwischen Ziegel und Rahmen'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { flank: { firm: [words('solid brick', 'Vollziegel')], soft: [] } },
      verdict: 'met',
    },
    {
      when: words('between mineral wool and the frame', 'zwischen Mineralwolle und Rahmen'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { flank: { firm: [], soft: [words('mineral wool', 'Mineralwolle')] } },
      verdict: 'not-met',
    },
  ],
})

const frame = words('flank of the frame', 'Rahmenflanke')
