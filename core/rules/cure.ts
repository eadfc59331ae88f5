import { applyEdits, type Edit, type Project } from '../detail'
import type { Id } from '../geometry'
import type { Practice } from '../practice'
import { isSome, type Some, words } from '../words'
import type { Remedy, Verdict } from './finding'
import { type Judged, judgeOpening } from './judge-opening'
import type { Place } from './place'

/** Keeps of the candidates for a finding what cures it. */
export type Cure = (it: Judged, candidates: () => Iterable<Remedy>) => Some<Remedy>

/** More ways than these confuse more than they help: ours. */
const mostChanges = 3

/**
 * Tries every candidate change on the project: it stays when its finding is gone and no rule is *not met* that was
 * not so before, in any opening. Work on site stays as it is. Where nothing stays, the joint has to be designed anew.
 */
export const cureIn = (project: Project, practice: Practice, before: readonly Judged[]): Cure => {
  // asked for only when a remedy is sought: a check that nobody cures does not pay for it
  const was = once(
    (_: 'before') => verdictsOf(before),
    it => it,
  )
  const after = once((edits: Some<Edit>) => verdictsAfter(project, practice, edits), JSON.stringify)
  const cure = (it: Judged, candidates: Iterable<Remedy>): Some<Remedy> => {
    const changes: Remedy[] = []
    const acts: Remedy[] = []
    for (const one of candidates) {
      if (one.kind === 'act') acts.push(one)
      else if (cures(it, was('before'), after(one.edits))) changes.push(one)
      if (changes.length === mostChanges) break
    }
    const kept = [...changes, ...acts]
    return isSome(kept) ? kept : [designAnew(it.at)]
  }
  const found = new Map<string, Some<Remedy>>()
  return (it, candidates) => {
    const key = likeness(it)
    const remedies = found.get(key) ?? cure(it, candidates())
    found.set(key, remedies)
    return remedies
  }
}

/** Asks a function once for each key: sides and openings that share a joint share what is tried on it. */
const once = <In, Out>(of: (it: In) => Out, keyOf: (it: In) => string): ((it: In) => Out) => {
  const known = new Map<string, { readonly out: Out }>()
  return it => {
    const key = keyOf(it)
    const { out } = known.get(key) ?? { out: of(it) }
    known.set(key, { out })
    return out
  }
}

/** Places that are alike for a rule have the same remedies: both jambs of a window, every window of a type. */
const likeness = ({ rule, at }: Judged): string => {
  const { frame_mm, opening_mm, opens_mm, closes_mm } = at.band
  const sizes = `${frame_mm} ${opening_mm} ${opens_mm} ${closes_mm}`
  const place = `${at.opening.position_mm.value} ${at.opening.asked?.exposure?.value ?? ''}`
  const whole =
    rule.about === 'zone' || rule.about === 'part'
      ? place
      : `${at.opening.id} ${at.side} ${at.fixing?.id ?? ''}`
  return `${rule.id} ${at.joint.id} ${at.seal?.id ?? ''} ${at.wall.id} ${at.frame.id} ${sizes} ${whole}`
}

type Verdicts = ReadonlyMap<string, Verdict>

const verdictsAfter = (project: Project, practice: Practice, edits: Some<Edit>): Verdicts | undefined => {
  const edited = applyEdits(project, edits)
  if (!edited.ok) return undefined
  const touched = openingsTouched(project, edited.value)
  return verdictsOf(touched.flatMap(opening => judgeOpening(edited.value, practice, opening)))
}

/** Openings of which anything is another value than before. Untouched ones keep their verdicts. */
const openingsTouched = (before: Project, after: Project): readonly Id[] =>
  Object.values(after.openings).flatMap(opening => {
    const joints = Object.values(opening.sides).flatMap(zones => zones.map(zone => zone.joint))
    const isSame =
      before.openings[opening.id] === opening &&
      before.walls[opening.wall] === after.walls[opening.wall] &&
      before.frames[opening.frame] === after.frames[opening.frame] &&
      joints.every(joint => before.joints[joint] === after.joints[joint])
    return isSame ? [] : [opening.id]
  })

/** A finding is cured when its rule is met or no longer arises; of one that was not met, advice may be left. */
const cures = (it: Judged, was: Verdicts, after: Verdicts | undefined): boolean => {
  if (!after) return false
  const now = after.get(keyOf(it))
  const isBetter = now === 'advice' || (now === 'refer' && it.rule.isCautious)
  const isCured = now === undefined || now === 'met' || (isBetter && it.found.verdict === 'not-met')
  return isCured && [...after].every(([key, verdict]) => verdict !== 'not-met' || was.get(key) === 'not-met')
}

const verdictsOf = (all: readonly Judged[]): Verdicts =>
  new Map(all.flatMap(it => (it.found.verdict === 'not-applicable' ? [] : [[keyOf(it), it.found.verdict]])))

const keyOf = ({ rule, at }: Judged): string =>
  `${rule.id} ${at.opening.id} ${at.zone.id} ${at.seal?.id ?? at.fixing?.id ?? ''}`

const designAnew = ({ joint }: Place): Remedy => ({
  kind: 'act',
  say: words(
    'No single change cures this without breaking another rule: design the joint anew, or measure it',
    'Keine einzelne Änderung heilt dies, ohne eine andere Regel zu verletzen: Fuge neu entwerfen oder messen',
  ),
  thenState: { field: 'joint.planned', part: joint.id },
})
