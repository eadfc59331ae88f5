import { applyEdits, type Edit, type Opening, type Project } from '../detail'
import type { Id } from '../geometry'
import { sides } from '../kinds'
import { isSome, type Some, words } from '../words'
import type { Remedy, Verdict } from './finding'
import { type Judged, judging } from './judge-opening'
import type { Job } from './job'
import { alone, type Place } from './place'
import { usesIn } from './uses'

/** What cures a finding, of all that its rule proposes. */
export type Cure = (it: Judged) => Some<Remedy>

/** More ways than these confuse more than they help: ours. */
const mostChanges = 3

/**
 * Tries every candidate change on the project: it stays when its finding is gone and no rule is *not met* that was
 * not so before, in any opening. Work on site stays as it is. Where nothing stays, the joint has to be designed anew.
 */
export const cureIn = (job: Job, notMet: readonly Judged[]): Cure => {
  // asked for only when a remedy is sought: a check that nobody cures does not pay for it, and all is judged by then
  let keys: ReadonlySet<string> | undefined
  const was = () => (keys ??= new Set(notMet.map(keyOf)))
  const after = once(
    ({ edits, at }: Try) => tried(scopeOf(job, edits, at), edits, was),
    ({ edits }) => JSON.stringify(edits),
  )
  const cure = (it: Judged): Some<Remedy> => {
    const changes: Remedy[] = []
    const acts: Remedy[] = []
    for (const one of candidatesFor(it)) {
      if (one.kind === 'act') acts.push(one)
      else if (cures(it, after({ edits: one.edits, at: it.at }))) changes.push(one)
      if (changes.length === mostChanges) break
    }
    const kept = [...changes, ...acts]
    return isSome(kept) ? kept : [designAnew(it.at)]
  }
  const shared = once((it: Judged) => ({ remedies: cure(it), at: it.at }), likeness)
  const own = once(cure, it => `${it.at.opening.id} ${likeness(it)}`)
  return it => {
    const { remedies, at } = shared(it)
    return at.opening === it.at.opening || !namesOwnPart(remedies, at) ? remedies : own(it)
  }
}

/** Whether remedies change or measure what belongs to one opening alone: another one, however alike, has its own. */
const namesOwnPart = (remedies: Some<Remedy>, { opening }: Place): boolean => {
  const text = JSON.stringify(remedies)
  return ownParts(opening).some(id => text.includes(JSON.stringify(id)))
}

const ownParts = ({ id, fixings, sill, threshold, box }: Opening): readonly Id[] => [
  id,
  ...fixings.map(it => it.id),
  ...(sill ? [sill.id] : []),
  ...(threshold ? [threshold.id] : []),
  ...(box ? [box.id] : []),
]

/** A rule proposes for the place itself: it is asked anew, since its answer may have been given first for another. */
const candidatesFor = ({ rule, at }: Judged): Iterable<Remedy> => {
  const own = rule.judge(at)
  return 'remedies' in own ? own.remedies() : []
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
  // heat and vapour see whether a side is a head, a jamb or a sill
  const seen = at.physics ? at.side : ''
  const place = `${at.opening.position_mm.value} ${at.opening.asked?.exposure?.value ?? ''} ${seen}`
  const whole =
    rule.about === 'zone' || rule.about === 'part'
      ? place
      : `${at.opening.id} ${at.side} ${at.fixing?.id ?? ''}`
  return `${rule.id} ${at.joint.id} ${at.seal?.id ?? ''} ${at.wall.id} ${at.frame.id} ${sizes} ${whole}`
}

/** A project with a change: what it makes of a finding, and whether it breaks what was not broken, found when asked for. */
type Tried = {
  /** the verdict of the same rule at the same place; nothing where it does not arise, or is not touched */
  readonly now: (it: Judged) => Verdict | undefined
  readonly breaks: () => boolean
}

/** A change that is to be tried, and where its finding is. */
type Try = { readonly edits: Some<Edit>; readonly at: Place }

/** What belongs to one opening alone is tried on it alone. */
const scopeOf = (job: Job, edits: Some<Edit>, { opening }: Place): Job => {
  const own = new Set(ownParts(opening))
  const isOwn = edits.every(it => it.kind === 'state' && own.has(it.at.part))
  return isOwn ? { ...job, project: alone(job.project, opening) } : job
}

const tried = (
  { project, ...job }: Job,
  edits: Some<Edit>,
  was: () => ReadonlySet<string>,
): Tried | undefined => {
  const edited = applyEdits(project, edits)
  if (!edited.ok) return undefined
  const touched = openingsTouched(project, edited.value)
  const judge = judging({ ...job, project: edited.value, uses: usesIn(edited.value) })
  let breaks: boolean | undefined
  const isNew = (it: Judged) => it.found.answer.verdict === 'not-met' && !was().has(keyOf(it))
  return {
    now: it => {
      const { opening } = it.at
      if (!touched.includes(opening.id)) return undefined
      const own = [...judge(opening.id, [it.rule])].filter(one => keyOf(one) === keyOf(it))
      const verdict = own.at(-1)?.found.answer.verdict
      return verdict === 'not-applicable' ? undefined : verdict
    },
    breaks: () => (breaks ??= touched.some(opening => some(judge(opening), isNew))),
  }
}

/** Whether one of many is so; no more of them are asked for then. */
const some = <T>(all: Iterable<T>, isSo: (it: T) => boolean): boolean => {
  for (const it of all) if (isSo(it)) return true
  return false
}

/** Openings of which anything is another value than before. Untouched ones keep their verdicts. */
const openingsTouched = (before: Project, after: Project): readonly Id[] =>
  Object.values(after.openings)
    .filter(opening => {
      const isSame =
        before.openings[opening.id] === opening &&
        before.walls[opening.wall] === after.walls[opening.wall] &&
        before.frames[opening.frame] === after.frames[opening.frame]
      return !isSame || (before.joints !== after.joints && hasOtherJoint(opening, before, after))
    })
    .map(it => it.id)

const hasOtherJoint = ({ sides: of }: Opening, before: Project, after: Project): boolean =>
  sides.some(side => of[side].some(({ joint }) => before.joints[joint] !== after.joints[joint]))

/** A finding is cured when its rule is met or no longer arises; of one that was not met, advice may be left. */
const cures = (it: Judged, after: Tried | undefined): boolean => {
  if (!after) return false
  const now = after.now(it)
  const isBetter = now === 'advice' || (now === 'refer' && it.rule.isCautious)
  const isCured = now === undefined || now === 'met' || (isBetter && it.found.answer.verdict === 'not-met')
  return isCured && !after.breaks()
}

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
