import type { Project } from '../model'
import { type Words, words } from '../../words'
import { beadInBrick } from './bead-in-brick'
import { boxOnTop } from './box-on-top'
import { facingLeaf } from './facing-leaf'
import { flushInSandLime } from './flush-in-sand-lime'
import { foamOnly } from './foam-only'
import { forwardOnBrackets } from './forward-on-brackets'
import { frameTooLarge } from './frame-too-large'
import { guardInAeratedConcrete } from './guard-in-aerated-concrete'
import { onConsoles } from './on-consoles'
import { protectedSill } from './protected-sill'
import { rebateSealed } from './rebate-sealed'
import { rightJamb } from './right-jamb'
import { softFlank } from './soft-flank'
import { stepFreeDoor } from './step-free-door'
import { tightOutside } from './tight-outside'
import { timberWall } from './timber-wall'
import { unheldHead } from './unheld-head'

/** A project that comes with the program. */
export type Sample = { readonly file: string; readonly name: Words; readonly project: Project }

const sample = (file: string, project: Project, en: string, de: string): Sample => ({
  file,
  name: words(en, de),
  project,
})

/** Every sample, the right one first. */
export const samples: readonly Sample[] = [
  sample('right-jamb', rightJamb, 'Right: three planes in a timber jamb', 'Richtig: drei Ebenen an einer Holzleibung'),
  sample('foam-only', foamOnly, 'Wrong: foam alone', 'Falsch: nur Ortschaum'),
  sample('tight-outside', tightOutside, 'Wrong: tighter outside', 'Falsch: außen dichter'),
  sample('timber-wall', timberWall, 'Timber frame wall, Austria', 'Holzrahmenwand, Österreich'),
  sample('bead-in-brick', beadInBrick, 'Beads on rods in solid brick, Austria', 'Dichtstoff auf Rundschnur in Vollziegel, Österreich'),
  sample('on-consoles', onConsoles, 'On consoles in the insulation, Austria', 'Auf Konsolen in der Dämmung, Österreich'),
  sample('rebate-sealed', rebateSealed, 'Behind a brick nib, its gap sealed', 'Hinter gemauertem Anschlag, dessen Fuge gedichtet'),
  sample('box-on-top', boxOnTop, 'Under a shutter box, sealed all round', 'Unter einem Rollladenkasten, ringsum gedichtet'),
  sample('forward-on-brackets', forwardOnBrackets, 'On brackets before concrete', 'Auf Konsolen vor Beton'),
  sample('flush-in-sand-lime', flushInSandLime, 'Flush with sand-lime masonry: quiet faults', 'Bündig mit Kalksandstein: stille Fehler'),
  sample('protected-sill', protectedSill, 'Behind a brick nib, with a protected sill', 'Hinter gemauertem Anschlag, Sohlbank geschützt'),
  sample('facing-leaf', facingLeaf, 'In the facing leaf, Britain', 'In der Verblendschale, Großbritannien'),
  sample('unheld-head', unheldHead, 'Perforated brick: a head that nothing holds', 'Hochlochziegel: ein Sturz, den nichts hält'),
  sample('guard-in-aerated-concrete', guardInAeratedConcrete, 'Wrong: a guard in aerated concrete', 'Falsch: Absturzsicherung in Porenbeton'),
  sample('frame-too-large', frameTooLarge, 'Wrong: a frame wider than its opening', 'Falsch: Rahmen breiter als die Öffnung'),
  sample('soft-flank', softFlank, 'Wrong: taped to mineral wool', 'Falsch: Band an Mineralwolle'),
  sample('step-free-door', stepFreeDoor, 'Wrong: a step-free door without a drain', 'Falsch: stufenlose Tür ohne Entwässerung'),
] // prettier-ignore
