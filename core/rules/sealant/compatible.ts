import { kindOf } from '../../seals'
import { words } from '../../words'
import { hasValue, sealsRound } from '../readings/seals'
import { toldWord } from '../readings/told'
import { wordRule } from '../told-rules'
import type { Place } from '../place'

/** Beads beside sheets and tapes: plasticisers wander between them. */
const hasCriticalPair = (at: Place): boolean => {
  const seals = sealsRound(at)
  const isBead = (field: string) => seals.some(it => hasValue(it, field))
  const bead = isBead('sealant.depth') || isBead('fillet.mu')
  // what a bead can touch and spoil, or be spoiled by: sheets, liquids, impregnated tapes
  const neighbour = seals.some(
    it => hasValue(it, 'sheet.sd') || hasValue(it, 'liquid.sd') || kindOf(it).ranges_mm !== undefined,
  )
  return bead && neighbour
}

/** Materials that touch one another stay what they are. */
export const compatibleNeighbours = wordRule({
  id: 'compatible',
  word: toldWord('opening.compatible', 'compatible'),
  title: words('Neighbours compatible', 'Nachbarn verträglich'),
  says: words(
    'Where sealant touches a sheet, a coating or an impregnated tape there is proof that they bear each other.',
    'Wo Dichtstoff eine Bahn, eine Beschichtung oder ein Band berührt, ist die Verträglichkeit nachgewiesen.',
  ),
  why: words(
    'Plasticiser wanders: the sealant turns to grease or the sheet goes brittle, years later.',
    'Weichmacher wandern: Der Dichtstoff wird schmierig oder die Bahn spröde, Jahre später.',
  ),
  cure: words('Keep them apart, or choose products proven together', 'Trennen oder gemeinsam geprüfte Produkte wählen'),
  applies: at =>
    hasCriticalPair(at) || words('no bead lies beside a sheet, a coating or a tape', 'kein Dichtstoff liegt neben Bahn, Beschichtung oder Band'),
  examples: [
    [words('proven by both makers', 'von beiden Herstellern nachgewiesen'), 'DE', 'proven', 'met'],
    [words('sealant on bitumen', 'Dichtstoff auf Bitumen'), 'AT', 'not', 'not-met'],
    [words('nobody has asked', 'niemand hat gefragt'), 'UK', undefined, 'unknown'],
  ],
}) // prettier-ignore
