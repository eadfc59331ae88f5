import { type Block, profileOf } from '../../detail'
import { blockPressure_N_mm2, factors, mostLoadedSupport_N, weight_N } from '../../load'
import { exactly } from '../../units'
import { words } from '../../words'
import type { Place } from '../place'
import { placed, type Reading } from '../reading'
import { anchorBase, weakBase } from '../readings/wall'
import { act } from '../remedies/state'
import { rule } from '../rule'

/** The weight of an element on its most loaded block, and the face of that block. */
type Standing = { readonly mass_kg: number; readonly length_mm: number; readonly width_mm: number }

const supports = ({ opening }: Place): readonly Block[] =>
  opening.blocks.filter(it => it.kind === 'support' && it.side === 'sill')

const standing: Reading<Standing> = placed({
  id: 'opening.standing-weight',
  name: words('Weight on its blocks', 'Gewicht auf den Klötzen'),
  compute: at => {
    const mass = at.opening.asked?.mass_kg
    const [first] = supports(at).toSorted((a, b) => a.length_mm.value - b.length_mm.value)
    if (!mass || !first) return undefined
    return {
      mass_kg: mass.value,
      length_mm: first.length_mm.value,
      width_mm: first.width_mm?.value ?? profileOf(at.frame).depth_mm,
    }
  },
  beneath: at => [
    { field: 'opening.mass', part: at.opening.id, stated: at.opening.asked?.mass_kg },
    ...(supports(at).length > 0 ? [] : [{ field: 'opening.blocks', part: at.opening.id, stated: undefined }]),
  ],
})

/** What a block stands on bears its pressure. */
export const blockPressure = rule({
  id: 'block-pressure',
  about: 'opening',
  title: words('Pressure under support blocks', 'Pressung unter Tragklötzen'),
  says: words(
    'Half of the weight on one block presses no harder on the bearing layer than it bears.',
    'Das halbe Gewicht auf einem Klotz presst die tragende Schicht nicht mehr, als sie erträgt.',
  ),
  why: words(
    'A small block under a heavy pane breaks the edge of a hollow brick, and the frame sinks there.',
    'Ein kleiner Klotz unter schwerer Scheibe bricht die Kante eines Lochsteins, und dort sinkt der Rahmen.',
  ),
  reads: { weight: standing, base: anchorBase },
  limit: 'block-pressure',
  band: [],
  applies: at =>
    at.opening.position_mm.value >= 0 || words('the frame stands on brackets, which are assessed for it', 'der Rahmen steht auf Konsolen, die dafür bemessen sind'),
  ask: ({ base }) => [{ given: { base: base.base } }],
  compare: ({ weight: it }, { most_N_mm2 }) => ({
    kind: 'amount',
    actual: exactly(blockPressure_N_mm2(mostLoadedSupport_N(it.mass_kg), it.length_mm, it.width_mm)),
    required: { unit: 'N_mm2', max: most_N_mm2 },
  }),
  sum: ({ weight: it }) => [
    { sign: '', value: weight_N(it.mass_kg), unit: 'N', says: words('weight of the element', 'Gewicht des Elements') },
    { sign: '÷', value: 2, unit: 'one', says: words('half of it on one block', 'die Hälfte auf einem Klotz') },
    { sign: '×', value: factors.dead, unit: 'one', says: words('factor on weight', 'Teilsicherheitsbeiwert Eigenlast') },
    { sign: '÷', value: it.length_mm, unit: 'mm', says: words('length of the block', 'Länge des Klotzes') },
    { sign: '÷', value: it.width_mm, unit: 'mm', says: words('its width across the frame', 'seine Breite quer zum Rahmen') },
    { sign: '=', value: blockPressure_N_mm2(mostLoadedSupport_N(it.mass_kg), it.length_mm, it.width_mm), unit: 'N_mm2', says: words('pressure', 'Pressung') },
  ],
  *remedies(_known, _then, at) {
    yield act(words('Set longer or more blocks, on a spread bed', 'Längere oder mehr Klötze setzen, auf verteiltem Lager'), 'opening.blocks', at.opening.id)
  },
  caution: ({ base }) => weakBase(base),
  examples: [
    {
      when: words('119 kg on sand-lime brick', '119 kg auf Kalksandstein'),
      practice: 'DE',
      joint: { planned_mm: 12 },
      known: { weight: { mass_kg: 119, length_mm: 100, width_mm: 76 }, base: { base: 'sand-lime', isKnown: true } },
      verdict: 'met',
    },
    {
      when: words('600 kg on small blocks in lightweight units', '600 kg auf kleinen Klötzen in Leichtsteinen'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { weight: { mass_kg: 600, length_mm: 60, width_mm: 70 }, base: { base: 'lightweight-block', isKnown: true } },
      verdict: 'not-met',
    },
    {
      when: words('150 kg on aerated concrete', '150 kg auf Porenbeton'),
      practice: 'DE',
      joint: { planned_mm: 25 },
      known: { weight: { mass_kg: 150, length_mm: 100, width_mm: 70 }, base: { base: 'aerated-concrete', isKnown: true } },
      verdict: 'refer',
    },
  ],
}) // prettier-ignore
