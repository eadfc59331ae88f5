import { exactly } from '../../units'
import { filled, same, words } from '../../words'
import { placed, type Reading } from '../reading'
import { toldAmount, wordName } from '../readings/told'
import { act, wordOf } from '../remedies/state'
import { rule } from '../rule'
import { boundsOf, isTold } from '../told-rules'

const top = toldAmount('opening.threshold-top', 'threshold_mm')
const outside = toldAmount('opening.threshold-outside', 'outside_mm')

/** Where the waterproofing ends, where somebody says so: lower than the top of the threshold it counts, never higher. */
const edge: Reading<number | 'at-top'> = placed({
  id: 'opening.threshold-edge',
  name: words('Upper edge of the waterproofing', 'Oberkante Abdichtung'),
  compute: at => at.opening.told?.edge_mm?.value ?? 'at-top',
  beneath: at => {
    const stated = at.opening.told?.edge_mm
    return stated ? [{ field: 'opening.threshold-edge', part: at.opening.id, stated }] : []
  },
})

/** What the upstand is measured up to. */
const upTo = (top_mm: number, edge_mm: number | 'at-top'): number =>
  edge_mm === 'at-top' ? top_mm : Math.min(edge_mm, top_mm)

/** What takes the water at the door; where nobody plans a drain, there is none and the whole upstand is asked for. */
const drain: Reading<'none' | 'channel' | 'special'> = placed({
  id: 'opening.threshold-drain',
  name: words('Water at the threshold', 'Wasser an der Schwelle'),
  compute: at => at.opening.told?.thresholdDrain?.value ?? 'none',
})

/** Whether a threshold is stated at all: a window has none. */
export const hasThreshold = (at: Parameters<typeof isTold>[0]) =>
  isTold(at, 'threshold_mm') || isTold(at, 'outside_mm') || noThreshold

const noThreshold = words('no threshold is stated', 'keine Schwelle ist genannt')

/** The threshold stands so far over the finished surface outside that snow and splashed water stay out. */
export const thresholdUpstand = rule({
  id: 'threshold-upstand',
  about: 'threshold',
  title: words('Upstand at the threshold', 'Anschlusshöhe an der Schwelle'),
  says: words(
    'The waterproofing is carried up at the threshold by its full height over the finished surface outside, by less only with a drain at the door.',
    'Die Abdichtung wird an der Schwelle um ihre volle Höhe über den fertigen Belag geführt, um weniger nur mit Entwässerung an der Tür.',
  ),
  why: words(
    'Snow, ice, wind and splashes drive water over a low edge and behind the waterproofing.',
    'Schnee, Eis, Wind und Spritzer treiben Wasser über einen niedrigen Rand hinter die Abdichtung.',
  ),
  reads: { top_mm: top, outside_mm: outside, edge_mm: edge, drain },
  limit: 'threshold-upstand',
  band: [],
  applies: hasThreshold,
  ask: ({ drain: at }) => [{ given: { drain: at } }],
  compare: ({ top_mm, outside_mm, edge_mm }, then) => ({
    kind: 'amount',
    actual: exactly(upTo(top_mm, edge_mm) - outside_mm),
    required: boundsOf(then, 'mm'),
  }),
  sum: ({ top_mm, outside_mm, edge_mm, drain: at }) => [
    {
      sign: '',
      value: upTo(top_mm, edge_mm),
      unit: 'mm',
      says: edge_mm !== 'at-top' && edge_mm < top_mm ? edge.name : top.name,
    },
    { sign: '−', value: outside_mm, unit: 'mm', says: outside.name },
    {
      sign: '=',
      value: upTo(top_mm, edge_mm) - outside_mm,
      unit: 'mm',
      says: filled(same('{0}; {1}'), upstandWord, wordName(drain.id, at)),
    },
  ],
  *remedies(_known, _then, at) {
    for (const way of ['channel', 'special'] as const) yield* wordOf(at.project, drain.id, at.opening.id, way)
    yield act(
      words(
        'Lower the surface outside or raise the threshold',
        'Belag außen tiefer legen oder Schwelle anheben',
      ),
      outside.id,
      at.opening.id,
    )
  },
  caution: ({ drain: at }) =>
    at === 'special'
      ? {
          to: words('the planner of the waterproofing', 'die Planung der Abdichtung'),
          handOver: [
            words('channel and its drain', 'Rinne und ihr Ablauf'),
            words('fall, flange and second barrier', 'Gefälle, Flansch und zweite Sperre'),
          ],
        }
      : undefined,
  examples: [
    {
      when: words('15 mm over a level surface, no drain', '15 mm über ebenem Belag, keine Entwässerung'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { top_mm: 15, outside_mm: 0, edge_mm: 'at-top', drain: 'none' },
      verdict: 'not-met',
    },
    {
      when: words('sheet ends 30 mm below the top', 'Bahn endet 30 mm unter der Oberkante'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { top_mm: 150, outside_mm: 0, edge_mm: 120, drain: 'none' },
      verdict: 'not-met',
    },
    {
      when: words('50 mm with a channel at the door', '50 mm mit Rinne an der Tür'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { top_mm: 20, outside_mm: -30, edge_mm: 'at-top', drain: 'channel' },
      verdict: 'met',
    },
    {
      when: words('15 mm with a channel alone', '15 mm nur mit Rinne'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { top_mm: 15, outside_mm: 0, edge_mm: 'at-top', drain: 'channel' },
      verdict: 'not-met',
    },
    {
      when: words('step-free as a special construction', 'stufenlos als Sonderkonstruktion'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { top_mm: 15, outside_mm: 0, edge_mm: 'at-top', drain: 'special' },
      verdict: 'refer',
    },
    {
      when: words(
        'a channel in Austria: no figure is known',
        'eine Rinne in Österreich: kein Wert ist bekannt',
      ),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { top_mm: 60, outside_mm: 0, edge_mm: 'at-top', drain: 'channel' },
      verdict: 'refer',
    },
    {
      when: words('level with a channel in Britain', 'eben mit Rinne in Großbritannien'),
      practice: 'UK',
      joint: { planned_mm: 5 },
      known: { top_mm: 15, outside_mm: 0, edge_mm: 'at-top', drain: 'channel' },
      verdict: 'met',
    },
  ],
})

const upstandWord = words('upstand', 'Anschlusshöhe')
