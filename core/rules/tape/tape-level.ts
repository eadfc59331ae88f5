import { kindOf, serves } from '../../seals'
import { isSome, type Words, words } from '../../words'
import type { Place } from '../place'
import { placed, type Reading } from '../reading'
import { hasValue } from '../readings/seals'
import { replaceSeal } from '../remedies/remedies'
import { rule } from '../rule'

const outerSeals = ({ joint }: Place) => joint.seals.filter(it => serves(it, 'outer'))
const isTape = (at: Place): boolean =>
  isSome(outerSeals(at)) && outerSeals(at).some(it => hasValue(it, 'tape.least'))

/** What keeps water from standing on a tape: a tight seal beside it. */
const tight: Reading<readonly Words[]> = placed({
  id: 'opening.sill',
  name: words('Outside sill, or a tight seal outside', 'Fensterbank außen oder dichte Dichtung außen'),
  // where no sill is stated nobody knows what covers the tape
  compute: at => {
    const seals = outerSeals(at).filter(it => !hasValue(it, 'tape.least'))
    return isSome(seals) ? seals.map(it => kindOf(it).called(it)) : undefined
  },
})

/** Where water can stand on a joint an open-cell tape is not the only outer seal. */
export const tapeLevel = rule({
  id: 'tape-level',
  about: 'zone',
  title: words('Tape in a level joint', 'Band in liegender Fuge'),
  says: words(
    'In a level joint that water can stand on, a tape has a tight seal beside it or a drained plane above it.',
    'In liegender Fuge, auf der Wasser stehen kann, hat ein Band eine dichte Dichtung neben oder eine entwässerte Ebene über sich.',
  ),
  why: words(
    'A tape keeps out what runs past it; what stands on it soaks through.',
    'Ein Band hält ab, was vorbeiläuft; was darauf steht, sickert durch.',
  ),
  reads: { tight },
  limit: 'tape-level',
  band: [],
  applies: (at): true | Words => {
    if (at.side !== 'sill') return words('no water stands on this joint', 'auf dieser Fuge steht kein Wasser')
    if (!isTape(at)) return words('there is no tape outside', 'außen ist kein Band')
    const exposure = at.opening.asked?.exposure?.value
    if (exposure === 'covered' || exposure === 'sheltered')
      return words('no driving rain reaches the joint', 'kein Schlagregen erreicht die Fuge')
    return at.opening.sill
      ? words('an outside sill covers the joint', 'eine Fensterbank deckt die Fuge ab')
      : true
  },
  ask: () => [{ given: {} }],
  compare: known => ({
    kind: 'presence',
    there: known.tight,
    missing: isSome(known.tight) ? [] : [words('a sill with its drained plane, or a tight seal', 'eine Bank mit entwässerter Ebene oder eine dichte Dichtung')],
  }),
  sum: () => [],
  *remedies(_known, _then, at) {
    const [tape] = outerSeals(at).filter(it => hasValue(it, 'tape.least'))
    if (tape) yield* replaceSeal(at, tape)
  },
  examples: [
    {
      when: words('a bead before the tape', 'Dichtstoff vor dem Band'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { tight: [words('sealant bead', 'Dichtstofffuge')] },
      verdict: 'met',
    },
    {
      when: words('a tape alone below a threshold', 'nur ein Band unter einer Schwelle'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { tight: [] },
      verdict: 'not-met',
    },
  ],
}) // prettier-ignore
