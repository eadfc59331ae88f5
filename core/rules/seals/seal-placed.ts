import { applyEdit, type Edit, profileOf } from '../../detail'
import { mayLackPlace, type Unplaced, unplacedSeals } from '../../section'
import { kindOf } from '../../seals'
import { filled, type Words, words } from '../../words'
import type { Remedy } from '../finding'
import type { Place } from '../place'
import { placed, type Reading } from '../reading'
import { choose } from '../remedies/fit'
import { rule } from '../rule'

/** What the seals of a joint are called, those that its cut shows and those that it cannot show, and why not. */
type Shown = { readonly there: readonly Words[]; readonly missing: readonly Words[] }

const shownSeals: Reading<Shown> = placed({
  id: 'joint.shown-seals',
  name: words('Seals that the cut shows', 'Dichtungen, die der Schnitt zeigt'),
  compute: at => {
    const unplaced = unplacedAt(at)
    const isThere = (id: string) => unplaced.every(it => it.seal.id !== id)
    return {
      there: at.joint.seals.filter(it => isThere(it.id)).map(it => kindOf(it).called(it)),
      missing: unplaced.map(it => filled(reasons[it.lacks], kindOf(it.seal).called(it.seal))),
    }
  },
  beneath: at => [{ field: 'opening.position', part: at.opening.id, stated: at.opening.position_mm }],
})

const unplacedAt = (at: Place): readonly Unplaced[] => {
  // a box on the head has a depth of its own
  const depth_mm = at.side === 'head' && at.opening.box ? 0 : profileOf(at.frame).depth_mm
  if (!mayLackPlace(at.joint.seals, at.joint.planned_mm.value, depth_mm)) return []
  const place = { opening: at.opening.id, side: at.side, zone: at.zone }
  return unplacedSeals(at.project, place, at.joint.planned_mm.value)
}

const reasons: Readonly<Record<Unplaced['lacks'], Words>> = {
  gap: words('{0}: there is no gap between a nib and the frame', '{0}: keine Fuge zwischen Anschlag und Rahmen'),
  rest: words('{0}: nothing here for it to lie on', '{0}: nichts da, woran es liegt'),
  room: words('{0}: the others leave no room for it', '{0}: die anderen lassen keinen Platz'),
} // prettier-ignore

/** Every seal that a joint is said to have can be laid where the joint is used. */
export const sealPlaced = rule({
  id: 'seal-placed',
  about: 'zone',
  title: words('A place for every seal', 'Ein Platz für jede Dichtung'),
  says: words(
    'Every seal of a joint finds its place on each side: a finish that a bead ends, a nib for what seals its gap, depth for what lies one behind another.',
    'Jede Dichtung einer Fuge findet an jeder Seite ihren Platz: Putz, den ein Profil abschließt, einen Anschlag für das, was dessen Fuge dichtet, Tiefe für das, was hintereinander liegt.',
  ),
  why: words(
    'What has no place is ordered and listed, but nobody can fit it, and what it should do nothing does.',
    'Was keinen Platz hat, wird bestellt und aufgeführt, doch niemand kann es einbauen, und was es leisten soll, leistet nichts.',
  ),
  reads: { shown: shownSeals },
  limit: 'seal-placed',
  band: [],
  applies: at =>
    at.joint.seals.length > 0 || words('there is no seal in this joint', 'in dieser Fuge liegt keine Dichtung'),
  ask: () => [{ given: {} }],
  compare: ({ shown }) => ({ kind: 'presence', there: shown.there, missing: shown.missing }),
  sum: () => [],
  remedies: (_known, _then, at) => without(at, unplacedAt(at).map(it => it.seal.id)),
  examples: [
    {
      when: words('a tape and a bead that the render ends at', 'Band und Profil, an dem der Putz endet'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { shown: { there: [words('tape', 'Fugenband'), words('bead', 'Profil')], missing: [] } },
      verdict: 'met',
    },
    {
      when: words('a render stop bead at the sill, where no render ends', 'ein Anputzprofil an der Brüstung, wo kein Putz endet'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { shown: { there: [words('tape', 'Fugenband')], missing: [words('bead', 'Profil')] } },
      verdict: 'not-met',
    },
  ],
}) // prettier-ignore

/** Takes seals out, in a joint of this zone's own where others share it. */
const without = (at: Place, seals: readonly string[]): readonly Remedy[] => {
  const own: Edit = { kind: 'choose-joint', zone: at.zone.id, joint: 'copy' }
  const shared = at.uses(at.joint.id).length > 1
  const copied = shared ? applyEdit(at.project, own) : undefined
  const joints = copied?.ok ? copied.value.joints : {}
  const copy = Object.values(joints).find(it => !(it.id in at.project.joints))
  const edits: readonly Edit[] = seals.flatMap((id): readonly Edit[] => {
    const part = shared ? copy?.seals[at.joint.seals.findIndex(it => it.id === id)]?.id : id
    return part === undefined ? [] : [{ kind: 'take-out', part }]
  })
  const says = shared
    ? words('a joint of its own here, without what has no place', 'hier eine eigene Fuge, ohne was keinen Platz hat')
    : words('the joint without what has no place', 'die Fuge ohne das, was keinen Platz hat')
  return edits.length > 0 ? choose({ edits: shared ? [own, ...edits] : edits, says: [says] }) : []
} // prettier-ignore
