import { lookUp } from '../../practice'
import { type Words, words } from '../../words'
import type { Place } from '../place'
import { placed, type Reading } from '../reading'
import { act } from '../remedies/state'
import { rule } from '../rule'

/** Why an element keeps people from falling out: it is asked to, or its sill is too low beside a fall. */
type Duty = 'asked' | 'low-sill'

const dutyOf = ({ opening: { asked }, practice }: Place): Duty | 'none' | undefined => {
  if (asked?.guarding) return asked.guarding.value === 'yes' ? 'asked' : 'none'
  if (asked?.fall_mm?.value === 0) return 'none'
  if (!asked?.fall_mm || !asked.sillHeight_mm) return undefined
  const guard = lookUp(practice, 'guarding', { fall_mm: asked.fall_mm.value })
  if (!guard) return undefined
  return asked.sillHeight_mm.value < guard.then.sill_mm ? 'low-sill' : 'none'
}

const duty: Reading<Duty> = placed({
  id: 'opening.guarding',
  name: words('Keeps people from falling out', 'Absturzsichernd'),
  compute: at => {
    const found = dutyOf(at)
    return found === 'none' ? undefined : found
  },
  beneath: ({ opening: { id, asked } }) =>
    asked?.guarding
      ? []
      : [
          { field: 'opening.guarding', part: id, stated: undefined },
          { field: 'opening.sill-height', part: id, stated: asked?.sillHeight_mm },
          { field: 'opening.fall', part: id, stated: asked?.fall_mm },
        ],
})

/** Fall outside; where nobody states it, the smaller guards hold, which only the sum prints. */
const fall: Reading<number> = placed({
  id: 'opening.fall',
  name: words('Fall outside', 'Absturzhöhe außen'),
  compute: at => at.opening.asked?.fall_mm?.value ?? 0,
})

const proof: Reading<'yes' | 'no' | 'not-stated'> = placed({
  id: 'opening.guard-proof',
  name: words('Fixing proven for guarding', 'Befestigung für Absturzsicherung nachgewiesen'),
  compute: at => at.opening.asked?.guardProof?.value ?? 'not-stated',
})

/** An element that keeps people from falling is fixed by a proof of its own, never by a spacing table. */
export const guarding = rule({
  id: 'guarding',
  about: 'opening',
  title: words('Element that guards against falling', 'Absturzsicherndes Element'),
  says: words(
    'Where an element keeps people from falling out, its fixing has a structural proof of its own.',
    'Wo ein Element vor Absturz sichert, hat seine Befestigung einen eigenen statischen Nachweis.',
  ),
  why: words(
    'A spacing table is made for wind. A person who falls against the element is another load, and a life.',
    'Eine Abstandstabelle gilt für Wind. Ein Mensch, der gegen das Element fällt, ist eine andere Last und ein Leben.',
  ),
  reads: { duty, fall_mm: fall, proof },
  limit: 'guarding',
  band: [],
  applies: at => {
    if (dutyOf(at) !== 'none') return true
    const stated = at.opening.asked?.guarding
    return stated ? notAsked : highEnough
  },
  ask: ({ fall_mm }) => [{ given: { fall_mm } }],
  compare: known => ({
    kind: 'presence',
    there: [dutyName[known.duty], ...(known.proof === 'yes' ? [proven] : [])],
    missing: known.proof === 'no' ? [separateProof] : [],
  }),
  sum: (_known, { sill_mm }) => [
    {
      sign: '',
      value: sill_mm,
      unit: 'mm',
      says: words('below this sill height it is a guard', 'unter dieser Brüstungshöhe sichert es'),
    },
  ],
  *remedies(_known, _then, at) {
    yield act(
      words(
        'Have the fixing designed and proven for guarding, with assessed brackets',
        'Befestigung für die Absturzsicherung bemessen und nachweisen lassen, mit zugelassenen Konsolen',
      ),
      'opening.guard-proof',
      at.opening.id,
    )
  },
  caution: () => ({
    to: words('a structural engineer', 'eine Tragwerksplanerin, ein Tragwerksplaner'),
    handOver: [separateProof, words('category and impact proof of the glass', 'Kategorie und Stoßnachweis des Glases')],
  }),
  examples: [
    {
      when: words('with a proof of its own', 'mit eigenem Nachweis'),
      practice: 'DE',
      joint: { planned_mm: 25 },
      known: { duty: 'asked', fall_mm: 6200, proof: 'yes' },
      verdict: 'refer',
    },
    {
      when: words('fixed by the spacing table only', 'nur nach der Abstandstabelle befestigt'),
      practice: 'DE',
      joint: { planned_mm: 25 },
      known: { duty: 'asked', fall_mm: 6200, proof: 'no' },
      verdict: 'not-met',
    },
    {
      when: words('a low sill in Britain, nothing said of its fixing', 'eine niedrige Brüstung in Großbritannien, nichts zur Befestigung'),
      practice: 'UK',
      joint: { planned_mm: 5 },
      known: { duty: 'low-sill', fall_mm: 3000, proof: 'not-stated' },
      verdict: 'refer',
    },
    {
      when: words('nobody says how deep the fall is', 'niemand nennt die Absturzhöhe'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { fall_mm: 0, proof: 'not-stated' },
      verdict: 'unknown',
    },
  ],
}) // prettier-ignore

const dutyName: Readonly<Record<Duty, Words>> = {
  asked: words('it has to guard against falling', 'es muss vor Absturz sichern'),
  'low-sill': words('its sill is lower than a guard', 'seine Brüstung ist niedriger als eine Umwehrung'),
}
const proven = words('fixing proven', 'Befestigung nachgewiesen')
const separateProof = words('separate structural proof of the fixing', 'eigener statischer Nachweis der Befestigung') // prettier-ignore
const notAsked = words('it does not have to guard against falling', 'es muss nicht vor Absturz sichern')
const highEnough = words('the sill is as high as a guard, or there is no fall', 'die Brüstung ist hoch genug, oder es gibt keinen Absturz') // prettier-ignore
