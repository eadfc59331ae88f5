import { exactly } from '../../units'
import { words } from '../../words'
import { placed, type Reading } from '../reading'
import { sealsRound } from '../readings/seals'
import { toldAmount } from '../readings/told'
import { act } from '../remedies/state'
import { rule } from '../rule'
import { boundsOf, isTold } from '../told-rules'

/** Whether all outer tapes may stay in the weather by their class. */
const tape: Reading<'weatherproof' | 'other'> = placed<'weatherproof' | 'other'>({
  id: 'opening.outer-tape',
  name: words('Tape outside', 'Band außen'),
  compute: at => {
    const classes = sealsRound(at)
      .filter(it => it.plane !== 'inner')
      .flatMap(it => (typeof it['class'] === 'object' ? [it['class'].value] : []))
    return classes.length > 0 && classes.every(it => it === 'BG1' || it === 'MF1') ? 'weatherproof' : 'other'
  },
})

/** A joint is not left open to the weather for long before it is covered. */
export const openWeather = rule({
  id: 'open-weather',
  about: 'opening',
  title: words('Joint open to the weather', 'Fuge offen im Wetter'),
  says: words(
    'Until it is covered a joint stands in the weather no longer than its outer seal is made for.',
    'Bis zur Abdeckung steht eine Fuge nicht länger im Wetter, als ihre äußere Dichtung verträgt.',
  ),
  why: words(
    'Foam crumbles in the sun, and a tape that is made for below the render soaks in the rain.',
    'Schaum zerfällt in der Sonne, und ein Band für unter dem Putz durchnässt im Regen.',
  ),
  reads: { months: toldAmount('opening.open-months', 'openFor'), tape },
  limit: 'open-weather',
  band: [],
  applies: at => isTold(at, 'openFor') || words('nobody says how long it stays open', 'niemand sagt, wie lange sie offen bleibt'),
  ask: known => [{ given: { tape: known.tape } }],
  compare: ({ months }, then) => ({ kind: 'amount', actual: exactly(months), required: boundsOf(then, 'one') }),
  sum: () => [],
  *remedies(_known, _then, at) {
    yield act(words('Cover the joint sooner, or use a tape that may stay in the weather', 'Fuge früher abdecken oder ein wetterfestes Band verwenden'), 'opening.open-months', at.opening.id)
  },
  examples: [
    {
      when: words('a month and a half in Austria', 'anderthalb Monate in Österreich'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { months: 1.5, tape: 'other' },
      verdict: 'met',
    },
    {
      when: words('four months', 'vier Monate'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { months: 4, tape: 'other' },
      verdict: 'advice',
    },
    {
      when: words('four months with a tape of class BG1', 'vier Monate mit einem Band der Klasse BG1'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { months: 4, tape: 'weatherproof' },
      verdict: 'met',
    },
  ],
}) // prettier-ignore
