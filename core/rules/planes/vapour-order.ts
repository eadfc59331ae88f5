import type { Seasonal } from '../../geometry'
import { reversalEvidence, reversalName } from '../../kinds'
import type { Term } from '../../movement'
import { planeRatio, serves } from '../../seals'
import { type Band, inWords, writeBand } from '../../units'
import { filled, type Words, words } from '../../words'
import { innerResistance, outerResistance } from '../readings/vapour'
import { declaredInside } from '../remedies/declared'
import { choose } from '../remedies/fit'
import { replacePlanes } from '../remedies/remedies'
import { rule } from '../rule'

/** The joint is tighter to vapour inside than outside. */
export const vapourOrder = rule({
  id: 'vapour-order',
  about: 'zone',
  title: words('Tighter inside than outside', 'Innen dichter als außen'),
  says: words(
    'The smallest resistance of the inner plane is at least twice the largest of the outer one, dry and humid.',
    'Der kleinste Dampfwiderstand der inneren Ebene ist mindestens doppelt so groß wie der größte der äußeren, trocken und feucht.',
  ),
  why: words(
    'What gets into the joint from the room has to get out again. A tight outside keeps the water in.',
    'Was aus dem Raum in die Fuge gelangt, muss wieder hinaus. Ist sie außen dicht, bleibt das Wasser darin.',
  ),
  reads: { inner: innerResistance, outer: outerResistance },
  limit: 'vapour-order',
  band: [],
  applies: at => {
    const has = (plane: 'inner' | 'outer') => at.joint.seals.some(it => serves(it, plane))
    if (!has('inner')) return words('the inner plane is empty', 'die innere Ebene ist leer')
    return has('outer') ? true : words('the outer plane is empty', 'die äußere Ebene ist leer')
  },
  ask: () => [{ given: {} }],
  compare: ({ inner, outer }, { least }) => ({
    kind: 'amount',
    actual: planeRatio(inner, outer)[governing(inner, outer)],
    required: { unit: 'one', min: least },
  }),
  sum: ({ inner, outer }) => {
    const season = governing(inner, outer)
    return [...sumIn(season === 'winter' ? 'summer' : 'winter', inner, outer), ...sumIn(season, inner, outer)]
  },
  *remedies(_known, _then, at) {
    yield* choose(declaredInside(at.project, at))
    yield* replacePlanes(at, ['outer'])
    yield* replacePlanes(at, ['inner'])
    yield* replacePlanes(at, ['outer', 'inner'])
  },
  excused: ({ joint }) =>
    joint.reversal && {
      to: filled(words('accepted here: {0}', 'hier angenommen: {0}'), reversalName[joint.reversal.value]),
      handOver: [reversalEvidence[joint.reversal.value]],
    },
  examples: [
    {
      when: words(
        'membrane of 10 to 55 m inside, tape of 0.5 m outside',
        'Folie 10 bis 55 m innen, Band 0,5 m außen',
      ),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { inner: steady(10, 55), outer: steady(0.02, 0.5) },
      verdict: 'met',
    },
    {
      when: words('the same silicone bead on both sides', 'dieselbe Silikonfuge auf beiden Seiten'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { inner: steady(40, 40), outer: steady(40, 40) },
      verdict: 'advice',
    },
    {
      when: words('tape inside, bitumen sheet outside', 'Band innen, Bitumenbahn außen'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { inner: steady(0.5, 0.5), outer: steady(75, 105) },
      verdict: 'not-met',
    },
    {
      when: words('a membrane that opens to 0.25 m when humid', 'eine Folie, die feucht auf 0,25 m öffnet'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: {
        inner: { winter: { min: 10, max: 10 }, summer: { min: 0.25, max: 0.25 } },
        outer: steady(0.5, 0.5),
      },
      verdict: 'not-met',
    },
    {
      when: words(
        'a rubber sheet whose resistance nobody states',
        'eine Kautschukbahn, deren Widerstand niemand nennt',
      ),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { inner: steady(10, 55) },
      verdict: 'unknown',
    },
  ],
})

type Season = keyof Seasonal

const governing = (inner: Seasonal, outer: Seasonal): Season => {
  const { winter, summer } = planeRatio(inner, outer)
  return summer.min < winter.min ? 'summer' : 'winter'
}

const sumIn = (season: Season, inner: Seasonal, outer: Seasonal): readonly Term[] => [
  { sign: '', value: inner[season].min, unit: 'm', says: range(smallestInside[season], inner[season]) },
  { sign: '÷', value: outer[season].max, unit: 'm', says: range(largestOutside[season], outer[season]) },
  { sign: '=', value: inner[season].min / outer[season].max, unit: 'one', says: ratio[season] },
]

const range = (says: Words, sd_m: Band): Words =>
  filled(
    says,
    inWords(language => writeBand(sd_m, 'm', language)),
  )

const smallestInside: Readonly<Record<Season, Words>> = {
  winter: words('smallest s_d inside, dry ({0})', 'kleinster s_d innen, trocken ({0})'),
  summer: words('smallest s_d inside, humid ({0})', 'kleinster s_d innen, feucht ({0})'),
}
const largestOutside: Readonly<Record<Season, Words>> = {
  winter: words('largest s_d outside, dry ({0})', 'größter s_d außen, trocken ({0})'),
  summer: words('largest s_d outside, humid ({0})', 'größter s_d außen, feucht ({0})'),
}
const ratio: Readonly<Record<Season, Words>> = {
  winter: words('inside to outside, dry', 'innen zu außen, trocken'),
  summer: words('inside to outside, humid', 'innen zu außen, feucht'),
}

/** A resistance that does not change with the season. A function, because the examples above call it. */
function steady(min: number, max: number): Seasonal {
  return { winter: { min, max }, summer: { min, max } }
}
