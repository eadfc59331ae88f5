import { lookUp } from '../../practice'
import type { Stated } from '../../units'
import { words } from '../../words'
import type { Place } from '../place'
import { hasMembrane } from '../readings/seals'
import { placed, type Reading } from '../reading'
import { toldOr, wordName } from '../readings/told'
import { act } from '../remedies/state'
import { rule } from '../rule'

/** What came of the test; a test that was not made tells as little as one that nobody speaks of. */
const outcome: Reading<'passed' | 'failed'> = placed<'passed' | 'failed'>({
  id: 'opening.peel-test',
  name: words('Peel test on site', 'Haftversuch am Bau'),
  compute: at => made(at)?.value,
  beneath: at => [{ field: 'opening.peel-test', part: at.opening.id, stated: made(at) }],
})

const made = ({ opening }: Place): Stated<'passed' | 'failed'> | undefined => {
  const told = opening.told?.peelTest
  return told && told.value !== 'none' ? { ...told, value: told.value } : undefined
}

/** How the bond of a membrane was tried on the building itself. */
export const peelTest = rule({
  id: 'peel-test',
  about: 'opening',
  title: words('Peel test on site', 'Haftversuch am Bau'),
  says: words(
    'The bond of membranes is tried on site: always in Austria, elsewhere where the flank is doubtful.',
    'Die Haftung der Folien wird am Bau versucht: in Österreich immer, sonst wo die Flanke zweifelhaft ist.',
  ),
  why: words(
    'No data sheet knows this wall; a strip pulled off by hand tells at once.',
    'Kein Datenblatt kennt diese Wand; ein von Hand abgezogener Streifen sagt es sofort.',
  ),
  reads: { test: outcome, substrate: toldOr('opening.substrate', 'substrate') },
  limit: 'peel-test',
  band: [],
  applies: at => {
    const has = hasMembrane(at)
    if (has !== true) return has
    const substrate = at.opening.told?.substrate?.value ?? 'not-told'
    return (
      lookUp(at.practice, 'peel-test', { substrate }) !== undefined ||
      words('nobody calls the flanks doubtful', 'niemand nennt die Flanken zweifelhaft')
    )
  },
  ask: ({ substrate }) => [{ given: { substrate } }],
  compare: ({ test }, { accepted }) => ({
    kind: 'presence',
    there: [wordName('opening.peel-test', test)],
    missing: accepted.includes(test) ? [] : [words('a test that is passed', 'ein bestandener Versuch')],
  }),
  sum: () => [],
  *remedies(_known, _then, at) {
    yield act(
      words('Prepare the flanks, bond a strip and pull it', 'Flanken vorbereiten, Streifen kleben und abziehen'),
      'opening.peel-test',
      at.opening.id,
    )
  },
  examples: [
    {
      when: words('passed in Austria', 'in Österreich bestanden'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { test: 'passed', substrate: 'sound' },
      verdict: 'met',
    },
    {
      when: words('failed on a doubtful flank', 'an zweifelhafter Flanke nicht bestanden'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { test: 'failed', substrate: 'doubtful' },
      verdict: 'not-met',
    },
    {
      when: words('not made in Austria', 'in Österreich nicht gemacht'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { substrate: 'sound' },
      verdict: 'unknown',
    },
  ],
}) // prettier-ignore
